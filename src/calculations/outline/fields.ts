import { outlineWords as words } from '#words/calculations/outline-words.ts';
import { choice, count, length, lengths, numbers } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import type { HoleRule, Outline } from '../../sewing/edging/outline-holes.ts';

export const shape = choice(words.shape);
const by = choice(words.by);
const isFree = shape.is('free');
const ofRectangle = { when: shape.is('rectangle'), usual: 'stripLength' } as const;
const ofPair = { when: shape.is('pair'), usual: 'stripLength' } as const;

/** What is asked of holes round an outline: what always matters first. */
export const outlineFields = schema(words.labels, {
  shape,
  wide: length({ start: { cm: '12', mm: '120', in: '4 3/4' }, ...ofRectangle }),
  high: length({ start: { cm: '18', mm: '180', in: '7' }, ...ofRectangle }),
  sides: count({ start: '6', when: shape.is('regular') }),
  side: length({
    start: { cm: '8', mm: '80', in: '3' },
    when: shape.is('regular'),
    usual: 'stripLength',
  }),
  ownSides: lengths(words.sideBySide, {
    start: { cm: '20; 12; 15; 13', mm: '200; 120; 150; 130', in: '8; 5; 6; 5 1/4' },
    when: isFree,
  }),
  ownCorners: numbers(words.cornerAfterEach, { start: '90; 90; 112.6; 67.4', when: isFree }),
  across: length({
    start: { cm: '20', mm: '200', in: '8' },
    when: shape.is('circle'),
    usual: 'stripLength',
  }),
  one: length({ start: { cm: '60', mm: '600', in: '24' }, ...ofPair }),
  other: length({ start: { cm: '58', mm: '580', in: '23' }, ...ofPair }),
  by,
  pitch: length({
    start: { cm: '0.5', mm: '5', in: '3/16' },
    when: by.is('pitch'),
    usual: 'holePitch',
  }),
  count: count({ start: '112', when: by.is('count'), usual: 'holes' }),
  margin: length({
    start: { cm: '0.5', mm: '5', in: '3/16' },
    when: shape.is('rectangle', 'regular', 'free', 'circle'),
    usual: 'holeMargin',
  }),
  hole: length({ start: { cm: '0.2', mm: '2', in: '1/16' }, usual: 'punch' }),
});

/** What was read of the fields. */
export type OutlineAsked = InputOf<(typeof outlineFields)['specs']>;

const RULE_FIELDS = ['by', 'pitch', 'count'] as const;
export const ROUND_FIELDS = [
  'shape',
  'wide',
  'high',
  'sides',
  'side',
  'ownSides',
  'ownCorners',
  'across',
  'margin',
  ...RULE_FIELDS,
] as const satisfies readonly (keyof OutlineAsked)[];
export const PAIR_FIELDS = ['one', 'other', ...RULE_FIELDS] as const;

type Of<Keys extends readonly (keyof OutlineAsked)[]> = Pick<OutlineAsked, Keys[number]>;

/** How holes are shared, or by as many as were begun. */
export function ruleOf({ by, pitch, count }: Of<typeof RULE_FIELDS>, begun?: number): HoleRule {
  if (begun !== undefined) return { by: 'count', count: begun };
  return by === 'count' ? { by, ...needed({ count }) } : { by: 'pitch', ...needed({ pitch }) };
}

/** The outline that is asked for. */
export function outlineOf(asked: Of<typeof ROUND_FIELDS>): Outline {
  const { shape, wide, high, sides, side, ownSides, ownCorners, across } = asked;
  const { margin } = needed({ margin: asked.margin });
  if (shape === 'circle') return { shape, margin, ...needed({ across }) };
  if (shape === 'free') return { shape, margin, sides: ownSides, corners: ownCorners };
  return shape === 'regular'
    ? { shape, margin, ...needed({ sides, side }) }
    : { shape: 'rectangle', margin, ...needed({ wide, high }) };
}
