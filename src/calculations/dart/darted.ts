import { needed } from '../../calculation/needed.ts';
import { mapped, type Outcome, refused } from '../../sewing/problem.ts';
import {
  type DartEdge,
  type DartInput,
  dartEdge,
  type Wedge,
  wedge,
} from '../../sewing/shaping/dart.ts';
import {
  dartInSeam,
  type Gathered,
  gatherDart,
  type Moved,
  moveDart,
  type Seamed,
  type TwoEnded,
  twoEnded,
} from '../../sewing/shaping/dart-turned.ts';
import type { DartAsked } from './fields.ts';

/** What a dart is by itself, as far as what is asked for it names. */
export const WEDGE_FIELDS = [
  'what',
  'by',
  'width',
  'angle',
  'leg',
  'above',
  'below',
] as const satisfies readonly (keyof DartAsked)[];

export type WedgeAsked = Pick<DartAsked, (typeof WEDGE_FIELDS)[number]>;

/** What becomes of a dart. */
export type Made =
  | { what: 'edge'; edge: DartEdge }
  | { what: 'two'; legs: TwoEnded }
  | { what: 'moved'; moved: Moved }
  | { what: 'gathers'; gathered: Gathered }
  | { what: 'seam'; seamed: Seamed };

/** A dart as it was worked out, with what was asked. */
export interface Darted {
  asked: DartAsked;
  /** Of one with two points, as it is above. */
  dart: Wedge;
  made: Made;
}

/** A dart's legs and the angle between them. */
export function wedgeAsked(asked: WedgeAsked): Outcome<Wedge> {
  if (asked.what === 'two') {
    const two = needed({ width: asked.width, above: asked.above, below: asked.below });
    return mapped(twoEnded(two), () => ({
      angle: 2 * Math.atan(two.width / 2 / two.above),
      width: two.width,
      middle: two.above,
    }));
  }
  return wedge(inputOf(asked));
}

function inputOf({ by, width, angle, leg }: WedgeAsked): DartInput {
  return by === 'angle'
    ? { opening: { by, ...needed({ angle }) }, ...needed({ leg }) }
    : { opening: { by: 'width', ...needed({ width }) }, ...needed({ leg }) };
}

/** All that is asked of a dart, or every reason why not. */
export function darted(asked: DartAsked): Outcome<Darted> {
  const found = wedgeAsked(asked);
  if (!found.ok) return found;
  const dart = found.value;
  return mapped(madeOf(asked, dart), (made) => ({ asked, dart, made }));
}

function madeOf(asked: DartAsked, dart: Wedge): Outcome<Made> {
  const { what } = asked;
  const { leg, reach, parts, zone, part, width, above, below } = asked;
  switch (what) {
    case 'edge':
      return mapped(narrowed(edgeAsked(asked, dart), asked), (edge) => ({ what, edge }));
    case 'two':
      return mapped(twoEnded(needed({ width, above, below })), (legs) => ({ what, legs }));
    case 'moved':
      return mapped(moveDart(dart, needed({ reach, parts })), (moved) => ({ what, moved }));
    case 'gathers':
      return mapped(gatherDart(dart, needed({ zone }).zone), (gathered) => ({ what, gathered }));
    case 'seam': {
      const asked = needed({ leg, part });
      return mapped(dartInSeam(dart, asked.leg, asked.part), (seamed) => ({ what, seamed }));
    }
  }
}

/** A dart wider than its piece is to be made narrower, where its width is what was typed: the piece is as it is. */
function narrowed<Of>(found: Outcome<Of>, { by, width, piece }: DartAsked): Outcome<Of> {
  const over = found.ok ? [] : found.problems.filter(({ field }) => field === 'piece');
  if (by !== 'width' || over[0]?.kind !== 'not-over' || !width || !piece) return found;
  return refused({ kind: 'not-under', field: 'width', under: piece, given: width });
}

/** The edge between the legs; on the other side it is as makes it smooth, unless that is told. */
export function edgeAsked(
  asked: Pick<DartAsked, 'leg' | 'slant' | 'other' | 'seam'> & Partial<Pick<DartAsked, 'piece'>>,
  dart: Wedge,
): Outcome<DartEdge> {
  const { leg, slant } = needed({ leg: asked.leg, slant: asked.slant });
  const { other = 180 - slant, seam, piece } = asked;
  return dartEdge({ leg, slant, other, seam, piece }, dart);
}
