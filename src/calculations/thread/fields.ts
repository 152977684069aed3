import { threadWords as words } from '#words/calculations/thread-words.ts';
import {
  type Ask,
  all,
  choice,
  count,
  either,
  length,
  lengthOrNone,
  lengths,
  maybeLength,
  maybeNumber,
  not,
  number,
} from '../../calculation/field-spec.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import { fedAtOnce, type ThreadInput } from '../../sewing/seams/thread.ts';
import { type RatioBy, waysFor } from '../../sewing/seams/thread-ratio.ts';
import { type StitchKind, THREADS } from '../../sewing/sources/thread.ts';

const stitch = choice(words.stitches, { start: 'chain' });
const isStitch = (chosen: string): chosen is StitchKind => Object.hasOwn(THREADS, chosen);

const by = choice<RatioBy>(
  (ask) => {
    const chosen = ask(stitch);
    const ways = isStitch(chosen) ? waysFor(chosen) : [];
    return Object.fromEntries(ways.map((way) => [way, words.by[way]]));
  },
  { known: (value) => Object.hasOwn(words.by, value) },
);

/** Sewn from one thread alone. */
const isOneThread = stitch.is('single', 'blind', 'hand');
/** How many threads are fed at once. */
export const fedBy = (ask: Ask): number => {
  const chosen = ask(stitch);
  return isStitch(chosen) ? fedAtOnce(chosen) : 1;
};
/** A bobbin is wound for it. */
export const isWound = stitch.is('lock', 'zigzag');
/** It is known how much the needle's thread is, and how much the other's. */
export const isParted = all(
  not(isOneThread),
  either(stitch.is('lock', 'zigzag', 'chain'), by.is('sample')),
);

/** What is asked of thread: what always matters first. */
export const threadFields = schema(words.labels, {
  seams: lengths(words.noSeam, { start: { cm: '107', mm: '1070', in: '42' } }),
  stitch,
  by,
  thickness: length({
    start: { cm: '0.19', mm: '1.9', in: '0.075' },
    when: by.is('formula'),
    usual: 'seamThick',
  }),
  stitchLong: length({
    start: { cm: '0.3', mm: '3', in: '1/8' },
    when: by.is('formula'),
    usual: 'stitchLong',
  }),
  zigWide: length({
    start: { cm: '0.3', mm: '3', in: '1/8' },
    when: all(by.is('formula'), stitch.is('zigzag')),
    usual: 'stitchLong',
  }),
  sampleSeam: length({ start: { cm: '10', mm: '100', in: '3' }, when: by.is('sample') }),
  sampleNeedle: length({ start: { cm: '30', mm: '300', in: '9' }, when: by.is('sample') }),
  sampleOther: length({
    start: { cm: '27', mm: '270', in: '8' },
    when: all(by.is('sample'), not(isOneThread)),
  }),
  passes: count({ start: '1' }),
  end: lengthOrNone(words.none, { usual: 'threadEnd' }),
  waste: number({ start: '15', usual: 'threadWaste' }),
  spool: maybeLength(words.notGiven, { usual: 'spool' }),
  bobbin: maybeLength(words.notGiven, { when: isWound, usual: 'spool' }),
  working: length({
    start: { cm: '50', mm: '500', in: '20' },
    when: stitch.is('hand'),
    usual: 'workingThread',
  }),
  tail: length({
    start: { cm: '10', mm: '100', in: '4' },
    when: stitch.is('hand'),
    usual: 'threadEnd',
  }),
  tex: maybeNumber(words.notGiven, { usual: 'tex' }),
});

/** What was read of the fields. */
export type ThreadAsked = InputOf<(typeof threadFields)['specs']>;

/** What the thread itself is worked out from: the rest says how it is bought and wound. */
export const SEAM_FIELDS = [
  'seams',
  'stitch',
  'by',
  'thickness',
  'stitchLong',
  'zigWide',
  'sampleSeam',
  'sampleNeedle',
  'sampleOther',
  'passes',
  'end',
  'waste',
] as const satisfies readonly (keyof ThreadAsked & keyof ThreadInput)[];
