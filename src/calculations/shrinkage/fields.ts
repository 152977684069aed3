import { shrinkageWords as words } from '#words/calculations/shrinkage-words.ts';
import {
  all,
  choice,
  given,
  length,
  lengths,
  maybeLength,
  maybeNumber,
  numbers,
} from '../../calculation/field-spec.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';

const acrossBefore = maybeLength(words.notMeasured, {
  start: { cm: '50', mm: '500', in: '42' },
  usual: 'sample',
});
/** It was measured across the grain, too. */
export const isAcross = given(acrossBefore);
const long = maybeLength(words.notGiven, {
  start: { cm: '60', mm: '600', in: '24' },
  usual: 'garmentLength',
});
const wide = maybeLength(words.notGiven, {
  start: { cm: '40', mm: '400', in: '16' },
  when: isAcross,
  usual: 'around',
});
const there = maybeLength(words.notGiven);
const thereWide = maybeLength(words.notGiven, { when: isAcross });
const other = maybeNumber(words.notGiven, { usual: 'shrinkage' });

/** What is asked of shrinkage: the sample first. */
export const shrinkageFields = schema(words.labels, {
  alongBefore: length({ start: { cm: '50', mm: '500', in: '36' }, usual: 'sample' }),
  alongAfter: lengths(words.notMeasured, { start: { cm: '48.5', mm: '485', in: '35' } }),
  acrossBefore,
  acrossAfter: lengths(words.notMeasured, {
    start: { cm: '49.5', mm: '495', in: '41' },
    when: isAcross,
  }),
  long,
  wide,
  moreAlong: numbers(words.more),
  moreAcross: numbers(words.more, { when: isAcross }),
  growth: choice(words.growth),
  there,
  thereWide,
  other,
});

/** What was read of the fields. */
export type ShrinkageAsked = InputOf<(typeof shrinkageFields)['specs']>;

export type Way = 'along' | 'across';

/** The fields of each way. */
export const FIELDS = {
  along: { before: 'alongBefore', after: 'alongAfter', more: 'moreAlong' },
  across: { before: 'acrossBefore', after: 'acrossAfter', more: 'moreAcross' },
} as const;

/** Whether what is cut, or what comes of what is there, is asked for each way. */
export const isWanted = { along: given(long), across: all(isAcross, given(wide)) };
export const isThere = { along: given(there), across: all(isAcross, given(thereWide)) };
/** The interfacing is compared over a length. */
export const isCompared = all(given(long), given(other));
