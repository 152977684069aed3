import { drawingWords as words } from '#words/common/drawing-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAt } from '../../calculation/drawing.ts';
import {
  crossingLines,
  crossingPlaces,
  type DrawnCrossing,
} from '../../drawing/crossing-figure.ts';
import type { Dimension } from '../../drawing/dimension.ts';
import type { Point } from '../../drawing/figure.ts';
import { toMm } from '../../lengths/length.ts';
import type { Crossed, StripAcross } from '../../sewing/crossing/crossing-holes.ts';
import { chosenOf, shorterMove } from '../../sewing/crossing/crossing-move.ts';
import { type Crossing, crossing } from '../../sewing/crossing/strip-crossing.ts';
import { drawnOf } from './drawn.ts';
import { crossedOf, crossingFields } from './fields.ts';

/** Both strips where they cross, the lower one level. */
export const crossingDrawing: Drawing = {
  id: 'crossing',
  unplaced: () => [],
  draw(draft, bench) {
    const read = crossingFields.read(draft, bench);
    if (!read.ok) return undefined;
    const input = crossedOf(read.value);
    const plan = crossing(input);
    if (!plan.ok) return undefined;
    const { chosen, moved } = chosenOf(plan.value);
    const drawn = drawnOf(input, chosen, moved);
    const [lower, upper] = [lowerStrip(drawn), upperStrip(drawn)];
    return {
      name: words.crossing(moved),
      toScale: [[input.lower, lower] as const, [input.upper, upper] as const].every(([strip, on]) =>
        reaches(strip, on),
      ),
      shapes: crossingLines(drawn),
      dimensions: [
        ...ofStrip(input.lower, lower, KEYS.lower, bench),
        ...ofStrip(input.upper, upper, KEYS.upper, bench),
        punched(input, lower, bench),
        ...(moved ? [moves(input, chosen, upper, bench)] : []),
        counted(input, chosen),
      ],
    };
  },
};

/** A strip as it is drawn: so far from the crossing, and places along and across it in mm. */
interface OnStrip {
  reach: number;
  at(along: number, across: number): Point;
}

const KEYS = {
  lower: { width: 'width', margin: 'margin', pitch: 'pitch', phase: 'phase' },
  upper: {
    width: 'upperWidth',
    margin: 'upperMargin',
    pitch: 'upperPitch',
    phase: 'upperPhase',
  },
} as const;

function lowerStrip(drawn: DrawnCrossing): OnStrip {
  return { reach: crossingPlaces(drawn).lower, at: (x, y) => ({ x, y }) };
}

function upperStrip(drawn: DrawnCrossing): OnStrip {
  const { upper, onUpper } = crossingPlaces(drawn);
  return { reach: upper, at: onUpper };
}

/** Whether its lengths along it end on what is drawn of it. */
function reaches({ phase, pitch }: StripAcross, { reach }: OnStrip): boolean {
  return Math.abs(toMm(phase)) <= reach && toMm(pitch) <= reach;
}

/** Along a strip to a hole of its first row, with the next one before what is drawn ends. */
function holeOn({ phase, pitch }: StripAcross, { reach }: OnStrip): number {
  const [first, step] = [toMm(phase), toMm(pitch)];
  const next = first - Math.floor(first / step) * step;
  return next + step <= reach ? next : next - step;
}

/** Across a strip to its first row. */
function rowOf({ width, margin }: StripAcross): number {
  return toMm(margin) - toMm(width) / 2;
}

/** What is measured on either strip. */
function ofStrip(
  strip: StripAcross,
  on: OnStrip,
  keys: (typeof KEYS)[keyof typeof KEYS],
  bench: Bench,
): Dimension[] {
  const { width, margin, pitch, phase } = strip;
  const { reach, at } = on;
  const [edge, row, hole] = [-toMm(width) / 2, rowOf(strip), holeOn(strip, on)];
  const within = (along: number) => Math.max(-reach, Math.min(reach, along));
  const ends = (from: number, to: number) => [at(from, row), at(within(to), row)] as const;
  return [
    lengthAt([at(reach, edge), at(reach, -edge)], width, { given: keys.width }, bench),
    lengthAt([at(reach, edge), at(reach, row)], margin, { given: keys.margin }, bench),
    lengthAt(ends(within(hole), hole + toMm(pitch)), pitch, { given: keys.pitch }, bench),
    lengthAt(ends(0, toMm(phase)), phase, { given: keys.phase }, bench),
  ];
}

function punched({ lower, hole }: Crossed, on: OnStrip, bench: Bench): Dimension {
  const [at, half] = [holeOn(lower, on), toMm(hole) / 2];
  const ends = [on.at(at - half, rowOf(lower)), on.at(at + half, rowOf(lower))] as const;
  return lengthAt(ends, hole, { given: 'hole' }, bench);
}

/** How far the upper strip is moved, where that betters what lies there. */
function moves({ upper }: Crossed, chosen: Crossing, on: OnStrip, bench: Bench): Dimension {
  const { by, back } = shorterMove(chosen);
  const from = holeOn(upper, on);
  const to = from + (back ? -toMm(by) : toMm(by));
  const ends = [on.at(from, rowOf(upper)), on.at(to, rowOf(upper))] as const;
  return lengthAt(ends, by, { found: 'shift' }, bench);
}

/** The holes to punch, as far as they reach along the lower strip. */
function counted({ lower }: Crossed, chosen: Crossing): Dimension {
  const fresh = chosen.holes.filter(({ meets }) => meets !== 'shared');
  const along = fresh.map(({ along }) => toMm(along));
  const edge = toMm(lower.width) / 2;
  const at = (x: number): Point => ({ x: Number.isFinite(x) ? x : 0, y: edge });
  return {
    from: at(Math.min(...along)),
    to: at(Math.max(...along)),
    text: words.holes(fresh.length),
    by: { found: 'count' },
  };
}
