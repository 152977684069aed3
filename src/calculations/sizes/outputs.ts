import { sizesOutputWords as words } from '#words/outputs/sizes-output-words.ts';
import { needed } from '../../calculation/needed.ts';
import { type Outputs, outputOf } from '../../calculation/output.ts';
import { nearestButton } from '../../sewing/closures/buttons.ts';
import { mapped } from '../../sewing/problem.ts';
import { sizesFields } from './fields.ts';
import { needleOf, ofKind, stitchOf } from './worked.ts';

const output = outputOf(sizesFields);
const { what } = sizesFields.specs;

const ofStitch = { field: 'what', is: what.is('stitch') } as const;
const ofButton = { field: 'what', is: what.is('button') } as const;
const ofNeedle = { field: 'what', is: what.is('needle') } as const;

/** What a size gives: nothing is made of it, it is taken over into other work. */
export const sizesOutputs: Outputs = {
  id: 'sizes',
  rule: 1,
  fields: sizesFields,
  outputs: [
    output({
      key: 'stitch',
      name: words.stitch,
      kind: 'length',
      reads: ['stitch', 'stitchBy'],
      when: ofStitch,
      of: ({ stitch, stitchBy }) =>
        mapped(
          ofKind('stitch', stitchOf(needed({ stitch }).stitch, stitchBy)),
          ({ length }) => length,
        ),
    }),
    output({
      key: 'per-inch',
      name: words.perInch,
      kind: 'number',
      reads: ['stitch', 'stitchBy'],
      when: ofStitch,
      of: ({ stitch, stitchBy }) =>
        mapped(
          ofKind('stitch', stitchOf(needed({ stitch }).stitch, stitchBy)),
          ({ perInch }) => perInch,
        ),
    }),
    output({
      key: 'button',
      name: words.button,
      kind: 'length',
      reads: ['button'],
      when: ofButton,
      of: (fields) => {
        const { button } = needed(fields);
        return mapped(ofKind('button', nearestButton(button)), () => button);
      },
    }),
    output({
      key: 'button-sold',
      name: words.sold,
      kind: 'length',
      reads: ['button'],
      when: ofButton,
      of: (fields) =>
        mapped(ofKind('button', nearestButton(needed(fields).button)), ({ size }) => size.diameter),
    }),
    output({
      key: 'needle',
      name: words.needle,
      kind: 'number',
      reads: ['needle', 'needleBy'],
      when: ofNeedle,
      of: ({ needle, needleBy }) =>
        mapped(
          ofKind('needle', needleOf(needed({ needle }).needle, needleBy)),
          (match) => match.needle.metric,
        ),
    }),
  ],
};
