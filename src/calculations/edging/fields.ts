import { edgingWords as words } from '#words/edging-words.ts';
import { holeWords } from '#words/hole-words.ts';
import type { Draft, Field } from '../../calculation/calculation.ts';
import { chosen, fieldsCalled, isGiven } from '../../calculation/fields.ts';
import type { Fit, Middle, Rows } from '../../sewing/strip.ts';

const { length, lengths, optional, optionalCount, number, choice } = fieldsCalled(words.labels);

export const rowsOf = (draft: Draft): Rows => chosen(draft, 'rows', holeWords.rows);
export const fitOf = (draft: Draft): Fit =>
  isGiven(draft, 'corners')
    ? chosen(draft, 'fit', words.fitTurned)
    : chosen(draft, 'fit', words.fit);
export const middleOf = (draft: Draft): Middle => chosen(draft, 'middle', words.middle);

/** The fields for what has been chosen: what always matters first. */
export function edgingFields(draft: Draft): Field[] {
  const turned = isGiven(draft, 'corners');
  const fit = fitOf(draft);
  const loop = fit === 'loop';
  // With the rest at the far end the middle of the row is not that of the strip.
  const centred = !turned && fit !== 'far-end';
  return [
    length('length'),
    length('pitch'),
    choice('rows', holeWords.rows),
    choice('fit', turned ? words.fitTurned : words.fit),
    ...(centred ? [choice('middle', words.middle)] : []),
    length('width'),
    length('margin'),
    length('hole'),
    ...(loop ? [] : [optional('end', words.halfPitch)]),
    lengths('corners', words.none),
    turned ? number('angle') : optional('radius', words.straight),
    optionalCount('teeth', words.notGiven),
    // Round a closed outline the maker chooses the sides to join.
    ...(loop && turned ? [] : [optional('stock', words.notGiven)]),
    ...(!(loop && turned) && isGiven(draft, 'stock') ? [lengths('crossings', words.none)] : []),
  ];
}
