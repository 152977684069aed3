import type { Draft, Field } from '../../controls/calculation.ts';
import { hemWords as words } from '../../words/hem-words.ts';

type Label = keyof typeof words.labels;
type Choice = 'style' | 'shape' | 'cloth' | 'corner' | 'taper';

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

/** The fields for what has been chosen: what always matters first. */
export function hemFields(draft: Draft): Field[] {
  const style = chosen(draft, 'style');
  const shape = chosen(draft, 'shape');
  const twice = style === 'unequal' || style === 'narrow';
  return [
    length('depth'),
    ...(twice ? [length('turn')] : []),
    choice('style'),
    choice('shape'),
    ...(shape === 'rise' || shape === 'inward' ? [length('chord'), length('rise')] : []),
    ...(shape === 'readings' ? [length('round'), length('above')] : []),
    ...(shape === 'rise' || shape === 'readings' ? clothFields(draft) : []),
    length('edgeStitch'),
    optional('thickness'),
    optional('finished'),
    choice('corner'),
    ...(chosen(draft, 'corner') === 'mitre' ? [length('side'), number('angle')] : []),
    choice('taper'),
    ...(chosen(draft, 'taper') === 'taper' ? [length('atHem'), length('acrossAbove')] : []),
  ];
}

function clothFields(draft: Draft): Field[] {
  return [choice('cloth'), ...(chosen(draft, 'cloth') === 'own' ? [number('ease')] : [])];
}

function length(key: Label): Field {
  return { kind: 'length', key, label: words.labels[key] };
}

function optional(key: Label): Field {
  return { ...length(key), hint: words.notGiven };
}

function number(key: Label): Field {
  return { kind: 'number', key, label: words.labels[key] };
}

function choice(key: Choice): Field {
  const named = Object.entries(words[key]).map(([value, label]) => ({ value, label }));
  return { kind: 'choice', key, label: words.labels[key], options: named };
}
