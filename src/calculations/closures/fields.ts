import { closuresWords as words } from '#words/closures-words.ts';
import type { Draft, Field } from '../../calculation/calculation.ts';
import { chosen, fieldsCalled } from '../../calculation/fields.ts';
import type { Ends, SpacingRule } from '../../sewing/closure-input.ts';

export type Item = keyof typeof words.items;
export type Side = keyof typeof words.sides;

const itemLabels = Object.fromEntries(
  Object.entries(words.items).map(([key, { label }]) => [key, label]),
) as Record<Item, string>;

const { length, lengths, optional, count, choice } = fieldsCalled(words.labels);

export function byOf(draft: Draft): SpacingRule['by'] {
  return chosen(draft, 'by', words.by);
}

export function endsOf(draft: Draft): Ends {
  return chosen(draft, 'ends', words.ends);
}

export function itemOf(draft: Draft): Item {
  return chosen(draft, 'item', itemLabels);
}

export function sideOf(draft: Draft): Side {
  return chosen(draft, 'side', words.sides);
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
    optional('level', words.none),
    ...(level && !exact ? [choice('levelBy', words.levelBy)] : []),
    lengths('sewn', words.none),
    choice('item', itemLabels),
    ...(by === 'gap' ? [] : [optional('width', words.unknownWidth)]),
    ...(asksLeastGap(draft) ? [optional('leastGap', words.none)] : []),
    choice('side', words.sides),
    ...sideFields(sideOf(draft)),
  ];
}

/** A number can keep a gap around what is sewn, where a width is known; other rules have their own. */
export function asksLeastGap(draft: Draft): boolean {
  const given = (key: string) => (draft[key] ?? '').trim() !== '';
  return byOf(draft) === 'count' && given('sewn') && given('width');
}

function ruleFields(by: SpacingRule['by']): Field[] {
  if (by === 'count') return [count('count')];
  return by === 'gap' ? [length('gap'), length('width')] : [length('pitch')];
}

function sideFields(side: Side): Field[] {
  if (side === 'none') return [];
  return side === 'meet' ? [length('setBack')] : [length('setBack'), length('lap')];
}
