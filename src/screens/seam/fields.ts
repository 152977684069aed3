import type { Draft, Field } from '../../controls/calculation.ts';
import { chosen, fieldsCalled } from '../../controls/fields.ts';
import { seamWords as words } from '../../words/seam-words.ts';

const { length, optional, count, choice } = fieldsCalled(words.labels);

/** The fields for what has been chosen. */
export function seamFields(draft: Draft): Field[] {
  return [...ownFields(draft), choice('what', words.what)];
}

function ownFields(draft: Draft): Field[] {
  const finish = choice('finish', words.finish);
  switch (chosen(draft, 'what', words.what)) {
    case 'finish': {
      const french = chosen(draft, 'finish', words.finish) === 'french';
      const rows = [length('first'), length('trim'), length('second')];
      return [length('given'), finish, ...(french ? rows : [])];
    }
    case 'change':
      return [length('given'), length('wanted'), count('seams')];
    case 'girth':
      return [
        length('allowance'),
        length('change'),
        count('seams'),
        choice('way', words.way),
        finish,
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
