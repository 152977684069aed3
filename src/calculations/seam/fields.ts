import { seamWords as words } from '#words/seam-words.ts';
import type { Draft, Field } from '../../calculation/calculation.ts';
import { chosen, fieldsCalled } from '../../calculation/fields.ts';

const { length, optional, count, choice } = fieldsCalled(words.labels);

/** The fields for what has been chosen. */
export function seamFields(draft: Draft): Field[] {
  return [...ownFields(draft), choice('what', words.what)];
}

function ownFields(draft: Draft): Field[] {
  const finish = choice('finish', words.finish);
  switch (chosen(draft, 'what', words.what)) {
    case 'finish':
      return [length('given'), finish, ...rowFields(draft)];
    case 'change':
      return [length('given'), length('wanted'), count('seams')];
    case 'girth':
      return [
        length('allowance'),
        length('change'),
        count('seams'),
        choice('way', words.way),
        finish,
        ...rowFields(draft),
      ];
    case 'curve':
      return [
        length('radius'),
        length('allowance'),
        length('opening'),
        optional('along', words.notGiven),
      ];
  }
}

/** The rows of the finish that are the maker's. */
function rowFields(draft: Draft): Field[] {
  switch (chosen(draft, 'finish', words.finish)) {
    case 'french':
      return [length('first'), length('trim'), length('second')];
    case 'felled':
      return [length('under'), length('turn')];
    default:
      return [];
  }
}
