import { centreWords as words } from '#words/centre-words.ts';
import { count, maybeCount, maybeLength } from '../../calculation/field-spec.ts';
import { schema } from '../../calculation/schema.ts';

/** What is asked of a row whose holes are counted. */
export const centreFields = schema(words.labels, {
  count: count({ start: '27', usual: 'holes' }),
  other: maybeCount(words.notGiven, { usual: 'holes' }),
  pitch: maybeLength(words.notGiven, { start: '8 mm', usual: 'holePitch' }),
  measured: maybeLength(words.notGiven, { usual: 'stripLength' }),
});

/** Drawn when the pitch is not known: a usual one. Nothing is worked out from it. */
export const USUAL_PITCH_MM = 8;
