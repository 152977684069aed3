import { repeatWords as words } from '#words/calculations/repeat-words.ts';
import { choice, count, length, number } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import type { CentreInput, MatchInput, SlantInput } from '../../sewing/cloth/repeat.ts';

export const kind = choice(words.kind);
const ofPanels = { when: kind.is('panels') } as const;
const ofMatch = { when: kind.is('match') } as const;
const ofSlant = { when: kind.is('slant') } as const;

/** What is asked of cloth with a repeat: what always matters first. */
export const repeatFields = schema(words.labels, {
  kind,
  span: length({ start: { cm: '32', mm: '320', in: '12 1/2' } }),
  repeats: count({ start: '1' }),
  panels: count({ start: '4', ...ofPanels, usual: 'pieces' }),
  long: length({
    start: { cm: '110', mm: '1100', in: '43' },
    ...ofPanels,
    usual: 'garmentLength',
  }),
  first: length({ start: { cm: '12', mm: '120', in: '5' }, ...ofMatch }),
  below: length({ start: { cm: '20', mm: '200', in: '8' }, ...ofMatch }),
  free: length({ start: { cm: '70', mm: '700', in: '28' }, ...ofMatch }),
  on: choice(words.on, { when: kind.is('centre') }),
  wide: length({
    start: { cm: '75', mm: '750', in: '30' },
    when: kind.is('centre'),
    usual: 'across',
  }),
  one: number({ start: '5', ...ofSlant }),
  other: number({ start: '12', ...ofSlant }),
  seam: length({ start: { cm: '60', mm: '600', in: '24' }, ...ofSlant, usual: 'garmentLength' }),
  way: choice(words.way),
});

/** What was read of the fields. */
export type RepeatAsked = InputOf<(typeof repeatFields)['specs']>;

export const REPEAT_FIELDS = ['span', 'repeats'] as const;
export const PANEL_FIELDS = [...REPEAT_FIELDS, 'panels', 'long'] as const;
export const MATCH_FIELDS = [...REPEAT_FIELDS, 'first', 'below', 'free'] as const;
export const CENTRE_FIELDS = [...REPEAT_FIELDS, 'on', 'wide'] as const;
export const SLANT_FIELDS = [...REPEAT_FIELDS, 'one', 'other', 'seam'] as const;

type Of<Keys extends readonly (keyof RepeatAsked)[]> = Pick<RepeatAsked, Keys[number]>;

/** Two pieces that are to match. */
export function matchInput(asked: Of<typeof MATCH_FIELDS>): MatchInput {
  const { span, repeats, first, below, free } = asked;
  return { span, repeats, ...needed({ first, below, free }) };
}

/** A piece by its centre. */
export function centreInput({ span, repeats, on, wide }: Of<typeof CENTRE_FIELDS>): CentreInput {
  return { span, repeats, on: on === 'between' ? 'between' : 'line', ...needed({ wide }) };
}

/** A seam that slants. */
export function slantInput(asked: Of<typeof SLANT_FIELDS>): SlantInput {
  const { span, repeats, one, other, seam } = asked;
  return { span, repeats, ...needed({ one, other, seam }) };
}
