import { type ExactLength, exactLength } from '../../lengths/length.ts';
import type { Problem } from '../problem.ts';
import type { Edge } from './piece-edges.ts';
import { beyondOf, type PieceInput } from './piece-input.ts';
import { slantFields, slantTakes, slopeOf } from './piece-slants.ts';

/** A corner of an outline, in 1/8000 mm from where the one side is level with the bottom's middle; y downwards. */
export interface Corner {
  x: number;
  y: number;
}

export type OutlineInput = Pick<PieceInput, 'edges' | 'adds' | 'angle' | 'fold' | 'slants'>;

/** How wide and how long a piece is, finished: where the bottom's middle is, and along the middle. */
export interface Middle {
  wide: ExactLength;
  long: ExactLength;
}

type Outline = readonly [low: Corner, farLow: Corner, farHigh: Corner, high: Corner];

/**
 * The finished and the cut outline of a piece, opened, before the cloth loses anything; each from
 * the corner of bottom and side along the bottom. Each edge is a line, the raw one its allowance
 * beyond the finished one, square to it; corners are where they cross.
 *
 * @param wide finished, level with the bottom's middle @param long finished, along the middle
 */
export function outlineOf(
  input: OutlineInput,
  wide: ExactLength,
  long: ExactLength,
): { finished: Outline; cut: Outline } {
  const { top, bottom, side, other } = beyondOf(input);
  return {
    finished: cornersOf(input, { wide, long }, { top: 0, bottom: 0, side: 0, other: 0 }),
    cut: cornersOf(input, { wide, long }, { top, bottom, side, other }),
  };
}

function cornersOf(
  input: OutlineInput,
  { wide, long }: Middle,
  beyond: Readonly<Record<Edge, number>>,
): Outline {
  const { fold, slants = {} } = input;
  // From the middle both halves of a piece on the fold go the same way.
  const turned = fold ? 1 : -1;
  const low = (way: number): Level => [
    -takes(input, 'bottom', beyond),
    way * slopeOf(slants.bottom),
  ];
  const high = (way: number): Level => [
    long + takes(input, 'top', beyond),
    -way * slopeOf(slants.top),
  ];
  const meets = (edge: 'side' | 'other', level: Level) => {
    const off = takes(input, edge, beyond);
    const up = crossing(level, wide / 2 + off, leanOf(input, edge));
    return { in: up * leanOf(input, edge) - off, y: -up };
  };
  const left = (level: Level): Corner => {
    const { in: x, y } = meets('side', level);
    return { x, y };
  };
  const right = (level: Level): Corner => {
    const { in: inwards, y } = meets('other', level);
    return { x: wide - inwards, y };
  };
  return [left(low(turned)), right(low(1)), right(high(1)), left(high(turned))];
}

/** Where the raw bottom and top lie in the middle, y downwards: of a piece on the fold, at its fold. */
export function rawMiddle(input: OutlineInput, long: ExactLength): [low: number, high: number] {
  const beyond = beyondOf(input);
  return [takes(input, 'bottom', beyond), -long - takes(input, 'top', beyond)];
}

/** A line by how high it is in the middle, and how much it rises for each of the way from there. */
type Level = readonly [middle: number, slope: number];

/** How high it meets a side that leans in from so far away: up = middle + slope × (away − lean × up). */
function crossing([middle, slope]: Level, away: number, lean: number): number {
  return (middle + slope * away) / (1 + slope * lean);
}

function takes({ angle, slants }: OutlineInput, edge: Edge, all: Readonly<Record<Edge, number>>) {
  const isSide = edge === 'side' || edge === 'other';
  return slants || !isSide ? all[edge] * slantTakes(slants?.[edge]) : all[edge] / sineOf(angle);
}

/** How far a side leans in for each of its height. */
export function leanOf({ angle, slants }: OutlineInput, edge: 'side' | 'other'): number {
  return slants ? slopeOf(slants[edge]) : cosineOf(angle) / sineOf(angle);
}

/** Edges that cross before they meet their corner: what there is in the middle, and what they would need. */
export function crossed(input: OutlineInput, middle: Middle): Problem | undefined {
  const { slants = {} } = input;
  const { finished, cut } = outlineOf(input, middle.wide, middle.long);
  const least = (of: (corners: Outline) => number) => Math.min(of(finished), of(cut));
  const high = least(([low, farLow, farHigh, top]) =>
    Math.min(low.y - top.y, farLow.y - farHigh.y),
  );
  const wide = least(([low, farLow, farHigh, top]) =>
    Math.min(farLow.x - low.x, farHigh.x - top.x),
  );
  if (high > 0 && wide > 0) return undefined;
  const isHigh = high <= 0;
  const [field] = slantFields(
    isHigh ? (slants.top ? 'top' : 'bottom') : slants.side ? 'side' : 'other',
  );
  const room = isHigh ? middle.long : middle.wide;
  const needed = exactLength(room - (isHigh ? high : wide));
  return { kind: 'does-not-fit', field, room, needed };
}

export function sineOf(degrees: number): number {
  return Math.sin((degrees * Math.PI) / 180);
}

/** Of a right angle nothing at all, where the machine's cosine leaves a crumb. */
export function cosineOf(degrees: number): number {
  return degrees === 90 ? 0 : Math.cos((degrees * Math.PI) / 180);
}
