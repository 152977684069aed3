import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { garmentHomeWords as words } from '#words/garment/garment-home-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import type { Action } from '../../../garment/actions/act.ts';
import type { State } from '../../../garment/actions/state.ts';
import type { WorkLine } from '../../../garment/next/work-lines.ts';
import { byId } from '../../../garment/record/home.ts';
import { Line, type Live } from './line.tsx';

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
  const noted = new Set(byId(answer.sound.notes.keys()).keys());
  const live = useRef<Live>({} as Live);
  live.current = { answer, takeUp, onOpen: (work) => onGo({ to: 'work', work }) };
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
              <Line
                {...{ line, bench, live }}
                isNow={line.id === at}
                isNoted={noted.has(line.id)}
              />
              {line.id === at && children}
            </li>
          ))}
      </ul>
    </>
  );
}
