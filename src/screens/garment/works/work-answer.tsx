import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import type { Output } from '../../../calculation/output.ts';
import { Rich } from '../../../controls/rich.tsx';
import { datumSaid } from '../said/step-datum.ts';
import { isMadeBefore } from './work-labels.ts';
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
  const { output, result } = gives;
  const text = numberText(output, number, bench);
  const [, figure = text, unit = ''] = /^(.*?)\s*([a-z]*)$/i.exec(text) ?? [];
  const isMade = result.ok && result.state === 'made';
  return (
    <p class="number">
      <strong>
        <Rich text={figure} />
      </strong>{' '}
      <span>
        {unit} {isMade ? madeSaid(gives) : toMakeSaid(output)}
      </span>
    </p>
  );
}

function toMakeSaid({ name, step, kind }: Output): string {
  return step ? words.stepAt(step.do, datumSaid(step.datum, kind)) : name;
}

/** Of what is made there is nothing left to do; of a row it is its last mark that is shown. */
function madeSaid(gives: Gives): string {
  const { name, kind } = gives.output;
  if (isMadeBefore(gives)) return words.headBefore(name);
  return kind === 'run' ? words.lastMade(name) : words.isMade(name);
}
