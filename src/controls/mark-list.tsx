import type { RefObject } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { markWords } from '#words/common/mark-words.ts';
import { placeWords } from '#words/common/place-words.ts';
import { type Bench, tapeStep } from '../calculation/bench.ts';
import { bound, onTape, wordOf } from '../calculation/tape-text.ts';
import { settled } from '../lengths/length.ts';
import { type MarkedRun, markOut } from '../sewing/marks.ts';
import type { Run } from '../sewing/run.ts';
import { adopt } from './adopt.ts';
import css from './mark-list.css?inline';
import { Rich } from './rich.tsx';

adopt(css);

interface Props {
  run: Run;
  bench: Bench;
  /** What scrolls: only the rows in view of it are made. */
  scroller: RefObject<HTMLElement | null>;
}

/** Rows made before the pane is measured, and beyond what is seen of it. */
const SPARE = 4;

/** Every mark: its number, its place from the datum, its step from the one before. */
export function MarkList({ run, bench, scroller }: Props) {
  const step = tapeStep(bench);
  const marked = useMemo(() => markOut(run, step), [run, step]);
  const list = useRef<HTMLOListElement>(null);
  const { first, last } = useRows(list, scroller, marked.marks.length);
  const rows = marked.marks.slice(first, last);
  return (
    <section class="marks" aria-label={markWords.list}>
      <p class="heads" aria-hidden="true">
        <span>{placeWords(marked.datum)}</span>
        <span>{markWords.step}</span>
      </p>
      <ol
        ref={list}
        style={{
          '--before': first,
          '--made': rows.length,
          '--after': marked.marks.length - first - rows.length,
        }}
      >
        {rows.map((mark, i) => (
          <li key={first + i} aria-posinset={first + i + 1} aria-setsize={marked.marks.length}>
            <b>{mark.label}</b>
            <span>
              <Rich text={onTape(mark.at, bench)} />
              {mark.planned !== undefined && (
                <small>
                  {' '}
                  <Rich text={markWords.made(onTape(mark.planned, bench))} />
                </small>
              )}
              {mark.kind !== 'closure' && (
                <small>
                  {' '}
                  <Rich text={wordOf(mark, bench, markWords.acrossShort)} />
                </small>
              )}
            </span>
            <span>{first + i > 0 && <Rich text={`+${onTape(mark.step, bench)}`} />}</span>
          </li>
        ))}
      </ol>
      <p class="uneven">
        {marked.worstError === 0 ? markWords.even : <Rich text={offText(marked, bench)} />}
      </p>
    </section>
  );
}

/** The worst error, and beside it how uneven the spaces are: all may be even, and all off; neither more than said. */
function offText({ worstError, worstUnevenness }: MarkedRun, bench: Bench): string {
  const uneven =
    settled(worstUnevenness) === 0 ? undefined : bound(worstUnevenness, 'least', bench);
  return markWords.off(bound(worstError, 'least', bench), uneven);
}

/** Which rows to make, from how high the pane is and how far it has been scrolled. */
function useRows(
  list: RefObject<HTMLOListElement | null>,
  scroller: RefObject<HTMLElement | null>,
  count: number,
): { first: number; last: number } {
  const [rows, setRows] = useState({ first: 0, last: 2 * SPARE });
  useEffect(() => {
    const pane = scroller.current;
    if (!pane) return;
    const look = () => {
      const high = list.current?.querySelector('li')?.offsetHeight || 1;
      const above =
        pane.getBoundingClientRect().top - (list.current?.getBoundingClientRect().top ?? 0);
      // Whole blocks of rows, so that scrolling by a row makes nothing anew.
      const first = Math.max(0, Math.floor(above / high / SPARE - 1) * SPARE);
      const seen = Math.ceil(pane.clientHeight / high / SPARE) * SPARE;
      const last = first + seen + 2 * SPARE;
      setRows((old) => (old.first === first && old.last === last ? old : { first, last }));
    };
    look();
    pane.addEventListener('scroll', look, { passive: true });
    const watch = 'ResizeObserver' in globalThis ? new ResizeObserver(look) : undefined;
    watch?.observe(pane);
    return () => {
      pane.removeEventListener('scroll', look);
      watch?.disconnect();
    };
  }, [list, scroller]);
  const first = Math.min(rows.first, Math.floor(Math.max(0, count - 1) / SPARE) * SPARE);
  return { first, last: Math.min(count, first + rows.last - rows.first) };
}
