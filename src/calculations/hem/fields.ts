import { hemWords as words } from '#words/hem-words.ts';
import { turnedWords as turned } from '#words/turned-words.ts';
import type { Draft, Field } from '../../calculation/calculation.ts';
import { chosen as chosenOf, fieldsCalled, isGiven } from '../../calculation/fields.ts';

const { length, optional, number, choice } = fieldsCalled(words.labels);

type Choice = 'given' | 'style' | 'shape' | 'cloth' | 'taper';

export function chosen<Key extends Choice>(
  draft: Draft,
  key: Key,
): keyof (typeof words)[Key] & string {
  return chosenOf(
    draft,
    key,
    words[key] as Readonly<Record<keyof (typeof words)[Key] & string, string>>,
  );
}

/** Whether the first turn has a measure of its own. */
export function hasTurn(draft: Draft): boolean {
  const style = chosen(draft, 'style');
  return style === 'unequal' || style === 'narrow';
}

/** Whether the measure is of all there is to turn up. */
export function isWhole(draft: Draft): boolean {
  return chosen(draft, 'given') === 'all';
}

/** The fields for what has been chosen: what always matters first. */
export function hemFields(draft: Draft): Field[] {
  return [
    isWhole(draft) ? { ...length('depth'), label: words.allFor } : length('depth'),
    choice('given', words.given),
    ...(hasTurn(draft) ? [length('turn')] : []),
    choice('style', words.style),
    choice('shape', words.shape),
    ...curveFields(draft),
    length('edgeStitch'),
    optional('thickness', turned.notGiven),
    optional('finished', turned.notGiven),
    ...(isGiven(draft, 'finished') ? [optional('otherEnd', turned.otherEndHint)] : []),
    optional('left', turned.notGiven),
    choice('taper', words.taper),
    ...taperFields(draft),
  ];
}

function curveFields(draft: Draft): Field[] {
  const shape = chosen(draft, 'shape');
  if (shape === 'straight') return [];
  const byReadings = shape === 'readings';
  const measured = byReadings
    ? [length('round'), length('above'), optional('apart', words.asDeep)]
    : [length('chord'), length('rise')];
  return [...measured, ...(shape === 'inward' ? [] : clothFields(draft))];
}

function taperFields(draft: Draft): Field[] {
  if (chosen(draft, 'taper') === 'none') return [];
  const asked = chosen(draft, 'shape') === 'readings';
  const apart = asked ? [] : [optional('apart', words.asDeep)];
  return [length('atHem'), length('acrossAbove'), ...apart];
}

function clothFields(draft: Draft): Field[] {
  const own = chosen(draft, 'cloth') === 'own';
  return [choice('cloth', words.cloth), ...(own ? [number('ease')] : [])];
}
