import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { MadeEntry } from '../../../controls/made-entry.tsx';
import { Rich } from '../../../controls/rich.tsx';
import type { Fact } from '../../../garment/record/record.ts';
import type { Answer } from '../../../garment/work-out/work-out.ts';
import '../home/home-style.ts';
import { numberName } from '../said/names.ts';
import { handText, valueText } from '../said/value-text.ts';

interface Props {
  answer: Answer;
  home: string;
  /** What was made there. */
  fact: Fact;
  bench: Bench;
  /** What was typed; empty where it is as it was shown. */
  onKeep: (text: string) => void;
  onCancel: () => void;
}

/** Where something that is made really is: what was shown of it stays in sight above the keys. */
export function MeasureFact({ answer, home, fact, bench, onKeep, onCancel }: Props) {
  const { mark, shown, measured } = fact;
  const node = answer.nodes.get(home);
  const kind = node?.kind ?? 'length';
  const name = numberName({ answer }, home);
  const item = mark ? `${name}, ${mark.rank + 1}` : name;
  return (
    <div class="bench measured" data-hand={bench.hand}>
      <main class="reading">
        <h1>{item}</h1>
        <p>
          <Rich text={words.shown(handText(kind, shown, bench, node?.output?.step))} />
        </p>
      </main>
      <MadeEntry
        bench={bench}
        item={item}
        alone={!mark}
        text={measured === undefined ? '' : valueText(kind, measured, bench)}
        onKeep={onKeep}
        onCancel={onCancel}
      />
    </div>
  );
}
