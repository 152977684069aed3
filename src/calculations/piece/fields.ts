import { pieceWords as words } from '#words/calculations/piece-words.ts';
import {
  type Ask,
  all,
  choice,
  count,
  given,
  lengthOrNone,
  maybeLength,
  not,
  number,
} from '../../calculation/field-spec.ts';
import { type InputOf, schema, type Typed } from '../../calculation/schema.ts';
import { ZERO } from '../../lengths/length.ts';
import type { PieceInput } from '../../sewing/pieces/piece-input.ts';
import { differ, fold, onFold, sides, slanted, slantSpecs, slantsOf } from './sides.ts';

const sizes = choice(words.given);

/** Whether what was cut is given, and what it gives is asked. */
export const wasCut = sizes.is('cut');

const adds = choice(words.adds);
const own = adds.is('own');
const topAdds = choice(words.addsTo, { when: own });
const bottomAdds = choice(words.addsTo, { when: own });
const sideAdds = choice(words.addsTo, {
  start: 'width',
  when: own,
  label: (ask) => (differ(ask) ? words.oneSideAdds : undefined),
});
const otherAdds = choice(words.addsTo, { start: 'width', when: all(own, differ) });

const width = maybeLength(words.notGiven, {
  start: { cm: '40', mm: '400', in: '16' },
  usual: 'across',
  label: (ask) => (wasCut(ask) ? (onFold(ask) ? words.cutHalf : words.cutWidth) : undefined),
});
const long = maybeLength(words.notGiven, {
  start: { cm: '60', mm: '600', in: '24' },
  usual: 'garmentLength',
  label: (ask) => (wasCut(ask) ? words.cutLength : undefined),
});

const sideLabel = (ask: Ask) => {
  if (onFold(ask)) return words.farSide;
  return differ(ask) ? words.oneSide : undefined;
};

/** What is asked of a piece: what always matters first. */
export const pieceFields = schema(words.labels, {
  width,
  length: long,
  top: lengthOrNone(words.nothing, {
    start: { cm: '1.5', mm: '15', in: '5/8' },
    usual: 'hemDepth',
    givesWay: true,
    edge: true,
  }),
  bottom: lengthOrNone(words.nothing, {
    start: { cm: '4', mm: '40', in: '1 1/2' },
    usual: 'hemDepth',
    givesWay: true,
    edge: true,
  }),
  side: lengthOrNone(words.nothing, {
    start: { cm: '1.5', mm: '15', in: '5/8' },
    usual: 'seamAllowance',
    givesWay: true,
    edge: true,
    label: sideLabel,
  }),
  otherSide: lengthOrNone(words.nothing, {
    when: differ,
    usual: 'seamAllowance',
    givesWay: true,
    edge: true,
  }),
  fold,
  sides,
  count: count({ start: '1', usual: 'pieces' }),
  pairs: choice(words.pairs),
  given: sizes,
  wantedWidth: maybeLength(words.notGiven, { when: all(wasCut, given(width)), usual: 'across' }),
  wantedLength: maybeLength(words.notGiven, {
    when: all(wasCut, given(long)),
    usual: 'garmentLength',
  }),
  angle: number({ start: '90', usual: 'cornerAngle', when: not(slanted) }),
  ...slantSpecs,
  shrinksAcross: number({ start: '0', usual: 'shrinkage' }),
  shrinksAlong: number({ start: '0', usual: 'shrinkage' }),
  cloth: maybeLength(words.notGiven, { usual: 'clothWidth' }),
  adds,
  topAdds,
  bottomAdds,
  sideAdds,
  otherAdds,
});

/** Whether both sizes are given. */
export const hasBoth = all(given(width), given(long));

/** What was read of the fields. */
export type PieceAsked = InputOf<(typeof pieceFields)['specs']>;
/** What is typed in fields for the maker. */
export type PieceTyped = Typed<(typeof pieceFields)['specs']>;

const ADDS = ['adds', 'topAdds', 'bottomAdds', 'sideAdds', 'otherAdds'] as const;
const EDGE_FIELDS = ['top', 'bottom', 'side', 'otherSide', 'fold', 'sides', ...ADDS] as const;

/** What the width is worked out from. */
export const WIDTH_FIELDS = [
  'given',
  'width',
  ...EDGE_FIELDS,
  'angle',
  ...(['slants', 'sideLeans', 'sideOver', 'otherLeans', 'otherOver'] as const),
  'shrinksAcross',
] as const satisfies readonly (keyof PieceAsked)[];

/** What the length is worked out from. */
export const LENGTH_FIELDS = [
  'given',
  'length',
  ...EDGE_FIELDS,
  ...(['slants', 'topFalls', 'topOver', 'bottomRises', 'bottomOver'] as const),
  'shrinksAlong',
] as const satisfies readonly (keyof PieceAsked)[];

/** What the raw corner of bottom and side is worked out from. */
export const CORNER_FIELDS = [
  ...EDGE_FIELDS,
  'angle',
] as const satisfies readonly (keyof PieceAsked)[];

const otherUsual = not(all(own, otherAdds.is('length')));

/** Of these only what adds to that way is read: a hem may take its edge's length from the piece it adds to. */
export const WIDTH_READS = {
  top: all(own, topAdds.is('width')),
  bottom: all(own, bottomAdds.is('width')),
  side: not(all(own, sideAdds.is('length'))),
  otherSide: otherUsual,
};
export const LENGTH_READS = {
  top: not(all(own, topAdds.is('width'))),
  bottom: not(all(own, bottomAdds.is('width'))),
  side: all(own, sideAdds.is('length')),
  otherSide: not(otherUsual),
};

/** The fields of edges that add to nothing. */
export function addingNothing(ask: Ask): string[] {
  if (!own(ask)) return [];
  const edges = { top: topAdds, bottom: bottomAdds, side: sideAdds, otherSide: otherAdds };
  return Object.entries(edges).flatMap(([key, one]) => (one.is('none')(ask) ? [key] : []));
}

/** The piece that is asked for; what wasn't read of it takes nothing, and stands square. */
export function pieceInput(
  asked: Pick<PieceAsked, 'given'> &
    Partial<Pick<PieceAsked, (typeof WIDTH_FIELDS)[number] | (typeof LENGTH_FIELDS)[number]>>,
): PieceInput {
  const { top = ZERO, bottom = ZERO, side = ZERO, otherSide, sides: which } = asked;
  const folded = asked.fold === 'side';
  const differing = !folded && which === 'different';
  const ofSide = asked.sideAdds ?? 'width';
  return {
    given: asked.given,
    width: asked.width,
    length: asked.length,
    fold: folded,
    edges: { top, bottom, side, other: differing ? (otherSide ?? ZERO) : side },
    ...(asked.adds === 'own' && {
      adds: {
        top: asked.topAdds ?? 'length',
        bottom: asked.bottomAdds ?? 'length',
        side: ofSide,
        other: differing ? (asked.otherAdds ?? 'width') : ofSide,
      },
    }),
    angle: asked.angle ?? 90,
    ...(asked.slants === 'own' && { slants: slantsOf(asked, differing) }),
    shrinks: { across: asked.shrinksAcross ?? 0, along: asked.shrinksAlong ?? 0 },
  };
}
