import { type Crossed, type HoleLine, linesOver, linesUnder } from './crossing-holes.ts';

/** From and to, along a strip. */
type Range = readonly [number, number];

/** Where along the lines of the upper strip a hole of it clashes, line by line. */
export type ClashRanges = readonly (readonly Range[])[];

/**
 * Where a hole would clash, on each line of the upper strip: less than two holes from
 * one of the lower strip without being shared with any. It depends neither on the
 * upper strip's pitch nor on its shift, so that each of these is soon judged.
 */
export function clashRanges(input: Crossed): ClashRanges {
  const { lower, angle, hole, upper } = input;
  const turn = (angle * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const made = linesUnder(input)
    .flatMap(placesOf)
    .map(({ x, y }) => ({
      along: x * cos + y * sin,
      across: y * cos - x * sin,
    }));
  return linesOver(input, upper.pitch, 0).map(({ y }) => {
    const within = (reach: number) =>
      made.flatMap(({ along, across }): Range[] => {
        const half = Math.sqrt(reach ** 2 - (across - y) ** 2);
        return half >= 0 ? [[along - half, along + half]] : [];
      });
    const over: Range = [(-lower.width / 2 - y * cos) / sin, (lower.width / 2 - y * cos) / sin];
    const near = within(2 * hole).map(
      ([from, to]): Range => [Math.max(from, over[0]), Math.min(to, over[1])],
    );
    const clashing = merged(near.filter(([from, to]) => from < to));
    return within(hole / 4).reduce(without, clashing);
  });
}

/** The widest range of shifts without a clash, all within one pitch; undefined where there is none. */
export function clearShifts(input: Crossed, ranges: ClashRanges, pitch: number): Range | undefined {
  const taken = linesOver(input, pitch, 0)
    .flatMap(({ start }, i) => (ranges[i] ?? []).flatMap((range) => wrapped(range, start, pitch)))
    .sort(([one], [other]) => one - other);
  let widest: Range | undefined;
  let at = 0;
  for (const [from, to] of [...taken, [pitch, pitch] as const]) {
    if (from - at > (widest ? widest[1] - widest[0] : 0)) widest = [at, from];
    at = Math.max(at, to);
  }
  return widest;
}

function placesOf({ y, start, pitch, first, last }: HoleLine): { x: number; y: number }[] {
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => ({
    x: start + (first + i) * pitch,
    y,
  }));
}

function merged(ranges: readonly Range[]): readonly Range[] {
  const apart: Range[] = [];
  for (const [from, to] of [...ranges].sort(([one], [other]) => one - other)) {
    const last = apart.at(-1);
    if (last && from <= last[1]) apart[apart.length - 1] = [last[0], Math.max(last[1], to)];
    else apart.push([from, to]);
  }
  return apart;
}

function without(ranges: readonly Range[], [start, end]: Range): Range[] {
  return ranges.flatMap(([from, to]): Range[] =>
    [[from, Math.min(to, start)] as const, [Math.max(from, end), to] as const].filter(
      ([one, other]) => one < other,
    ),
  );
}

/** The shifts that bring a hole of a line into a range. */
function wrapped([from, to]: Range, start: number, pitch: number): Range[] {
  if (to - from >= pitch) return [[0, pitch]];
  const begin = (((from - start) % pitch) + pitch) % pitch;
  const end = begin + to - from;
  return end <= pitch
    ? [[begin, end]]
    : [
        [begin, pitch],
        [0, end - pitch],
      ];
}
