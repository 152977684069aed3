import { type Length, length, ZERO } from '../../lengths/length.ts';
import { mustBePositiveIfGiven, mustNotBeNegative } from '../length-checks.ts';
import type { Problem } from '../problem.ts';
import { EDGES, type Edge, type EdgeWidths } from './piece-edges.ts';
import { type Slants, slantProblems } from './piece-slants.ts';

/** The two ways a piece is measured. */
export type Way = 'width' | 'length';

/** Sides nearer to the bottom than this, or further than what is left of 180, are not reckoned with. Ours. */
const FLATTEST = 10;
/** Cloth that loses more than this is none to cut a garment from. Ours. */
const MOST_SHRINKAGE = 50;

/** What an edge adds to: nothing where its allowance is in the size already, or it is bound. */
export type EdgesAdd = Readonly<Record<Edge, Way | 'none'>>;

const USUAL: EdgesAdd = { top: 'length', bottom: 'length', side: 'width', other: 'width' };

/** The field of each edge's allowance. */
const FIELD = { top: 'top', bottom: 'bottom', side: 'side', other: 'otherSide' } as const;

export interface PieceInput {
  /** What `width` and `length` are: the finished size that is wanted, or what was cut. */
  given: 'finished' | 'cut';
  /** Finished, of the whole piece where the bottom is; cut, as the hand cuts it: on the fold half. */
  width: Length | undefined;
  length: Length | undefined;
  /** One side lies on the fold: it takes nothing, and the piece opens to twice as wide. */
  fold: boolean;
  /** What each edge takes for the seam, hem or facing that finishes it; on the fold both sides are one. */
  edges: Readonly<Record<Edge, Length>>;
  /** What each of them adds to; where it isn't said top and bottom to the length, sides to the width. */
  adds?: EdgesAdd;
  /** Inside the finished corner of bottom and side, in degrees: under 90 the piece is widest below. */
  angle: number;
  /** Edges that slant by two measures, in the place of the angle; width and length are then those of the middle. */
  slants?: Slants;
  /** What the cloth loses after it is cut, per cent. */
  shrinks: { across: number; along: number };
}

/** What is wrong with what one way is worked out from, by the fields of the calculation. */
export function wayProblems(input: PieceInput, way: Way): Problem[] {
  const size = input[way];
  return [
    ...mustBePositiveIfGiven(way, size),
    ...addingTo(input, way).flatMap((edge) => mustNotBeNegative(FIELD[edge], input.edges[edge])),
    ...(way === 'width' && !input.slants ? angleProblems(input.angle) : []),
    ...slantProblems(input.slants ?? {}, way === 'width' ? ['side', 'other'] : ['top', 'bottom']),
    ...(way === 'length'
      ? mustShrink('shrinksAlong', input.shrinks.along)
      : mustShrink('shrinksAcross', input.shrinks.across)),
  ];
}

type Adding = Pick<PieceInput, 'edges' | 'adds' | 'fold'>;

/** The edges that add to one way of what the hand cuts. */
export function addingTo({ adds = USUAL, fold }: Adding, way: Way): Edge[] {
  return EDGES.filter((edge) => adds[edge] === way && !(fold && edge === 'other'));
}

/** Where each allowance lies, from the finished edge out: its own edge's first. */
export function liesAt(input: Adding): Readonly<Record<Edge, readonly Edge[]>> {
  const long = addingTo(input, 'length');
  const wide = addingTo(input, 'width');
  const of = (all: readonly Edge[], ...some: readonly Edge[]) =>
    some.filter((edge) => all.includes(edge));
  const ends = { top: of(long, 'top', 'other'), bottom: of(long, 'bottom', 'side') };
  if (!input.fold) {
    return { ...ends, side: of(wide, 'side', 'bottom'), other: of(wide, 'other', 'top') };
  }
  const far = of(wide, 'side', 'bottom', 'top');
  return { ...ends, side: far, other: far };
}

/** How far each raw edge of the opened piece lies beyond the finished one, square to it. */
export function beyondOf(input: Adding): EdgeWidths {
  const lies = liesAt(input);
  const sum = (all: readonly Edge[]) => length(all.reduce((so, edge) => so + input.edges[edge], 0));
  return {
    top: sum(lies.top),
    bottom: sum(lies.bottom),
    side: sum(lies.side),
    other: sum(lies.other),
  };
}

/** Whether every edge is level or upright. */
export function isUpright({ angle, slants }: Pick<PieceInput, 'angle' | 'slants'>): boolean {
  if (!slants) return angle === 90;
  return Object.values(slants).every((one) => !one?.by);
}

/** What is wrong with the slant of the sides. */
export function angleProblems(given: number): Problem[] {
  const [least, most] = [FLATTEST, 180 - FLATTEST];
  if (given >= least && given <= most) return [];
  return [{ kind: 'out-of-range', field: 'angle', given, least, most }];
}

/** What is wrong with a piece that has neither way. */
export function sizeProblems({ width, length }: PieceInput): Problem[] {
  if (width !== undefined || length !== undefined) return [];
  return [{ kind: 'not-positive', field: 'width', given: ZERO }];
}

function mustShrink(field: string, given: number): Problem[] {
  if (given >= 0 && given <= MOST_SHRINKAGE) return [];
  return [{ kind: 'out-of-range', field, given, least: 0, most: MOST_SHRINKAGE }];
}
