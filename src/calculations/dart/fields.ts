import { dartWords as words } from '#words/calculations/dart-words.ts';
import {
  all,
  choice,
  count,
  either,
  length,
  lengthOrNone,
  maybeLength,
  maybeNumber,
  not,
  number,
} from '../../calculation/field-spec.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';

export const what = choice(words.what);
const by = choice(words.by, { when: not(what.is('two')) });
const edge = what.is('edge');

/** What is asked of one dart: what always matters first. */
export const dartFields = schema(words.labels, {
  what,
  by,
  width: length({
    start: { cm: '3', mm: '30', in: '1 1/4' },
    when: either(what.is('two'), by.is('width')),
    usual: 'dartWidth',
  }),
  angle: number({ start: '15', when: all(not(what.is('two')), by.is('angle')) }),
  leg: length({
    start: { cm: '12', mm: '120', in: '4 3/4' },
    when: not(what.is('two')),
    usual: 'dartLong',
  }),
  above: length({
    start: { cm: '12', mm: '120', in: '4 3/4' },
    when: what.is('two'),
    usual: 'dartLong',
  }),
  below: length({
    start: { cm: '14', mm: '140', in: '5 1/2' },
    when: what.is('two'),
    usual: 'dartLong',
  }),
  seam: lengthOrNone(words.none, {
    start: { cm: '1.5', mm: '15', in: '5/8' },
    when: edge,
    usual: 'seamAllowance',
  }),
  slant: number({ start: '90', when: edge }),
  other: maybeNumber(words.smooth, { when: edge }),
  full: maybeLength(words.notGiven, { when: edge, usual: 'dartLong' }),
  piece: maybeLength(words.notGiven, { when: edge, usual: 'across' }),
  reach: length({
    start: { cm: '18', mm: '180', in: '7' },
    when: what.is('moved'),
    usual: 'dartLong',
  }),
  parts: count({ start: '1', when: what.is('moved') }),
  zone: length({
    start: { cm: '8', mm: '80', in: '3' },
    when: what.is('gathers'),
    usual: 'dartLong',
  }),
  part: number({ start: '50', when: what.is('seam') }),
});

/** What was read of the fields. */
export type DartAsked = InputOf<(typeof dartFields)['specs']>;
