import type { Bench } from '../../../calculation/bench.ts';
import { MadeEntry } from '../../../controls/made-entry.tsx';
import { Rich } from '../../../controls/rich.tsx';
import type { Next } from '../../../garment/next/next.ts';
import type { Answer } from '../../../garment/work-out/work-out.ts';
import { workOf } from '../said/say.ts';
import { stepSaid } from './key.tsx';

interface Props {
  answer: Answer;
  next: Extract<Next, { kind: 'step' }>;
  bench: Bench;
  onKeep: (text: string) => void;
  onCancel: () => void;
}

/** Where the next step was really made: its planned number stays in sight above the keys. */
export function MeasureStep({ answer, next, bench, onKeep, onCancel }: Props) {
  const { above, number } = stepSaid(answer, next, bench);
  return (
    <div class="bench measured" data-hand={bench.hand}>
      <main class="reading">
        <h1>{above}</h1>
        <p>
          <Rich text={number} />
        </p>
      </main>
      <MadeEntry
        bench={bench}
        item={workOf(answer, next.step.home)}
        alone={next.mark === undefined}
        text=""
        onKeep={onKeep}
        onCancel={onCancel}
      />
    </div>
  );
}
