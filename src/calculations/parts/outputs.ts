import { cautionWords } from '#words/common/caution-words.ts';
import { partsOutputWords as words } from '#words/outputs/parts-output-words.ts';
import { given } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type Outputs, outputOf, type Step } from '../../calculation/output.ts';
import type { ExactLength } from '../../lengths/length.ts';
import { type DividedEdge, equalParts, type PartsInput } from '../../sewing/equal-parts.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import { DIVIDED, type PartsAsked, partsFields, partsInput } from './fields.ts';

const output = outputOf(partsFields);

const ofBoth = [...DIVIDED, 'other'] as const;
const met = { field: 'other', is: given(partsFields.specs.other) } as const;
const decides = ['into', 'count', 'round'] as const;
const step: Step = {
  do: words.mark,
  datum: 'zero',
  stage: 'join',
  undoable: true,
  caution: cautionWords.pins,
};

/** As asked, or with as many marks as were begun: of an edge with ends one less than parts. */
function begun(asked: Pick<PartsAsked, (typeof DIVIDED)[number]>, count?: number): PartsInput {
  const input = partsInput(asked);
  return count === undefined ? input : { ...input, parts: input.round ? count : count + 1 };
}

/** The edge it meets, and how much longer each part of that is. */
function meeting(
  asked: Pick<PartsAsked, (typeof ofBoth)[number]>,
  count?: number,
): Outcome<DividedEdge & { longer: ExactLength }> {
  return mapped(equalParts({ ...begun(asked, count), other: asked.other }), (found) => {
    const { other, longer } = needed({ other: found.other, longer: found.longer });
    return { ...other, longer };
  });
}

/** What a divided edge gives, and the one it meets. */
export const partsOutputs: Outputs = {
  id: 'parts',
  rule: 1,
  fields: partsFields,
  outputs: [
    output({
      key: 'marks',
      name: words.marks,
      kind: 'run',
      reads: DIVIDED,
      decides,
      step,
      of: (fields, { count }) => mapped(equalParts(begun(fields, count)), ({ edge }) => edge.run),
    }),
    output({
      key: 'marks-other',
      name: words.otherMarks,
      kind: 'run',
      reads: ofBoth,
      decides,
      when: met,
      step,
      of: (fields, { count }) => mapped(meeting(fields, count), ({ run }) => run),
    }),
    output({
      key: 'part',
      name: words.part,
      kind: 'length',
      reads: DIVIDED,
      of: (fields) => mapped(equalParts(begun(fields)), ({ edge }) => edge.part),
    }),
    output({
      key: 'part-other',
      name: words.otherPart,
      kind: 'length',
      reads: ofBoth,
      when: met,
      of: (fields) => mapped(meeting(fields), ({ part }) => part),
    }),
    output({
      key: 'ease',
      name: words.ease,
      kind: 'length',
      reads: ofBoth,
      when: met,
      of: (fields) => mapped(meeting(fields), ({ longer }) => longer),
    }),
  ],
};
