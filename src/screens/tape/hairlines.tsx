import type { TargetedKeyboardEvent } from 'preact';
import { spoken } from '#words/common/spoken.ts';
import { pointWords, hairlineWords as words } from '#words/tape/hairline-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import {
  type Hair,
  hairline,
  movedBy,
  type Place,
  partOf,
  type Reading,
  told,
} from '../../camera/tape-eye.ts';
import { showReading } from './show.ts';

interface Props {
  reading: Reading;
  lines: readonly Hair[];
  current: number;
  bench: Bench;
  onMove: (line: number, at: Place) => void;
  onPick: (line: number) => void;
}

/** Millimetres each key moves a line by. */
const KEYS: Readonly<Record<string, number>> = {
  ArrowRight: 0.1,
  ArrowUp: 0.1,
  ArrowLeft: -0.1,
  ArrowDown: -0.1,
  PageUp: 10,
  PageDown: -10,
  Home: -Infinity,
  End: Infinity,
};

/** The lines that read the tape: each can be moved by keys, and says what it reads. */
export function Hairlines({ reading, lines, current, bench, onMove, onPick }: Props) {
  const size = Math.max(reading.width, reading.height);
  const press = (event: TargetedKeyboardEvent<SVGGElement>, line: number, at: Place) => {
    const by = KEYS[event.key];
    if (by === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    onMove(line, movedBy(reading, at, event.shiftKey ? by * 10 : by));
  };
  return (
    <>
      {lines.map((at, i) => {
        const ends = hairline(reading, at);
        const path = ends && `M${ends[0].x},${ends[0].y}L${ends[1].x},${ends[1].y}`;
        const part = Math.round(100 * partOf(reading, at));
        return (
          <g
            key={i}
            class={`hair${i === current ? ' now' : ''}${at.waits ? ' waits' : ''}`}
            role="slider"
            // In small letters: on what is drawn, the other spelling is no attribute of the browser’s.
            tabindex={0}
            aria-label={words.lines[i]}
            aria-valuemin={0}
            aria-valuemax={100}
            aria-valuenow={part}
            aria-valuetext={textOf(reading, at, bench)}
            onFocus={() => onPick(i)}
            onKeyDown={(event) => press(event, i, at)}
          >
            {path && <path class="halo" d={path} />}
            {path && <path d={path} />}
            <circle cx={at.x} cy={at.y} r={size / 45} />
          </g>
        );
      })}
    </>
  );
}

function textOf(reading: Reading, at: Hair, bench: Bench): string {
  const read = told(reading, [at]);
  if (!read.ok) return pointWords[read.reason];
  const shown = showReading(read.mm, read.uncertaintyMm, bench);
  return spoken(words.spoken(shown.length, shown.within));
}
