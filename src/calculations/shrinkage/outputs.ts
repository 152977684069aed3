import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords } from '#words/common/turned-words.ts';
import { shrinkageOutputWords as words } from '#words/outputs/shrinkage-output-words.ts';
import { needed } from '../../calculation/needed.ts';
import { type MadeSteps, type Outputs, outputOf } from '../../calculation/output.ts';
import { ZERO } from '../../lengths/length.ts';
import { afterwards, cutFor, keptOf, meanOf } from '../../sewing/cloth/shrinkage.ts';
import { mustBePositive } from '../../sewing/length-checks.ts';
import { answerUnless, mapped, type Outcome } from '../../sewing/problem.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import {
  FIELDS,
  isAcross,
  isCompared,
  isThere,
  isWanted,
  type ShrinkageAsked,
  shrinkageFields,
  type Way,
} from './fields.ts';
import { differOf, otherProblems, sampleOf } from './worked.ts';

const output = outputOf(shrinkageFields);

const READS = {
  along: ['alongBefore', 'alongAfter', 'moreAlong'],
  across: ['acrossBefore', 'acrossAfter', 'moreAcross'],
} as const;
const WANTED = { along: 'long', across: 'wide' } as const;
const THERE = { along: 'there', across: 'thereWide' } as const;

/** What is left of one length, by the marks as they were sewn in and as they were measured. */
function kept(fields: Partial<ShrinkageAsked>, way: Way, made: MadeSteps = {}): Outcome<number> {
  const sample = sampleOf(fields, way);
  const washed = made[`washed-${way}`];
  return keptOf(
    {
      ...sample,
      before: made[`marks-${way}`] ?? sample.before,
      after: washed === undefined ? sample.after : [washed],
    },
    FIELDS[way],
  );
}

/** The sample of one way, in the order it is worked with. */
function sampleOutputs(way: Way) {
  const { before, after } = FIELDS[way];
  const when = way === 'across' ? { when: { field: before, is: isAcross } } : {};
  const marks = output({
    key: `marks-${way}`,
    name: words.marks[way],
    kind: 'length',
    reads: [before],
    ...when,
    step: { do: words.mark[way], datum: 'zero', stage: 'measure', undoable: true },
    of: (fields) => {
      const given = fields[before] ?? ZERO;
      return answerUnless(mustBePositive(before, given), () => ({ ok: true, value: given }));
    },
  });
  const washed = output({
    key: `washed-${way}`,
    name: words.washed[way],
    kind: 'length',
    reads: [before, after],
    ...when,
    step: {
      do: words.wash[way],
      datum: 'zero',
      stage: 'measure',
      undoable: false,
      caution: turnedWords.iron(IRON_ONE_DOT.value),
    },
    of: (fields) => mapped(kept(fields, way), () => meanOf(sampleOf(fields, way).after)),
  });
  const share = output({
    key: way,
    name: words.share[way],
    kind: 'number',
    reads: READS[way],
    ...when,
    bentBy: [marks, washed],
    of: (fields, { made }) => mapped(kept(fields, way, made), (left) => 100 * (1 - left)),
  });
  return [marks, washed, share];
}

/** What is cut of one way so that it comes out as wanted, and what comes of what is there. */
function cutOutputs(way: Way, sample: ReturnType<typeof sampleOutputs>) {
  const [marks, washed] = sample;
  const bentBy = [marks, washed].filter((one) => one !== undefined);
  const [wanted, there] = [WANTED[way], THERE[way]];
  return [
    output({
      key: `cut-${way}`,
      name: words.cut[way],
      kind: 'length',
      reads: [...READS[way], wanted, 'growth'],
      when: { field: wanted, is: isWanted[way] },
      bentBy,
      step: {
        do: words.cutIt[way],
        datum: 'cut-end',
        stage: 'cut',
        undoable: false,
        bound: 'least',
        caution: cautionWords.shears,
      },
      of: (fields, { made }) => {
        const { long } = needed({ long: fields[wanted] });
        return answerUnless(mustBePositive(wanted, long), () =>
          mapped(kept(fields, way, made), (left) => cutFor(long, left, fields.growth)),
        );
      },
    }),
    output({
      key: `after-${way}`,
      name: words.after[way],
      kind: 'length',
      reads: [...READS[way], there],
      when: { field: there, is: isThere[way] },
      bentBy,
      of: (fields, { made }) => {
        const { long } = needed({ long: fields[there] });
        return answerUnless(mustBePositive(there, long), () =>
          mapped(kept(fields, way, made), (left) => afterwards(long, left)),
        );
      },
    }),
  ];
}

const along = sampleOutputs('along');
const across = sampleOutputs('across');

/** What shrinkage gives: what is lost each way, what is cut, and what comes of what is there. */
export const shrinkageOutputs: Outputs = {
  id: 'shrinkage',
  rule: 1,
  fields: shrinkageFields,
  outputs: [
    ...along,
    ...across,
    output({
      key: 'area',
      name: words.area,
      kind: 'number',
      reads: [...READS.along, ...READS.across],
      when: { field: 'acrossBefore', is: isAcross },
      bentBy: [...along, ...across].filter(({ step }) => step),
      of: (fields, { made }) => {
        const one = kept(fields, 'along', made);
        if (!one.ok) return one;
        return mapped(kept(fields, 'across', made), (other) => 100 * (1 - one.value * other));
      },
    }),
    ...cutOutputs('along', along),
    ...cutOutputs('across', across),
    output({
      key: 'differs',
      name: words.differs,
      kind: 'length',
      reads: [...READS.along, 'long', 'other'],
      when: { field: 'other', is: isCompared },
      bentBy: along.filter(({ step }) => step),
      of: (fields, { made }) => {
        const { long, other } = needed({ long: fields.long, other: fields.other });
        const problems = [...mustBePositive('long', long), ...otherProblems(other)];
        return answerUnless(problems, () =>
          mapped(kept(fields, 'along', made), (left) => differOf(long, left, other)),
        );
      },
    }),
  ],
};
