import { biasWords as words } from '#words/calculations/bias-words.ts';
import { all, type Condition, choice, length, not } from '../../calculation/field-spec.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';

const from = choice(words.from);
const [isStrips, isRound, isSingle] = [from.is('strips'), from.is('round'), from.is('single')];
/** The cloth or the strip: of a tube it is asked by itself, with what only a tube asks. */
const want = choice(words.want, { when: not(isRound) });
const tube = choice(words.want, { when: isRound });
/** There is a piece, and it is asked what it gives. */
export const isHave: Condition = (ask) => (isRound(ask) ? tube : want).is('have')(ask);

/** What is asked of bias strips: what always matters first. */
export const biasFields = schema(words.labels, {
  width: length({ start: { cm: '2.5', mm: '25', in: '1' }, usual: 'biasWidth' }),
  need: length({
    start: { cm: '500', mm: '5000', in: '200' },
    when: not(isHave),
    usual: 'biasLong',
  }),
  from,
  want,
  tube,
  cloth: length({
    start: { cm: '86', mm: '860', in: '34' },
    when: isStrips,
    usual: 'clothWidth',
  }),
  long: length({
    start: { cm: '20', mm: '200', in: '8' },
    when: isHave,
    label: (ask) => (isStrips(ask) ? undefined : words.long[isRound(ask) ? 'round' : 'single']),
  }),
  shortest: length({ start: { cm: '10', mm: '100', in: '4' }, when: isStrips }),
  sideShort: length({ start: { cm: '20', mm: '200', in: '8' }, when: all(isRound, isHave) }),
  seam: length({
    start: { cm: '0.6', mm: '6', in: '1/4' },
    when: not(isSingle),
    usual: 'seamAllowance',
  }),
});

/** What was read of the fields. */
export type BiasAsked = InputOf<(typeof biasFields)['specs']>;

/** Everything but how many are asked for hangs on all of them. */
export const ALL_FIELDS = [
  'width',
  'need',
  'from',
  'want',
  'tube',
  'cloth',
  'long',
  'shortest',
  'sideShort',
  'seam',
] as const satisfies readonly (keyof BiasAsked)[];

export { isRound, isSingle, isStrips };

/** A piece is given, and it is asked what it gives: what isn't asked for is its first choice. */
export function hasPiece({ want, tube }: Pick<BiasAsked, 'want' | 'tube'>): boolean {
  return want === 'have' || tube === 'have';
}
