import type { Row } from '../../../garment/rows/row.ts';

const WIDTH = 344;
const EDGE = 8;
const HIGH = 20;
/** Dots no larger than this, nor so small that made and open look alike. */
const LARGEST = 9;
const SMALLEST = 2;

/** A row to scale: full where it is made, open where it is to come. The numbers beside it say the same. */
export function RowDots({ row: { run, made } }: { row: Row }) {
  const long = Math.max(run.length, 1);
  const size = Math.min(LARGEST, Math.max(SMALLEST, (0.8 * WIDTH) / run.marks.length));
  const dots = (isMade: boolean) =>
    run.marks
      .map(({ at }, rank) => ({ x: EDGE + (WIDTH * at) / long, rank }))
      .filter(({ rank }) => (made[rank] !== undefined) === isMade)
      .map(({ x }) => `M${x.toFixed(1)} ${HIGH / 2}h0`)
      .join('');
  return (
    <svg class="row-dots" viewBox={`0 0 ${WIDTH + 2 * EDGE} ${HIGH}`} aria-hidden="true">
      <path class="dots" stroke-width={size} d={dots(true) + dots(false)} />
      <path class="open" stroke-width={size - Math.min(2.4, size / 2)} d={dots(false)} />
    </svg>
  );
}
