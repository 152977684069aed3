import { dartsWords as words } from '#words/calculations/darts-words.ts';
import {
  choice,
  type FieldSpec,
  given,
  length,
  lengths,
  maybeCount,
  number,
} from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import type { DartsInput, Taking } from '../../sewing/shaping/darts.ts';
import { HIP_TO_WAIST } from '../../sewing/sources/shares.ts';

const usual = HIP_TO_WAIST.value;
const many = (start: number) => maybeCount(words.none, { start: String(start), usual: 'seams' });
const share = (start: number, of: FieldSpec<unknown>) =>
  number({ start: String(start), when: given(of) });
const long = (cm: string, inch: string, of: FieldSpec<unknown>) =>
  length({
    start: { cm, mm: `${cm}0`, in: inch },
    when: given(of),
    usual: 'dartLong',
    label: () => words.long,
  });

const sides = many(usual.sides.count);
const frontDarts = many(usual.frontDarts.count);
const backDarts = many(usual.backDarts.count);
const levels = lengths(words.notGiven);

/** What is asked of darts between two girths: what always matters first. */
export const dartsFields = schema(words.labels, {
  larger: length({ start: { cm: '94', mm: '940', in: '37' }, usual: 'around' }),
  smaller: length({ start: { cm: '74', mm: '740', in: '29' }, usual: 'around' }),
  sides,
  sidesShare: share(usual.sides.share, sides),
  frontDarts,
  frontDartsShare: share(usual.frontDarts.share, frontDarts),
  frontLong: long('10', '4', frontDarts),
  backDarts,
  backDartsShare: share(usual.backDarts.share, backDarts),
  backLong: long('13', '5', backDarts),
  step: length({ start: { cm: '0.1', mm: '1', in: '1/8' } }),
  levels,
  girths: lengths(words.notGiven, { when: given(levels) }),
  legs: choice(words.legs, { when: given(levels) }),
});

/** What was read of the fields. */
export type DartsAsked = InputOf<(typeof dartsFields)['specs']>;

/** Where a part of the difference can be taken, in order. */
export const TAKERS = ['sides', 'frontDarts', 'backDarts'] as const;
export type Taker = (typeof TAKERS)[number];

/** What the shares are worked out from: girths between change only what is said of levels. */
export const DARTS_FIELDS = [
  'larger',
  'smaller',
  ...TAKERS,
  'sidesShare',
  'frontDartsShare',
  'frontLong',
  'backDartsShare',
  'backLong',
  'step',
] as const satisfies readonly (keyof DartsAsked)[];

type Asked = Pick<DartsAsked, (typeof DARTS_FIELDS)[number]>;

/** Which of them are there. */
export function takersOf(asked: Asked): Taker[] {
  return TAKERS.filter((one) => asked[one] !== undefined);
}

/** The darts that are asked for. */
export function dartsInput(asked: Asked): DartsInput {
  const { larger, smaller, step } = asked;
  return { larger, smaller, step, kinds: takersOf(asked).map((one) => takingOf(asked, one)) };
}

function takingOf(asked: Asked, field: Taker): Taking {
  const { count, share } = needed({ count: asked[field], share: asked[`${field}Share`] });
  if (field === 'sides') return { field, count, share };
  const longField = field === 'frontDarts' ? 'frontLong' : 'backLong';
  const { length } = needed({ length: asked[longField] });
  return { field, count, share, long: { field: longField, length } };
}
