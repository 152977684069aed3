import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { garmentHomeWords as words } from '#words/garment/garment-home-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { Rich } from '../../controls/rich.tsx';
import type { Action } from '../../garment/actions/act.ts';
import type { State } from '../../garment/actions/state.ts';
import { isMade } from '../../garment/next/next.ts';
import type { WorkLine } from '../../garment/next/work-lines.ts';
import { readHome } from '../../garment/record/home.ts';
import type { Answer } from '../../garment/work-out/work-out.ts';
import { numberAt, stepWords } from './say.ts';

/** More marks than this are said as numbers: as dots they could not be counted. */
const MOST_DOTS = 14;

interface Props {
  lines: readonly WorkLine[];
  state: State;
  bench: Bench;
  /** The work in hand. */
  at: string;
  onAct: (action: Action) => void;
  onInHand: (home: string) => void;
  onGo: (way: { to: 'work'; work: string }) => void;
  /** Its drawing. */
  children: ComponentChildren;
}

/** The works of a garment: what is done folded into one line, the one in hand open, the rest as lines. */
export function Lines({ lines, state, bench, at, onAct, onInHand, onGo, children }: Props) {
  const { answer } = state;
  const takeUp = (home: string) => {
    onAct({ do: 'pass', home, over: false, now: Date.now() });
    onInHand(home);
  };
  const [showDone, setShowDone] = useState(false);
  const isDone = (line: WorkLine) => line.state === 'done' && line.id !== at && !line.conflict;
  const done = lines.filter(isDone);
  const [last] = done.slice(-1);
  const now = useRef<HTMLLIElement>(null);
  const drawn = Boolean(children);
  // Of many works the one in hand is in sight, with its drawing once that has come.
  useEffect(() => {
    if (at !== '' || drawn) now.current?.scrollIntoView?.({ block: 'nearest' });
  }, [at, drawn]);
  return (
    <>
      {done.length > 0 && (
        <button
          type="button"
          class="done"
          aria-expanded={showDone}
          onClick={() => setShowDone((was) => !was)}
        >
          <span>✓ {words.done(done.length)}</span>
          {last && <small>{last.name}</small>}
        </button>
      )}
      <ul class="works">
        {lines
          .filter((line) => showDone || !isDone(line))
          .map((line) => (
            <li
              key={line.id}
              class={line.id === at ? 'now' : undefined}
              {...(line.id === at && { ref: now })}
            >
              <button
                type="button"
                aria-current={line.id === at ? 'step' : undefined}
                onClick={() => onGo({ to: 'work', work: line.id })}
              >
                <Sign line={line} />
                <b>{line.name}</b>
                {notedAt(state, line.id) && (
                  <span role="img" aria-label={words.noted}>
                    ✎
                  </span>
                )}
                <Shows line={line} answer={answer} bench={bench} />
              </button>
              {line.steps.filter(isPassed).map((step) => (
                <button
                  type="button"
                  class="passed"
                  key={step.home}
                  onClick={() => takeUp(step.home)}
                >
                  {words.takeUp(stepWords(answer, step))}
                </button>
              ))}
              {line.id === at && children}
            </li>
          ))}
      </ul>
    </>
  );
}

/** Whether something is noted at a work, or at one of its steps. */
function notedAt({ answer }: State, work: string): boolean {
  return [...answer.sound.notes.keys()].some((home) => readHome(home).id === work);
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
