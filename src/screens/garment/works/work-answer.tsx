import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { Rich } from '../../../controls/rich.tsx';
import { datumSaid } from '../said/step-datum.ts';
import { type Gives, numberText } from './work-numbers.ts';
import type { Lacks } from './work-said.ts';

interface Props {
  headline: Gives | undefined;
  bench: Bench;
  /** What to do with it, of the plan. */
  sentence: string | undefined;
  /** Why a number is missing; softly while it is typed. */
  lacks: (Lacks & { id: string }) | undefined;
  warnings: readonly string[];
}

/** What the work gives next, large, and what is to be minded. */
export function WorkAnswer({ headline, bench, sentence, lacks, warnings }: Props) {
  return (
    <div class="answer" aria-live="polite" aria-atomic="true">
      {headline?.number === undefined ? (
        <p class="number none" aria-hidden="true">
          <strong>{words.noNumber}</strong>
        </p>
      ) : (
        <Headline gives={headline} number={headline.number} bench={bench} />
      )}
      {sentence && (
        <p class="sentence">
          <Rich text={sentence} />
        </p>
      )}
      {lacks && (
        <p id={lacks.id} class={lacks.soft ? 'soft' : 'warning'}>
          <Rich text={lacks.said} />
        </p>
      )}
      {warnings.map((warning) => (
        <p class="warning" key={warning}>
          <Rich text={warning} />
        </p>
      ))}
    </div>
  );
}

function Headline({ gives, number, bench }: { gives: Gives; number: number; bench: Bench }) {
  const { output } = gives;
  const text = numberText(output, number, bench);
  const [, figure = text, unit = ''] = /^(.*?)\s*([a-z]*)$/i.exec(text) ?? [];
  const { step } = output;
  const what = step ? words.stepAt(step.do, datumSaid(step.datum, output.kind)) : output.name;
  return (
    <p class="number">
      <strong>
        <Rich text={figure} />
      </strong>{' '}
      <span>
        {unit} {what}
      </span>
    </p>
  );
}
