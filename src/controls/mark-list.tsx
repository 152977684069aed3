import type { RefObject } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';

import { markOut } from '../sewing/marks.ts';
import type { Run } from '../sewing/run.ts';
import { markWords } from '../words/mark-words.ts';
import { placeWords } from '../words/place-words.ts';
import { adopt } from './adopt.ts';
import { type Bench, tapeStep } from './bench.ts';
import { exactly, onTape } from './draft.ts';
import css from './mark-list.css?inline';
import { Rich } from './rich.tsx';

adopt(css);

interface Props {
  run: Run;
  bench: Bench;
  /** What scrolls: only the rows in view of it are made. */
  scroller: RefObject<HTMLElement | null>;
}

/** Rows made at once; a list longer than this is made as it is scrolled to. */
const ROWS = 60;

/** Every mark: its number, its place from the datum, its step from the one before. */
export function MarkList({ run, bench, scroller }: Props) {
  const step = tapeStep(bench);
  const marked = useMemo(() => markOut(run, step), [run, step]);
  const list = useRef<HTMLOListElement>(null);
  const first = useFirstRow(list, scroller, marked.marks.length);
  const rows = marked.marks.slice(first, first + ROWS);
  return (
    <section class="marks" aria-label={markWords.list}>
      <p class="heads" aria-hidden="true">
        <span>{placeWords(marked.datum)}</span>
        <span>{markWords.step}</span>
      </p>
      <ol
        ref={list}
        style={{ '--before': first, '--after': marked.marks.length - first - rows.length }}
      >
        {rows.map((mark, i) => (
          <li key={first + i} aria-posinset={first + i + 1} aria-setsize={marked.marks.length}>
            <b>{mark.label}</b>
            <span>
              <Rich text={onTape(mark.at, bench)} />
              {mark.kind !== 'closure' && <small> {markWords.kind(mark.kind)}</small>}
            </span>
            <span>{first + i > 0 && <Rich text={`+${onTape(mark.step, bench)}`} />}</span>
          </li>
        ))}
      </ol>
      <p class="uneven">
        <Rich text={markWords.uneven(exactly(marked.worstUnevenness, bench))} />
      </p>
    </section>
  );
}

/** The first row to make, from how far the list has been scrolled. */
function useFirstRow(
  list: RefObject<HTMLOListElement | null>,
  scroller: RefObject<HTMLElement | null>,
  count: number,
): number {
  const [first, setFirst] = useState(0);
  useEffect(() => {
    const pane = scroller.current;
    if (!pane || count <= ROWS) {
      setFirst(0);
      return;
    }
    const look = () => {
      const row = list.current?.querySelector('li')?.offsetHeight || 1;
      const above =
        pane.getBoundingClientRect().top - (list.current?.getBoundingClientRect().top ?? 0);
      const wanted = Math.floor(above / row) - ROWS / 3;
      // Whole blocks of rows, so that scrolling by a row makes nothing anew.
      const block = Math.floor(wanted / (ROWS / 3)) * (ROWS / 3);
      setFirst(Math.max(0, Math.min(block, count - ROWS)));
    };
    look();
    pane.addEventListener('scroll', look, { passive: true });
    return () => pane.removeEventListener('scroll', look);
  }, [list, scroller, count]);
  return Math.max(0, Math.min(first, Math.max(0, count - ROWS)));
}
