/** A patch of ink whose pixels touch, in the pixels of its sheet. */
export interface Component {
  /** What the patch's pixels carry in the labels; from 1 up. */
  readonly id: number;
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
  readonly width: number;
  readonly height: number;
  readonly middleX: number;
  readonly middleY: number;
  /** Pixels of ink. */
  readonly area: number;
}

export interface Components {
  /** For each pixel the id of its patch; 0 where there is no ink. */
  readonly labels: Int32Array;
  /** In the order of their first pixel, row after row: the patch with id 1 first. */
  readonly components: readonly Component[];
}

interface Box {
  x0: number;
  x1: number;
  y0: number;
  y1: number;
  area: number;
}

/** Tells patches of ink apart; pixels that meet at a corner are of one patch. */
export function components(ink: Uint8Array, width: number, height: number): Components {
  const labels = new Int32Array(ink.length);
  const found: Component[] = [];
  for (let at = 0; at < ink.length; at++) {
    if (!ink[at] || labels[at]) continue;
    const id = found.length + 1;
    found.push(componentOf(id, flood(ink, labels, at, id, width, height)));
  }
  return { labels, components: found };
}

/** The patch of the given edges, which are its outermost pixels. */
export function componentOf(id: number, { x0, x1, y0, y1, area }: Readonly<Box>): Component {
  return {
    id,
    x0,
    x1,
    y0,
    y1,
    width: x1 - x0 + 1,
    height: y1 - y0 + 1,
    middleX: (x0 + x1) / 2,
    middleY: (y0 + y1) / 2,
    area,
  };
}

/** Labels a patch, run of ink by run of ink in its rows. */
function flood(
  ink: Uint8Array,
  labels: Int32Array,
  start: number,
  id: number,
  width: number,
  height: number,
): Box {
  const box: Box = { x0: width, x1: 0, y0: height, y1: 0, area: 0 };
  const waiting = [start];
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    if (labels[at]) continue;
    const y = (at / width) | 0;
    const begin = y * width;
    let [left, right] = [at, at];
    while (left > begin && ink[left - 1]) left--;
    while (right + 1 < begin + width && ink[right + 1]) right++;
    labels.fill(id, left, right + 1);
    widen(box, left - begin, right - begin, y);
    const [from, to] = [Math.max(begin, left - 1), Math.min(begin + width - 1, right + 1)];
    if (y > 0) awaitRuns(ink, labels, from - width, to - width, waiting);
    if (y + 1 < height) awaitRuns(ink, labels, from + width, to + width, waiting);
  }
  return box;
}

/** Puts the first pixel of each run of ink without a label on the list. */
function awaitRuns(
  ink: Uint8Array,
  labels: Int32Array,
  from: number,
  to: number,
  waiting: number[],
): void {
  let inRun = false;
  for (let at = from; at <= to; at++) {
    const isInk = ink[at] !== 0;
    if (isInk && !inRun && labels[at] === 0) waiting.push(at);
    inRun = isInk;
  }
}

function widen(box: Box, left: number, right: number, y: number): void {
  if (left < box.x0) box.x0 = left;
  if (right > box.x1) box.x1 = right;
  if (y < box.y0) box.y0 = y;
  if (y > box.y1) box.y1 = y;
  box.area += right - left + 1;
}
