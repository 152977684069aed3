import type { RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { garmentOrderWords as words } from '#words/garment/garment-order-words.ts';
import { adopt } from '../../../controls/adopt.ts';
import { NotDone } from '../../../controls/not-done.tsx';
import { useLanding } from '../../../controls/use-landing.ts';
import { moved } from '../../../garment/actions/rank.ts';
import { type WorkLine, workLines } from '../../../garment/next/work-lines.ts';
import { workName } from '../said/names.ts';
import css from './order.css?inline';
import type { OrderProps } from './order-props.ts';
import { OrderSteps } from './order-steps.tsx';

adopt(css);

/** A press that moved a work: where the focus is to be once it has gone there. */
type Pressed = { work: string; by: -1 | 1 } | undefined;

/** All works in their order, which one press changes, and all steps of each. */
export function Order(props: OrderProps) {
  const { state, bench, said, onAgain, onAct, onDone } = props;
  const lines = workLines(state.answer);
  const [pressed, setPressed] = useState<Pressed>();
  const move = (work: string, by: -1 | 1) => {
    const to = moved(state, work, by);
    if (!to) return;
    onAct({ do: 'rank', ...to, now: Date.now() });
    setPressed({ work, by });
  };
  const heading = useLanding() as RefObject<HTMLHeadingElement>;
  const at = pressed ? lines.findIndex(({ id }) => id === pressed.work) : -1;
  const name = pressed ? workName({ answer: state.answer }, pressed.work) : '';
  return (
    <div class="order" data-hand={bench.hand}>
      <main>
        <h1 tabIndex={-1} ref={heading}>
          {words.title}
        </h1>
        <p>{words.about}</p>
        <NotDone said={said} onAgain={onAgain} />
        <ol>
          {lines.map((line, i) => (
            <li key={line.id}>
              <Head {...{ line, pressed }} of={lines.length} place={i} onMove={move} />
              <OrderSteps {...props} line={line} />
            </li>
          ))}
        </ol>
        <p class="unseen" aria-live="polite">
          {at >= 0 && words.place(name, at + 1, lines.length)}
        </p>
      </main>
      <button type="button" class="plain main" onClick={onDone}>
        {words.done}
      </button>
    </div>
  );
}

interface HeadProps {
  line: WorkLine;
  /** From 0. */
  place: number;
  of: number;
  pressed: Pressed;
  onMove: (work: string, by: -1 | 1) => void;
}

/** A work with the two keys that move it. The one that was pressed keeps the focus where it has gone. */
function Head({ line: { id, name }, place, of, pressed, onMove }: HeadProps) {
  const keys = useRef<HTMLDivElement>(null);
  const own = pressed?.work === id ? pressed : undefined;
  useEffect(() => {
    if (!own) return;
    const all = [...(keys.current?.querySelectorAll('button') ?? [])];
    const [wanted, other] = own.by < 0 ? all : all.reverse();
    // At the end of the list there is only the way back.
    (wanted?.disabled ? other : wanted)?.focus();
  }, [own, place]);
  return (
    <div class="head">
      <h2>{name}</h2>
      <div class="keys" ref={keys}>
        <button
          type="button"
          aria-label={words.earlier(name)}
          disabled={place === 0}
          onClick={() => onMove(id, -1)}
        >
          ↑
        </button>
        <button
          type="button"
          aria-label={words.later(name)}
          disabled={place === of - 1}
          onClick={() => onMove(id, 1)}
        >
          ↓
        </button>
      </div>
    </div>
  );
}
