import type { Draft, Field } from '../../controls/calculation.ts';
import type { Ends, SpacingRule } from '../../sewing/closure-input.ts';
import { closuresWords as words } from '../../words/closures-words.ts';

export type Item = keyof typeof words.items;
export type Side = keyof typeof words.sides;

/** What was chosen, or the first choice for anything unknown in an address. */
export function byOf(draft: Draft): SpacingRule['by'] {
  return pick(draft.by, words.by, 'count');
}

export function endsOf(draft: Draft): Ends {
  return pick(draft.ends, words.ends, 'given');
}

export function itemOf(draft: Draft): Item {
  return pick(draft.item, words.items, 'hook');
}

export function sideOf(draft: Draft): Side {
  return pick(draft.side, words.sides, 'none');
}

function pick<Key extends string>(
  value: string | undefined,
  choices: Readonly<Record<Key, unknown>>,
  otherwise: Key,
): Key {
  return value !== undefined && Object.hasOwn(choices, value) ? (value as Key) : otherwise;
}

/** The fields for what has been chosen: what always matters first. */
export function closureFields(draft: Draft): Field[] {
  const by = byOf(draft);
  const level = (draft.level ?? '').trim() !== '';
  const exact = by === 'exact' || by === 'gap';
  return [
    length('opening'),
    ...ruleFields(by),
    ...(endsOf(draft) === 'given' ? [length('top'), length('bottom')] : []),
    choice('by', words.by),
    choice('ends', words.ends),
    { ...length('level'), hint: words.none },
    ...(level && !exact ? [choice('levelBy', words.levelBy)] : []),
    { kind: 'lengths', key: 'sewn', label: words.labels.sewn, hint: words.none },
    choice('item', itemLabels()),
    ...(by === 'gap' ? [] : [{ ...length('width'), hint: words.unknownWidth }]),
    choice('side', words.sides),
    ...sideFields(sideOf(draft)),
  ];
}

function ruleFields(by: SpacingRule['by']): Field[] {
  if (by === 'count') return [{ kind: 'count', key: 'count', label: words.labels.count }];
  return by === 'gap' ? [length('gap'), length('width')] : [length('pitch')];
}

function sideFields(side: Side): Field[] {
  if (side === 'none') return [];
  return side === 'meet' ? [length('setBack')] : [length('setBack'), length('lap')];
}

function length(key: keyof typeof words.labels): Field {
  return { kind: 'length', key, label: words.labels[key] };
}

function choice(key: keyof typeof words.labels, options: Readonly<Record<string, string>>): Field {
  const pairs = Object.entries(options);
  const named = pairs.map(([value, label]) => ({ value, label }));
  return { kind: 'choice', key, label: words.labels[key], options: named };
}

function itemLabels(): Record<string, string> {
  return Object.fromEntries(Object.entries(words.items).map(([key, { label }]) => [key, label]));
}
