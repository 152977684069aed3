import { garmentHomeWords as words } from '#words/garment/garment-home-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { Rich } from '../../../controls/rich.tsx';
import { steady } from '../../../controls/steady.tsx';
import { isMade } from '../../../garment/next/next.ts';
import type { WorkLine } from '../../../garment/next/work-lines.ts';
import type { Answer } from '../../../garment/work-out/work-out.ts';
import { numberAt, stepWords } from '../said/say.ts';

/** More marks than this are said as numbers: as dots they could not be counted. */
const MOST_DOTS = 14;

/** What a line needs when it is pressed or drawn. */
export interface Live {
  answer: Answer;
  takeUp: (home: string) => void;
  onOpen: (work: string) => void;
}

interface LineProps {
  line: WorkLine;
  bench: Bench;
  isNow: boolean;
  isNoted: boolean;
  /** As of now: what is said of a line comes from nothing of it that isn't in the line. */
  live: { current: Live };
}

/** One work; drawn anew only where something of it is otherwise, since there may be hundreds. */
export const Line = steady(({ line, bench, isNow, isNoted, live }: LineProps) => {
  const { answer } = live.current;
  return (
    <>
      <button
        type="button"
        aria-current={isNow ? 'step' : undefined}
        onClick={() => live.current.onOpen(line.id)}
      >
        <Sign line={line} />
        <b>{line.name}</b>
        {isNoted && (
          <span role="img" aria-label={words.noted}>
            ✎
          </span>
        )}
        <Shows {...{ line, answer, bench }} />
        {lacks(line) && <em>{words.waits}</em>}
      </button>
      {line.steps.filter(isPassed).map((step) => (
        <button
          type="button"
          class="passed"
          key={step.home}
          onClick={() => live.current.takeUp(step.home)}
        >
          {words.takeUp(stepWords(answer, step))}
        </button>
      ))}
    </>
  );
});

/** Whether a number of it is missing beside the one that is shown. */
function lacks({ waits, shows, conflict, steps }: WorkLine): boolean {
  return waits && shows !== undefined && !conflict && !steps.some(isPassed);
}

function isPassed(step: WorkLine['steps'][number]): boolean {
  return step.passed === true && !isMade(step);
}

const SIGNS = { open: '○', begun: '◐', done: '✓' } as const;

function Sign({ line }: { line: WorkLine }) {
  return <span aria-hidden="true">{line.conflict ? '!' : SIGNS[line.state]}</span>;
}

function Shows({ line, answer, bench }: { line: WorkLine; answer: Answer; bench: Bench }) {
  const { shows } = line;
  if (line.conflict) return <em>{words.differs}</em>;
  if (line.steps.some(isPassed)) return <em>{words.passedOver}</em>;
  if (!shows) return <em>{words.waits}</em>;
  if (typeof shows.value === 'object') {
    const made = shows.made.filter(Boolean).length;
    const row = words.row(made, shows.made.length);
    return shows.made.length > MOST_DOTS ? (
      <span>{row}</span>
    ) : (
      <span class="dots" role="img" aria-label={row}>
        {shows.made.map((one, i) => (
          <i key={i} data-made={one} />
        ))}
      </span>
    );
  }
  return (
    <span>
      <Rich text={numberAt(answer, shows.home, shows.value, bench)} />
    </span>
  );
}
