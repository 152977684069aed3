import type { Draft, Field } from '../../controls/calculation.ts';
import { chosen as chosenOf, fieldsCalled } from '../../controls/fields.ts';
import { hemWords as words } from '../../words/hem-words.ts';

const { length, optional, number, choice } = fieldsCalled(words.labels);

type Choice = 'style' | 'shape' | 'cloth' | 'corner' | 'taper';

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

/** The fields for what has been chosen: what always matters first. */
export function hemFields(draft: Draft): Field[] {
  const style = chosen(draft, 'style');
  const shape = chosen(draft, 'shape');
  const twice = style === 'unequal' || style === 'narrow';
  return [
    length('depth'),
    ...(twice ? [length('turn')] : []),
    choice('style', words.style),
    choice('shape', words.shape),
    ...(shape === 'rise' || shape === 'inward' ? [length('chord'), length('rise')] : []),
    ...(shape === 'readings' ? [length('round'), length('above')] : []),
    ...(shape === 'rise' || shape === 'readings' ? clothFields(draft) : []),
    length('edgeStitch'),
    optional('thickness', words.notGiven),
    optional('finished', words.notGiven),
    choice('corner', words.corner),
    ...(chosen(draft, 'corner') === 'mitre' ? [length('side'), number('angle')] : []),
    choice('taper', words.taper),
    ...(chosen(draft, 'taper') === 'taper' ? [length('atHem'), length('acrossAbove')] : []),
  ];
}

function clothFields(draft: Draft): Field[] {
  const own = chosen(draft, 'cloth') === 'own';
  return [choice('cloth', words.cloth), ...(own ? [number('ease')] : [])];
}
