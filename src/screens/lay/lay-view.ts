/** The part of the cloth that is seen: its corner and its size, in mm across and along. */
export interface View {
  x: number;
  y: number;
  wide: number;
  high: number;
}

/** A window on the page, in px. */
export interface Frame {
  width: number;
  height: number;
}

/** Never closer than a hand: 20 mm. */
const CLOSEST = 20;
/** The page that is seen around the lay, in px: its edges are named there. */
const EDGE = 20;

/** All of the cloth up to where the lay ends, in a frame. */
export function wholeView(width: number, length: number, frame: Frame): View {
  const [across, down] = [frame.width || 1, frame.height || 1];
  const room = (of: number) => Math.max(of / 2, of - 2 * EDGE);
  const perPx = Math.max(width / room(across), length / room(down));
  const [wide, high] = [perPx * across, perPx * down];
  return { x: (width - wide) / 2, y: (length - high) / 2, wide, high };
}

/** Closer by so many times, with a place of the cloth staying where it is. */
export function zoomed(
  view: View,
  times: number,
  [x, y]: readonly [number, number],
  whole: View,
): View {
  const wide = Math.min(whole.wide * 2, Math.max(CLOSEST, view.wide / times));
  const by = wide / view.wide;
  const [left, top] = [x - (x - view.x) * by, y - (y - view.y) * by];
  return { x: left, y: top, wide, high: view.high * by };
}

/** Moved by mm, never so far that no cloth is seen. */
export function panned(view: View, dx: number, dy: number, whole: View): View {
  const within = (at: number, size: number, from: number, all: number) =>
    Math.max(from - size / 2, Math.min(from + all - size / 2, at));
  return {
    ...view,
    x: within(view.x + dx, view.wide, whole.x, whole.wide),
    y: within(view.y + dy, view.high, whole.y, whole.high),
  };
}

export const middleOf = ({ x, y, wide, high }: View) => [x + wide / 2, y + high / 2] as const;
