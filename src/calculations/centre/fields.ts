import { centreWords as words } from '#words/calculations/centre-words.ts';
import { count, maybeCount, maybeLength } from '../../calculation/field-spec.ts';
import { schema } from '../../calculation/schema.ts';

/** Which end was counted from, in older addresses. */
const PAST = ['end'];

/** What is asked of a row whose holes are counted. */
export const centreFields = schema(
  words.labels,
  {
    count: count({ start: '27', usual: 'holes' }),
    other: maybeCount(words.notGiven, { usual: 'holes' }),
    pitch: maybeLength(words.notGiven, { start: '8 mm', usual: 'holePitch' }),
    measured: maybeLength(words.notGiven, { usual: 'stripLength' }),
  },
  PAST,
);

/** Drawn when the pitch is not known: a usual one. Nothing is worked out from it. */
export const USUAL_PITCH_MM = 8;
