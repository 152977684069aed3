import { curveWords as words } from '#words/calculations/curve-words.ts';
import { choice, count, length, lengthOrNone, maybeLength } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import { ZERO } from '../../lengths/length.ts';
import type { GrainInput } from '../../sewing/cloth/grain.ts';
import type { ArcInput } from '../../sewing/pieces/curve.ts';
import type { WalkInput } from '../../sewing/pieces/walked.ts';

export const kind = choice(words.kind);
const ofArc = { when: kind.is('arc') } as const;
const ofWalk = { when: kind.is('walk') } as const;
const ofSlant = { when: kind.is('slant') } as const;
const ofSquare = { when: kind.is('square'), usual: 'stripLength' } as const;
const ofGrain = { when: kind.is('grain') } as const;

/** What is asked of curves, slants and cut ends: what always matters first. */
export const curveFields = schema(words.labels, {
  kind,
  chord: length({ start: { cm: '24', mm: '240', in: '9 1/2' }, ...ofArc, usual: 'chord' }),
  rise: length({ start: { cm: '5', mm: '50', in: '2' }, ...ofArc }),
  off: lengthOrNone(words.none, {
    start: { cm: '1.5', mm: '15', in: '5/8' },
    ...ofArc,
    usual: 'seamAllowance',
  }),
  side: choice(words.side, ofArc),
  walkStep: length({ start: { cm: '1', mm: '10', in: '1/2' }, ...ofWalk }),
  walkSteps: count({ start: '38', ...ofWalk }),
  walkRest: lengthOrNone(words.none, { start: { cm: '0.4', mm: '4', in: '1/8' }, ...ofWalk }),
  walkRadius: maybeLength(words.notGiven, { ...ofWalk, usual: 'curveRadius' }),
  parts: count({ start: '4', when: kind.is('arc', 'walk') }),
  high: length({ start: { cm: '60', mm: '600', in: '24' }, ...ofSlant, usual: 'garmentLength' }),
  aside: lengthOrNone(words.none, { start: { cm: '11', mm: '110', in: '4 1/2' }, ...ofSlant }),
  long: length({ start: { cm: '90', mm: '900', in: '36' }, ...ofSquare }),
  one: length({ start: { cm: '168', mm: '1680', in: '66' }, ...ofSquare }),
  other: length({ start: { cm: '165', mm: '1650', in: '65' }, ...ofSquare }),
  clothWide: length({
    start: { cm: '140', mm: '1400', in: '55' },
    ...ofGrain,
    usual: 'clothWidth',
  }),
  bow: lengthOrNone(words.none, { start: { cm: '2.8', mm: '28', in: '1 1/8' }, ...ofGrain }),
  ahead: lengthOrNone(words.none, { start: { cm: '4.2', mm: '42', in: '1 5/8' }, ...ofGrain }),
  over: length({ start: { cm: '50', mm: '500', in: '20' }, ...ofGrain, usual: 'across' }),
});

/** What was read of the fields. */
export type CurveAsked = InputOf<(typeof curveFields)['specs']>;

export const ARC_FIELDS = ['chord', 'rise', 'off', 'side', 'parts'] as const;
export const WALK_FIELDS = ['walkStep', 'walkSteps', 'walkRest', 'walkRadius', 'parts'] as const;
export const SLANT_FIELDS = ['high', 'aside'] as const;
export const SQUARE_FIELDS = ['long', 'one', 'other'] as const;
export const GRAIN_FIELDS = ['clothWide', 'bow', 'ahead'] as const;

type Of<Keys extends readonly (keyof CurveAsked)[]> = Pick<CurveAsked, Keys[number]>;

/** The curve that is asked for, or with as many parts as were begun. */
export function arcInput(
  { chord, rise, off = ZERO, side, parts }: Of<typeof ARC_FIELDS>,
  begun?: number,
): ArcInput {
  const all = needed({ chord, rise, parts });
  const inward = side === 'outside' ? 'outside' : 'inside';
  return { ...all, off, side: inward, parts: begun === undefined ? all.parts : begun - 1 };
}

/** The curve that was walked, or with as many parts as were begun. */
export function walkInput(
  { walkStep, walkSteps, walkRest = ZERO, walkRadius: radius, parts }: Of<typeof WALK_FIELDS>,
  begun?: number,
): WalkInput {
  const all = needed({ step: walkStep, steps: walkSteps, parts });
  return { ...all, rest: walkRest, radius, parts: begun === undefined ? all.parts : begun - 1 };
}

/** The slanted edge that is asked for. */
export function slantInput({ high, aside = ZERO }: Of<typeof SLANT_FIELDS>) {
  return { ...needed({ high }), aside };
}

/** The cloth that is off its grain. */
export function grainInput({
  clothWide,
  bow = ZERO,
  ahead = ZERO,
}: Of<typeof GRAIN_FIELDS>): GrainInput {
  return { ...needed({ wide: clothWide }), bow, ahead };
}

/** The cloth that is squared. */
export function squareInput({ long, one, other }: Of<typeof SQUARE_FIELDS>) {
  return needed({ long, one, other });
}
