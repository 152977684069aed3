import { bindingWords as words } from '#words/calculations/binding-words.ts';
import {
  choice,
  either,
  given,
  length,
  lengthOrNone,
  lengths,
  numbers,
} from '../../calculation/field-spec.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import { ZERO } from '../../lengths/length.ts';
import { goesRound } from '../../sewing/hems/binding.ts';
import type { BoundEdge } from '../../sewing/hems/binding-length.ts';
import { BOUND } from '../../sewing/sources/seams.ts';

const finish = choice(words.finishes);
const isFlat = finish.is('flat');
/** Some edge is given, so that it is known how long the strip is. */
const straight = lengths(words.none, {
  start: { cm: '45; 30; 45; 30', mm: '450; 300; 450; 300', in: '18; 12; 18; 12' },
});
const outLong = lengths(words.none);
const inLong = lengths(words.none);
export const isLong = either(given(straight), given(outLong), given(inLong));
const ends = choice(words.ends, { start: 'ring' });

/** What is asked of a binding: the strip first, then the edge it goes round. */
export const bindingFields = schema(words.labels, {
  finish,
  width: length({
    start: { cm: '1', mm: '10', in: '3/8' },
    when: finish.is('single', 'double', 'band', 'flat'),
    usual: 'boundWidth',
    label: (ask) => (isFlat(ask) ? words.shows : undefined),
  }),
  seam: length({
    start: { cm: '1.5', mm: '15', in: '5/8' },
    when: finish.is('seam', 'cord', 'flat'),
    usual: 'seamAllowance',
  }),
  cord: length({
    start: { cm: '0.6', mm: '6', in: '1/4' },
    when: finish.is('cord'),
    usual: 'cord',
  }),
  straight,
  outLong,
  outRadius: lengths(words.none, { when: given(outLong) }),
  inLong,
  inRadius: lengths(words.none, { when: given(inLong) }),
  corners: numbers(words.noCorners, { start: '90; 90; 90; 90' }),
  ends,
  endTurn: length({ start: { cm: '1', mm: '10', in: '3/8' }, when: ends.is('open') }),
  join: length({ start: { cm: '0.6', mm: '6', in: '1/4' }, when: ends.is('ring') }),
  thickness: lengthOrNone(words.notGiven, { usual: 'clothThick' }),
  edgeThick: lengthOrNone(words.notGiven, {
    when: finish.is('single', 'double'),
    usual: 'seamThick',
  }),
});

/** What was read of the fields. */
export type BindingAsked = InputOf<(typeof bindingFields)['specs']>;

export const WIDTH_FIELDS = [
  'finish',
  'width',
  'seam',
  'cord',
  'thickness',
  'edgeThick',
] as const satisfies readonly (keyof BindingAsked)[];

export const LONG_FIELDS = [
  'finish',
  'width',
  'straight',
  'outLong',
  'outRadius',
  'inLong',
  'inRadius',
  'corners',
  'ends',
  'endTurn',
  'join',
] as const satisfies readonly (keyof BindingAsked)[];

/** The edge that is bound, sewn on a binding's width inside it, or along it. */
export function edgeOf(
  asked: Omit<BindingAsked, 'seam' | 'cord' | 'thickness' | 'edgeThick'>,
): BoundEdge {
  const { finish, width = ZERO, endTurn = ZERO, ends, join, ...parts } = asked;
  return {
    ...parts,
    inside: goesRound(finish) ? width : ZERO,
    endTurn,
    join: ends === 'ring' ? join : undefined,
  };
}

/** How far from the edge the strip is sewn on. */
export function stitchOf({
  finish,
  width = ZERO,
  seam = ZERO,
}: Pick<BindingAsked, 'finish' | 'width' | 'seam'>) {
  if (goesRound(finish)) return width;
  return finish === 'seam' ? BOUND.value.stitch : seam;
}
