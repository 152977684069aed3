import type { Draft, Field } from '../../controls/calculation.ts';
import { seamWords as words } from '../../words/seam-words.ts';

type Label = keyof typeof words.labels;
type Choice = 'what' | 'finish' | 'way';

/** What was chosen, or the first choice for anything unknown in an address. */
export function chosen<Key extends Choice>(
  draft: Draft,
  key: Key,
): keyof (typeof words)[Key] & string {
  const choices: Readonly<Record<string, string>> = words[key];
  const value = draft[key] ?? '';
  const known = Object.hasOwn(choices, value) ? value : (Object.keys(choices)[0] ?? '');
  return known as keyof (typeof words)[Key] & string;
}

/** The fields for what has been chosen. */
export function seamFields(draft: Draft): Field[] {
  return [...ownFields(draft), choice('what')];
}

function ownFields(draft: Draft): Field[] {
  switch (chosen(draft, 'what')) {
    case 'finish':
      return [length('given'), choice('finish'), ...frenchFields(draft)];
    case 'change':
      return [length('given'), length('wanted'), count('seams')];
    case 'girth':
      return [
        length('allowance'),
        length('change'),
        count('seams'),
        choice('way'),
        choice('finish'),
      ];
    case 'curve':
      return [length('radius'), length('allowance'), length('opening')];
  }
}

function frenchFields(draft: Draft): Field[] {
  return chosen(draft, 'finish') === 'french'
    ? [length('first'), length('trim'), length('second')]
    : [];
}

function length(key: Label): Field {
  return { kind: 'length', key, label: words.labels[key] };
}

function count(key: Label): Field {
  return { kind: 'count', key, label: words.labels[key] };
}

function choice(key: Choice): Field {
  const named = Object.entries(words[key]).map(([value, label]) => ({ value, label }));
  return { kind: 'choice', key, label: words.labels[key], options: named };
}
