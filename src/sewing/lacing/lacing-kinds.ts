import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import {
  CROSS,
  DOUBLE_LOOP,
  type LacingQuote,
  RUNNING,
  SADDLE,
  SINGLE_LOOP,
  WHIP,
} from '../sources/lacing.ts';
import type { Quoted } from '../sources/published.ts';
import type { Face, LacePoint, Repeat } from './lacing-repeat.ts';

/** The ways of lacing there are; `own` is the one the maker writes. */
export type LacingKind =
  | 'edge'
  | 'outside'
  | 'running'
  | 'saddle'
  | 'cross'
  | 'single-loop'
  | 'double-loop'
  | 'own';

/** What the places of a repeat depend on. */
export interface LacePlaces {
  margin: ExactLength;
  /** How far outside the edge the lace goes. */
  outside: ExactLength;
  own?: Repeat | undefined;
}

/** One way over the holes; `back` runs from the last hole to the first. */
export interface Strand {
  repeat: Repeat;
  back: boolean;
}

/**
 * The strands of a kind. All shapes are derived here.
 *
 * A saddle stitch is two running ones, one starting on each face; a cross is whipped
 * there and back.
 */
export function strandsOf(kind: LacingKind, places: LacePlaces): Strand[] {
  const repeat = REPEATS[kind](places);
  const there = { repeat, back: false };
  if (kind === 'cross') return [there, { repeat, back: true }];
  if (kind === 'saddle') {
    return [there, { repeat: running(places.margin, 'back', 'front'), back: false }];
  }
  return [there];
}

/** Two needles, or there and back: no further choice of where to start. */
export function hasTwoStrands(kind: LacingKind): boolean {
  return kind === 'cross' || kind === 'saddle';
}

/** The factor published for a kind, least and most. */
export const PUBLISHED: Readonly<
  Record<LacingKind, Quoted<readonly [number, number], LacingQuote> | undefined>
> = {
  edge: WHIP,
  outside: WHIP,
  running: RUNNING,
  saddle: SADDLE,
  cross: CROSS,
  'single-loop': SINGLE_LOOP,
  'double-loop': DOUBLE_LOOP,
  own: undefined,
};

const REPEATS: Readonly<Record<LacingKind, (places: LacePlaces) => Repeat>> = {
  edge: overEdge,
  outside: slantedOutside,
  running: ({ margin }) => running(margin, 'front', 'back'),
  saddle: ({ margin }) => running(margin, 'front', 'back'),
  cross: overEdge,
  'single-loop': singleLoop,
  'double-loop': doubleLoop,
  own: ({ own }) => {
    if (!own) throw new RangeError('a lacing of one’s own has a repeat of its own');
    return own;
  },
};

function at(along: number, across: ExactLength, face: Face, turns = 0): LacePoint {
  return { along, across, face, turns };
}

/** Slanted on the front to the edge at the next hole, straight down the back: m + √(P² + m²) + 2T. */
function overEdge({ margin }: LacePlaces): Repeat {
  const points = [
    at(0, margin, 'front'),
    at(1, ZERO, 'front'),
    at(1, ZERO, 'back'),
    at(1, margin, 'back'),
  ];
  return { points, advance: 1 };
}

/** To a place δ outside, halfway to the next hole, then to that hole: 2√((P/2)² + (m + δ)²) + 2T. */
function slantedOutside({ margin, outside }: LacePlaces): Repeat {
  const out = exactLength(-outside);
  const points = [
    at(0, margin, 'front'),
    at(0.5, out, 'front'),
    at(0.5, out, 'back'),
    at(1, margin, 'back'),
  ];
  return { points, advance: 1 };
}

/** In and out: P + T for each hole. */
function running(margin: ExactLength, one: Face, other: Face): Repeat {
  const points = [
    at(0, margin, one),
    at(1, margin, one),
    at(1, margin, other),
    at(2, margin, other),
  ];
  return { points, advance: 2 };
}

/**
 * A loop locked at the edge: up the back, over the edge, once round the lace that comes
 * in there, along the edge and down the front to the next hole: 2m + P + 2T and a turn.
 */
function singleLoop({ margin }: LacePlaces): Repeat {
  const points = [
    at(0, margin, 'back'),
    at(0, ZERO, 'back'),
    at(0, ZERO, 'front', 1),
    at(1, ZERO, 'front'),
    at(1, margin, 'front'),
  ];
  return { points, advance: 1 };
}

/**
 * As the single loop, but round the crossing at the hole before, so a pitch back and
 * two on: 2m + 3P + 2T and a turn. The first stitch, which has no crossing before it,
 * is counted as the others.
 */
function doubleLoop({ margin }: LacePlaces): Repeat {
  const points = [
    at(0, margin, 'back'),
    at(0, ZERO, 'back'),
    at(0, ZERO, 'front'),
    at(-1, ZERO, 'front', 1),
    at(1, ZERO, 'front'),
    at(1, margin, 'front'),
  ];
  return { points, advance: 1 };
}
