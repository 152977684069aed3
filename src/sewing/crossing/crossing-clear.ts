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
    const beside: Range[] = [
      [-Infinity, (-lower.width / 2 - y * cos) / sin],
      [(lower.width / 2 - y * cos) / sin, Infinity],
    ];
    return [...beside, ...within(hole / 4)].reduce(without, merged(within(2 * hole)));
  });
}

/** Shifts with so many clashes, all within one pitch. */
export interface Shifts {
  clashes: number;
  from: number;
  to: number;
}

/**
 * The range of shifts with the fewest clashes, of several the widest; undefined where
 * none is as wide as asked.
 */
export function fewestClashes(
  input: Crossed,
  ranges: ClashRanges,
  pitch: number,
  least: number,
): Shifts | undefined {
  const changes = linesOver(input, pitch, 0).flatMap(({ start }, i) =>
    (ranges[i] ?? []).flatMap((range) => changesOf(range, start, pitch)),
  );
  changes.sort((one, other) => one.at - other.at);
  let best: Shifts | undefined;
  let [clashes, from] = [0, 0];
  for (const { at, by } of [...changes, { at: pitch, by: 0 }]) {
    const here = { clashes, from, to: at };
    if (at - from >= least && (!best || isBetter(here, best))) best = here;
    clashes += by;
    from = at;
  }
  return best;
}

function isBetter(one: Shifts, other: Shifts): boolean {
  if (one.clashes !== other.clashes) return one.clashes < other.clashes;
  return one.to - one.from > other.to - other.from;
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

/** By how many holes in a range there are more or fewer from a shift on. */
function changesOf([from, to]: Range, start: number, pitch: number): { at: number; by: number }[] {
  const always = Math.floor((to - from) / pitch);
  const begin = (((from - start) % pitch) + pitch) % pitch;
  const end = begin + (to - from) - always * pitch;
  const wraps = end > pitch;
  return [
    { at: 0, by: always + (wraps ? 1 : 0) },
    { at: begin, by: 1 },
    { at: wraps ? end - pitch : end, by: -1 },
  ];
}
