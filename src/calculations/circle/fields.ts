import { circleWords as words } from '#words/calculations/circle-words.ts';
import {
  all,
  choice,
  count,
  length,
  lengthOrNone,
  maybeLength,
  number,
} from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import type { CircleInput, CircleKind } from '../../sewing/shaping/circle-input.ts';

export const what = choice(words.what);
const part = choice(words.part, { when: what.is('skirt') });
const by = choice(words.by, { when: what.is('flounce') });

/** What is asked of circular pieces: what always matters first. */
export const circleFields = schema(words.labels, {
  what,
  edge: length({ start: { cm: '70', mm: '700', in: '28' }, usual: 'around' }),
  long: length({
    start: { cm: '60', mm: '600', in: '24' },
    usual: 'garmentLength',
    label: (ask) => (what.is('flounce')(ask) ? words.deep : undefined),
  }),
  part,
  circles: number({ start: '1 1/2', when: all(what.is('skirt'), part.is('other')) }),
  panels: count({ start: '1', when: what.is('skirt'), usual: 'seams' }),
  by,
  times: number({ start: '2', when: all(what.is('flounce'), by.is('times')) }),
  radius: length({
    start: { cm: '8', mm: '80', in: '3' },
    when: all(what.is('flounce'), by.is('radius')),
    usual: 'curveRadius',
  }),
  gores: count({ start: '6', when: what.is('gores'), usual: 'seams' }),
  sweep: length({
    start: { cm: '200', mm: '2000', in: '80' },
    when: what.is('gores'),
    usual: 'around',
  }),
  seam: length({
    start: { cm: '1.5', mm: '15', in: '5/8' },
    usual: 'seamAllowance',
    givesWay: true,
  }),
  side: lengthOrNone(words.none, {
    start: { cm: '1.5', mm: '15', in: '5/8' },
    usual: 'seamAllowance',
    givesWay: true,
  }),
  hem: lengthOrNone(words.none, {
    start: { cm: '1', mm: '10', in: '3/8' },
    usual: 'hemDepth',
    givesWay: true,
  }),
  cloth: maybeLength(words.notGiven, { usual: 'clothWidth' }),
});

/** What was read of the fields. */
export type CircleAsked = InputOf<(typeof circleFields)['specs']>;

/** All of them but the cloth, which only says whether a piece goes on it. */
export const SHAPE_FIELDS = [
  'what',
  'edge',
  'long',
  'part',
  'circles',
  'panels',
  'by',
  'times',
  'radius',
  'gores',
  'sweep',
  'seam',
  'side',
  'hem',
] as const satisfies readonly (keyof CircleAsked)[];

type Shape = Pick<CircleAsked, (typeof SHAPE_FIELDS)[number]>;

/** How each part of a circle stands in a formula, and what it is. */
export const PARTS = {
  full: { text: '1', circles: 1 },
  threeQuarter: { text: '3/4', circles: 3 / 4 },
  half: { text: '1/2', circles: 1 / 2 },
  quarter: { text: '1/4', circles: 1 / 4 },
} as const;

/** The pieces that are asked for. */
export function circleInput(asked: Shape & Partial<Pick<CircleAsked, 'cloth'>>): CircleInput {
  const { edge, long, seam, side, hem, cloth } = asked;
  return { kind: kindOf(asked), edge, long, seam, side, hem, cloth };
}

function kindOf({
  what,
  part,
  circles,
  panels,
  by,
  times,
  radius,
  gores,
  sweep,
}: Shape): CircleKind {
  switch (what) {
    case 'skirt':
      return {
        of: what,
        circles: part === 'other' ? needed({ circles }).circles : PARTS[part].circles,
        ...needed({ panels }),
      };
    case 'flounce':
      return by === 'times'
        ? { of: what, by, ...needed({ times }) }
        : { of: what, by, ...needed({ radius }) };
    case 'gores':
      return { of: what, ...needed({ count: gores, hem: sweep }) };
  }
}
