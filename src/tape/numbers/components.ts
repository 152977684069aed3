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
  const stack = new Int32Array(ink.length);
  const found: Component[] = [];
  for (let at = 0; at < ink.length; at++) {
    if (!ink[at] || labels[at]) continue;
    const id = found.length + 1;
    found.push(componentOf(id, flood(ink, labels, stack, at, id, width, height)));
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

function flood(
  ink: Uint8Array,
  labels: Int32Array,
  stack: Int32Array,
  start: number,
  id: number,
  width: number,
  height: number,
): Box {
  const box: Box = { x0: width, x1: 0, y0: height, y1: 0, area: 0 };
  let waiting = 0;
  stack[waiting++] = start;
  labels[start] = id;
  while (waiting) {
    const at = stack[--waiting] as number;
    const x = at % width;
    const y = (at / width) | 0;
    widen(box, x, y);
    const right = Math.min(width - 1, x + 1);
    for (let row = Math.max(0, y - 1); row <= y + 1 && row < height; row++) {
      for (let column = Math.max(0, x - 1); column <= right; column++) {
        const next = row * width + column;
        if (!ink[next] || labels[next]) continue;
        labels[next] = id;
        stack[waiting++] = next;
      }
    }
  }
  return box;
}

function widen(box: Box, x: number, y: number): void {
  if (x < box.x0) box.x0 = x;
  if (x > box.x1) box.x1 = x;
  if (y < box.y0) box.y0 = y;
  if (y > box.y1) box.y1 = y;
  box.area++;
}
