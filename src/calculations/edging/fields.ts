import { edgingWords as words } from '#words/calculations/edging-words.ts';
import { holeWords } from '#words/common/hole-words.ts';
import {
  all,
  choice,
  given,
  length,
  lengthOrNone,
  lengths,
  maybeCount,
  maybeLength,
  not,
  number,
} from '../../calculation/field-spec.ts';
import { maybeRun } from '../../calculation/run-field.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import type { Fit } from '../../sewing/edging/strip.ts';

const corners = lengths(words.none);
const turned = given(corners);
const follow = maybeRun(words.none, { when: not(turned) });
/** Holes that follow those of another strip have their places from there. */
const following = all(not(turned), given(follow));
const alone = not(following);
const fit = choice<Fit>((ask) => (turned(ask) ? words.fitTurned : words.fit), {
  known: (value) => Object.hasOwn(words.fit, value),
  when: alone,
});
// Round a closed outline the maker chooses the sides to join.
const joined = not(all(fit.is('loop'), turned));
const stock = maybeLength(words.notGiven, { when: all(alone, joined), usual: 'stripLength' });

/** What is asked of a strip of holes: what always matters first. */
export const edgingFields = schema(words.labels, {
  length: length({ start: { cm: '40', mm: '400', in: '16' }, usual: 'stripLength' }),
  pitch: length({
    start: { cm: '0.8', mm: '8', in: '5/16' },
    when: alone,
    usual: 'holePitch',
  }),
  rows: choice(holeWords.rows),
  fit,
  // With the rest at the far end the middle of the row is not that of the strip.
  middle: choice(words.middle, { when: all(alone, not(turned), not(fit.is('far-end'))) }),
  width: length({ start: { cm: '2', mm: '20', in: '3/4' }, usual: 'stripWidth' }),
  margin: length({ start: { cm: '0.5', mm: '5', in: '3/16' }, usual: 'holeMargin' }),
  hole: length({ start: { cm: '0.2', mm: '2', in: '1/16' }, usual: 'punch' }),
  end: maybeLength(words.halfPitch, { when: all(alone, not(fit.is('loop'))), givesWay: true }),
  corners,
  angle: number({ start: '90', when: turned, usual: 'cornerAngle' }),
  radius: maybeLength(words.straight, { when: not(turned), usual: 'curveRadius' }),
  teeth: maybeCount(words.notGiven, { when: alone, usual: 'teeth' }),
  stock,
  crossings: lengths(words.none, { when: all(alone, joined, given(stock)) }),
  follow,
  offset: lengthOrNone(words.samePlaces, { when: following }),
});

/** What was read of the fields. */
export type EdgingAsked = InputOf<(typeof edgingFields)['specs']>;
