import type { Mark } from '../sewing/run.ts';
import { HEAD, HEAD_HERE, px, type TapeLayout, textWidth } from './tape-layout.ts';
import type { TapeRole, TapeShape } from './tape-shape.ts';

/** How many marks lie before `at` (1/8000 mm), by halving. */
export function marksBefore(marks: readonly Mark[], at: number): number {
  let low = 0;
  let high = marks.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (marks[middle]!.at < at) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Index of the mark nearest to `at` and no farther from it than `reach` (1/8000 mm). */
export function nearestMark(marks: readonly Mark[], at: number, reach: number): number | undefined {
  const after = marksBefore(marks, at);
  const far = (index: number) => Math.abs((marks[index]?.at ?? Infinity) - at);
  const nearest = far(after - 1) <= far(after) ? after - 1 : after;
  return far(nearest) <= reach ? nearest : undefined;
}

/**
 * The lines of all marks on the strip but the current one, and of the current
 * one. A mark nearer to the one before it than ticks may come has its line kept
 * between the numbers, so that crowded marks don't bury the graduation; lines
 * that would fall into one (an eighth of that) are drawn once.
 */
export function markLines(
  layout: TapeLayout,
  marks: readonly Mark[],
  here: number | undefined,
): TapeShape[] {
  const { height, labelSize, tickGap } = layout;
  const full = `0V${height}`;
  const reach = (HEAD * labelSize) / 2;
  const short = `${px(height / 2 - reach)}V${px(height / 2 + reach)}`;
  const first = marksBefore(marks, layout.start);
  let before = first ? layout.x(marks[first - 1]!.at) : -Infinity;
  let drawn = -Infinity;
  let d = '';
  let current = '';
  for (let i = first; i < marks.length && marks[i]!.at <= layout.end; i++) {
    const x = layout.x(marks[i]!.at);
    if (i === here) current = `M${x} ${full}`;
    else if (x - drawn >= tickGap / 8) {
      d += `M${x} ${x - before < tickGap ? short : full}`;
      drawn = x;
    }
    before = x;
  }
  const shapes: TapeShape[] = [];
  if (d) shapes.push({ shape: 'path', role: 'marks', d });
  if (current) shapes.push({ shape: 'path', role: 'mark-here', d: current });
  return shapes;
}

/** A head's place across the strip, in px. */
interface Head {
  mark: Mark;
  x: number;
  width: number;
  height: number;
}

/**
 * The heads with the marks' labels, as many as find room. The current one is
 * always drawn and the others make way for it. They are thinned from the first
 * mark of the run on, not of the strip, so that panning never changes which show.
 */
export function markHeads(
  layout: TapeLayout,
  marks: readonly Mark[],
  here: number | undefined,
): TapeShape[] {
  const current = here === undefined ? undefined : marks[here];
  const currentHead = current && head(layout, current, HEAD_HERE);
  const between = layout.labelSize / 6;
  const shapes: TapeShape[] = [];
  let free = -Infinity;
  for (const mark of marks) {
    if (mark.at > layout.end) break;
    if (mark === current || mark.label === '') continue;
    const each = head(layout, mark, HEAD);
    if (each.x - each.width / 2 < free) continue;
    if (currentHead && overlap(each, currentHead, between)) continue;
    free = each.x + each.width / 2 + between;
    if (whole(layout, each)) shapes.push(...drawn(layout, each, ''));
  }
  const seen = currentHead && currentHead.x >= 0 && currentHead.x <= layout.width;
  return seen ? [...shapes, ...drawn(layout, currentHead, '-here')] : shapes;
}

function head(layout: TapeLayout, mark: Mark, size: number): Head {
  const height = size * layout.labelSize;
  const text = textWidth(mark.label, layout.labelSize) + layout.labelSize * 0.6;
  return { mark, x: layout.x(mark.at), width: Math.max(height, text), height };
}

function overlap(one: Head, other: Head, between: number): boolean {
  return Math.abs(one.x - other.x) < (one.width + other.width) / 2 + between;
}

/** A head cut by the end of the strip would show half a label. */
function whole(layout: TapeLayout, { x, width }: Head): boolean {
  return x >= width / 2 && x <= layout.width - width / 2;
}

function drawn(layout: TapeLayout, { mark, x, width, height }: Head, here: '' | '-here') {
  const made = mark.kind === 'sewn' || mark.planned !== undefined;
  const role: TapeRole = !here && made ? 'head-sewn' : `head${here}`;
  const y = px(layout.height / 2);
  const textY = px(y + layout.labelSize * 0.36);
  return [
    { shape: 'pill', role, x, y, width: px(width), height: px(height) },
    { shape: 'text', role: `head-label${here}`, x, y: textY, text: mark.label },
  ] satisfies TapeShape[];
}
