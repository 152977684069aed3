import { flareWords as words } from '#words/calculations/flare-words.ts';
import {
  all,
  choice,
  count,
  length,
  lengthOrNone,
  not,
  number,
} from '../../calculation/field-spec.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';

export const what = choice(words.what);
const by = choice(words.by, { when: what.is('slash') });
const opens = choice(words.opens, { when: what.is('godet') });
const godet = what.is('godet');
const changed = what.is('length');

/** What is asked of flare: what always matters first. */
export const flareFields = schema(words.labels, {
  what,
  sweep: length({ start: { cm: '120', mm: '1200', in: '48' }, usual: 'around' }),
  upper: length({ start: { cm: '70', mm: '700', in: '28' }, when: changed, usual: 'around' }),
  long: length({
    start: { cm: '60', mm: '600', in: '24' },
    when: not(godet),
    usual: 'garmentLength',
    label: (ask) => (changed(ask) ? words.edgeToHem : undefined),
  }),
  by,
  slashes: count({ start: '4', when: what.is('slash'), usual: 'seams' }),
  spread: length({
    start: { cm: '5', mm: '50', in: '2' },
    when: all(what.is('slash'), by.is('spread')),
    usual: 'girthChange',
  }),
  wanted: length({
    start: { cm: '140', mm: '1400', in: '56' },
    when: all(what.is('slash'), by.is('wanted')),
    usual: 'around',
  }),
  godets: count({ start: '4', when: godet, usual: 'seams' }),
  edge: length({ start: { cm: '30', mm: '300', in: '12' }, when: godet, usual: 'dartLong' }),
  opens,
  angle: number({ start: '60', when: all(godet, opens.is('angle')) }),
  added: length({
    start: { cm: '30', mm: '300', in: '12' },
    when: all(godet, opens.is('added')),
    usual: 'girthChange',
  }),
  seam: lengthOrNone(words.none, {
    start: { cm: '1.5', mm: '15', in: '5/8' },
    when: godet,
    usual: 'seamAllowance',
  }),
  hemMore: lengthOrNone(words.none, {
    start: { cm: '2', mm: '20', in: '3/4' },
    when: godet,
    usual: 'hemDepth',
  }),
  way: choice(words.way, { when: changed }),
  change: length({
    start: { cm: '5', mm: '50', in: '2' },
    when: changed,
    usual: 'girthChange',
  }),
  pieces: count({ start: '2', when: changed, usual: 'seams' }),
});

/** What was read of the fields. */
export type FlareAsked = InputOf<(typeof flareFields)['specs']>;
