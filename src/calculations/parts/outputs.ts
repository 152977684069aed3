import { cautionWords } from '#words/common/caution-words.ts';
import { partsOutputWords as words } from '#words/outputs/parts-output-words.ts';
import { given } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type Outputs, outputOf, type Step } from '../../calculation/output.ts';
import type { ExactLength } from '../../lengths/length.ts';
import {
  type DividedEdge,
  equalParts,
  followedMarks,
  type PartsInput,
} from '../../sewing/equal-parts.ts';
import { placesOf } from '../../sewing/followed-places.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import type { Run } from '../../sewing/run.ts';
import { alone, DIVIDED, MARKED, type PartsAsked, partsFields, partsInput } from './fields.ts';

const output = outputOf(partsFields);

const ofBoth = [...DIVIDED, 'other'] as const;
const markedBoth = [...MARKED, 'other'] as const;
const met = { field: 'other', is: given(partsFields.specs.other) } as const;
/** Marks that follow others have no even parts. */
const even = { field: 'follow', is: alone } as const;
const decides = ['into', 'count', 'round', 'follow'] as const;
const step: Omit<Step, 'do'> = {
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

type Marked = Pick<PartsAsked, (typeof MARKED)[number]>;

/** The marks of the edge: evenly, or where those it follows are. */
function marksOf(asked: Marked, count?: number): Outcome<Run> {
  if (!asked.follow) return mapped(equalParts(begun(asked, count)), ({ edge }) => edge.run);
  const places = placesOf(asked.follow, asked.offset);
  return mapped(followedMarks(asked, places), ({ edge }) => edge);
}

/** The same of the edge it meets. */
function otherMarksOf(
  asked: Pick<PartsAsked, (typeof markedBoth)[number]>,
  count?: number,
): Outcome<Run> {
  if (!asked.follow) return mapped(meeting(asked, count), ({ run }) => run);
  const places = placesOf(asked.follow, asked.offset);
  return mapped(followedMarks(asked, places), ({ other }) => needed({ other }).other);
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
      reads: MARKED,
      decides,
      step: { ...step, do: words.mark },
      of: (fields, { count }) => marksOf(fields, count),
    }),
    output({
      key: 'marks-other',
      name: words.otherMarks,
      kind: 'run',
      reads: markedBoth,
      decides,
      when: met,
      step: { ...step, do: words.markOther },
      of: (fields, { count }) => otherMarksOf(fields, count),
    }),
    output({
      key: 'part',
      name: words.part,
      kind: 'length',
      reads: DIVIDED,
      when: even,
      of: (fields) => mapped(equalParts(begun(fields)), ({ edge }) => edge.part),
    }),
    output({
      key: 'part-other',
      name: words.otherPart,
      kind: 'length',
      reads: ofBoth,
      when: [met, even],
      of: (fields) => mapped(meeting(fields), ({ part }) => part),
    }),
    output({
      key: 'ease',
      name: words.ease,
      kind: 'length',
      reads: ofBoth,
      when: [met, even],
      of: (fields) => mapped(meeting(fields), ({ longer }) => longer),
    }),
  ],
};
