import { useState } from 'preact/hooks';
import { readLength } from '../../lengths/read-length.ts';
import { Decision } from '../../screens/garment/decision/decision.tsx';
import { MeasureFact } from '../../screens/garment/decision/measure-fact.tsx';
import type { HandProps } from './hand-props.ts';

type Props = HandProps & {
  /** Of the row, or the number, that is made otherwise than asked. */
  home: string;
  to: (draft: Readonly<Record<string, string>>) => void;
  onDone: () => void;
};

/** How what is made otherwise than asked goes on; or where one of it really is, being typed. */
export function DecisionPlace(props: Props) {
  const { state, bench, hand, home, said, onAgain, to, onDone } = props;
  const { answer } = state;
  const [measures, setMeasures] = useState<string>();
  const made = answer.sound.facts.get(home)?.find(({ id }) => id === measures);
  if (made) {
    const keep = (text: string) => {
      const read = readLength(text, bench.unit, bench.decimalMark);
      const measured = read.ok ? read.value : undefined;
      hand.act({ do: 'measure', fact: made.id, measured, now: Date.now() });
      setMeasures(undefined);
    };
    return (
      <MeasureFact
        {...{ answer, home, bench, fact: made.fact }}
        onKeep={keep}
        onCancel={() => setMeasures(undefined)}
      />
    );
  }
  return (
    <Decision
      {...{ state, bench, home, onAgain, onDone }}
      unkept={hand.trouble || hand.failed ? said : undefined}
      onAct={hand.act}
      onOpen={(work) => to({ w: work })}
      onMeasure={setMeasures}
    />
  );
}
