import { tucksWords as words } from '#words/calculations/tucks-words.ts';
import {
  all,
  choice,
  count,
  given,
  length,
  lengthOrNone,
  maybeLength,
} from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type InputOf, schema, type Typed } from '../../calculation/schema.ts';
import type { TuckSpread, TucksInput } from '../../sewing/fullness/tuck-input.ts';

export const by = choice(words.by);

const step = lengthOrNone(words.alike);

/** What is asked of tucks: what always matters first. */
export const tuckFields = schema(words.labels, {
  finished: length({ start: { cm: '28', mm: '280', in: '11' }, usual: 'around' }),
  by,
  gap: length({
    start: { cm: '1.5', mm: '15', in: '5/8' },
    when: by.is('gap'),
    usual: 'pleatWidth',
  }),
  spacing: length({
    start: { cm: '1.7', mm: '17', in: '5/8' },
    when: by.is('spacing', 'groups'),
    usual: 'pleatWidth',
  }),
  count: count({ start: '15', when: by.is('count'), usual: 'pleats' }),
  groups: count({ start: '3', when: by.is('groups'), usual: 'pleats' }),
  each: count({ start: '3', when: by.is('groups'), usual: 'pleats' }),
  fit: choice(words.fit, { when: by.is('gap', 'spacing') }),
  depth: length({ start: { cm: '0.2', mm: '2', in: '1/8' }, givesWay: true }),
  first: length({ start: { cm: '2', mm: '20', in: '3/4' }, usual: 'endMargin', givesWay: true }),
  last: maybeLength(words.asFirst, { usual: 'endMargin', givesWay: true }),
  step,
  anew: choice(words.anew, { when: all(by.is('groups'), given(step)) }),
  lies: choice(words.lies),
  radius: maybeLength(words.straight, { usual: 'curveRadius' }),
  seam: lengthOrNone(words.none, { usual: 'seamAllowance', givesWay: true }),
});

/** What was read of the fields. */
export type TucksAsked = InputOf<(typeof tuckFields)['specs']>;
/** What is typed in fields for the maker. */
export type TucksTyped = Typed<(typeof tuckFields)['specs']>;

/** What the tucks themselves are worked out from. */
export const TUCK_FIELDS = [
  'finished',
  'by',
  'gap',
  'spacing',
  'count',
  'groups',
  'each',
  'fit',
  'depth',
  'first',
  'last',
  'step',
  'anew',
  'lies',
  'seam',
] as const satisfies readonly (keyof TucksAsked)[];

type Asked = Pick<TucksAsked, (typeof TUCK_FIELDS)[number]>;

/** The tucks that are asked for. */
export function tucksInput(asked: Asked): TucksInput {
  const { finished, first, last = first, depth, step, anew, lies, seam } = asked;
  const spread = spreadOf(asked);
  return { finished, first, last, depth, step, anew: anew === 'group', lies, seam, spread };
}

function spreadOf({ by, gap, spacing, count, groups, each, fit }: Asked): TuckSpread {
  switch (by) {
    case 'gap':
      return { by, fit, ...needed({ gap }) };
    case 'spacing':
      return { by, fit, ...needed({ spacing }) };
    case 'count':
      return { by, ...needed({ count }) };
    case 'groups':
      return { by, ...needed({ groups, each, spacing }) };
  }
}
