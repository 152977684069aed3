import { seamWords as words } from '#words/calculations/seam-words.ts';
import { all, choice, count, given, length, maybeLength } from '../../calculation/field-spec.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';

const what = choice(words.what);
const changes = what.is('change');
const girth = what.is('girth');
const curve = what.is('curve');
const finishes = what.is('finish', 'girth');
const finish = choice(words.finish, { start: 'french', when: finishes });
const french = all(finishes, finish.is('french'));
const felled = all(finishes, finish.is('felled'));
const plain = all(what.is('finish'), finish.is('plain'));
const top = maybeLength(words.none, { when: plain, usual: 'seamTrim' });
const laid = choice(words.laid, { when: felled });

/** What is asked of a seam allowance, for what is to be done with it. */
export const seamFields = schema(words.labels, {
  given: length({
    start: { cm: '1.5', mm: '15', in: '5/8' },
    when: what.is('finish', 'change'),
    usual: 'seamAllowance',
    givesWay: true,
  }),
  wanted: length({
    start: { cm: '1', mm: '10', in: '3/8' },
    when: changes,
    usual: 'seamAllowance',
  }),
  radius: length({
    start: { cm: '8', mm: '80', in: '3' },
    when: curve,
    usual: 'curveRadius',
  }),
  allowance: length({
    start: { cm: '2', mm: '20', in: '3/4' },
    when: what.is('girth', 'curve'),
    usual: 'seamAllowance',
    givesWay: true,
  }),
  change: length({
    start: { cm: '2', mm: '20', in: '3/4' },
    when: girth,
    usual: 'girthChange',
  }),
  seams: count({ start: '4', when: what.is('change', 'girth'), usual: 'seams' }),
  way: choice(words.way, { when: girth }),
  finish,
  first: length({
    start: { cm: '0.9', mm: '9', in: '3/8' },
    when: french,
    usual: 'seamAllowance',
    givesWay: true,
  }),
  trim: length({ start: { cm: '0.3', mm: '3', in: '1/8' }, when: french, usual: 'seamTrim' }),
  second: length({
    start: { cm: '0.6', mm: '6', in: '1/4' },
    when: french,
    usual: 'seamAllowance',
    givesWay: true,
  }),
  under: length({
    start: { cm: '0.3', mm: '3', in: '1/8' },
    when: felled,
    givesWay: true,
    label: (ask) => (laid.is('inset')(ask) ? words.underTakes : undefined),
  }),
  turn: length({ start: { cm: '0.6', mm: '6', in: '1/4' }, when: felled, givesWay: true }),
  laid,
  top,
  topSecond: maybeLength(words.none, { when: all(plain, given(top)), usual: 'seamAllowance' }),
  opening: length({
    start: { cm: '0.2', mm: '2', in: '1/8' },
    when: curve,
    usual: 'clipOpening',
  }),
  along: maybeLength(words.notGiven, { when: curve, usual: 'curveLength' }),
  edge: maybeLength(words.notGiven, {
    when: all(what.is('finish'), finish.is('bound')),
    usual: 'around',
  }),
  what,
});

/** What was read of the fields. */
export type SeamAsked = InputOf<(typeof seamFields)['specs']>;
