import { useState } from 'preact/hooks';
import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { MadeEntry } from '../../../controls/made-entry.tsx';
import type { State } from '../../../garment/actions/state.ts';
import { readLength } from '../../../lengths/read-length.ts';
import { numberName } from '../said/names.ts';
import { handText, valueText } from '../said/value-text.ts';
import { MadePanel } from './made-panel.tsx';
import type { Do } from './use-typing.ts';

export interface MadeProps {
  state: State;
  home: string;
  /** Which of its facts: of a row, that of one mark. */
  fact: string;
  bench: Bench;
  onDo: Do;
  onName: () => void;
  onBack: () => void;
}

/** A number that is made: as it was planned, as it was shown, as it was measured; and what can be done about it. */
export function MadeNumber({ state, home, fact: id, bench, onDo, onName, onBack }: MadeProps) {
  const [measures, setMeasures] = useState(false);
  const fact = state.answer.sound.facts.get(home)?.find((one) => one.id === id)?.fact;
  if (!fact) return null;
  const node = state.answer.nodes.get(home);
  const kind = node?.kind ?? 'length';
  const text = (value: number) => handText(kind, value, bench, node?.output?.step);
  const mark = fact.mark ? `, ${fact.mark.rank + 1}` : '';
  const name = numberName({ answer: state.answer, here: node?.id }, home) + mark;
  const measured = fact.measured === undefined ? '' : text(fact.measured);
  if (measures) {
    return (
      <MadeEntry
        bench={bench}
        item={name}
        alone={!fact.mark}
        // As it was typed, so that what is only looked at stays what it is.
        text={fact.measured === undefined ? '' : valueText(kind, fact.measured, bench)}
        onCancel={() => setMeasures(false)}
        onKeep={(typed) => {
          const read = readLength(typed, bench.unit, bench.decimalMark);
          onDo({ do: 'measure', fact: id, measured: read.ok ? read.value : undefined });
          setMeasures(false);
        }}
      />
    );
  }
  const said = [words.planned(text(fact.plan)), words.shown(text(fact.shown))];
  return (
    <MadePanel
      {...{ name, fact: id, onDo, onName, onBack }}
      said={[...said, ...(measured ? [words.measured(measured)] : [])].join(' · ')}
      takeBack={words.takeBack}
    >
      {kind !== 'count' && (
        <button type="button" class="main" onClick={() => setMeasures(true)}>
          {words.measure}
        </button>
      )}
    </MadePanel>
  );
}
