import { Decision } from '../../screens/garment/decision.tsx';
import type { HandProps } from './hand-props.ts';

type Props = HandProps & {
  /** Of the row, or the number, that is made otherwise than asked. */
  home: string;
  to: (draft: Readonly<Record<string, string>>) => void;
  onDone: () => void;
};

/** How what is made otherwise than asked goes on. */
export function DecisionPlace({ state, bench, hand, home, to, onDone }: Props) {
  return (
    <Decision
      {...{ state, bench, home, onDone }}
      onAct={hand.act}
      onOpen={(work) => to({ w: work })}
      onMeasure={() => to({ w: home.split('|')[0] ?? '' })}
    />
  );
}
