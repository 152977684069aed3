import { threadAnswerWords } from '#words/calculations/thread-answer-words.ts';
import { threadOutputWords as words } from '#words/outputs/thread-output-words.ts';
import { given } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type Outputs, outputOf } from '../../calculation/output.ts';
import { exactLength } from '../../lengths/length.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import { fillsFor, spoolsFor, type Thread, threadFor } from '../../sewing/seams/thread.ts';
import { threadRatio } from '../../sewing/seams/thread-ratio.ts';
import { fedBy, isParted, isWound, SEAM_FIELDS, type ThreadAsked, threadFields } from './fields.ts';
import { byHand } from './worked.ts';

const output = outputOf(threadFields);
const { stitch, spool, bobbin } = threadFields.specs;

const RATIO_FIELDS = [
  'stitch',
  'by',
  'thickness',
  'stitchLong',
  'zigWide',
  'sampleSeam',
  'sampleNeedle',
  'sampleOther',
] as const;

const ready = { datum: 'done', stage: 'measure', undoable: true } as const;

/** What the thread comes to, seen by what is bought, wound or cut of it. */
function then<Value>(
  fields: Pick<ThreadAsked, (typeof SEAM_FIELDS)[number]>,
  see: (thread: Thread) => Outcome<Value>,
): Outcome<Value> {
  const found = threadFor(fields);
  return found.ok ? see(found.value) : found;
}

/** What thread gives: how much there is of each, and how it is had. */
export const threadOutputs: Outputs = {
  id: 'thread',
  rule: 1,
  fields: threadFields,
  outputs: [
    output({
      key: 'thread',
      name: words.thread,
      kind: 'length',
      bound: 'least',
      reads: SEAM_FIELDS,
      adds: true,
      material: { kind: 'thread', fed: fedBy },
      of: (fields) => mapped(threadFor(fields), ({ all }) => all),
    }),
    output({
      key: 'ratio',
      name: words.ratio,
      kind: 'number',
      reads: RATIO_FIELDS,
      of: (fields) => mapped(threadRatio(fields), ({ ratio }) => ratio),
    }),
    output({
      key: 'needle',
      name: words.needle,
      kind: 'length',
      bound: 'least',
      reads: SEAM_FIELDS,
      when: { field: 'by', is: isParted },
      adds: true,
      of: (fields) => mapped(threadFor(fields), ({ byNeedle = exactLength(0) }) => byNeedle),
    }),
    output({
      key: 'other',
      name: words.other,
      kind: 'length',
      bound: 'least',
      reads: SEAM_FIELDS,
      when: { field: 'by', is: isParted },
      adds: true,
      of: (fields) => mapped(threadFor(fields), ({ byOther = exactLength(0) }) => byOther),
    }),
    output({
      key: 'spools',
      name: words.spools,
      kind: 'count',
      reads: [...SEAM_FIELDS, 'spool'],
      when: { field: 'spool', is: given(spool) },
      step: { do: words.ready, ...ready },
      of: (fields) =>
        then(fields, (thread) =>
          spoolsFor(fields.stitch, thread, needed({ spool: fields.spool }).spool),
        ),
    }),
    output({
      key: 'fills',
      name: words.fills,
      kind: 'count',
      reads: [...SEAM_FIELDS, 'bobbin'],
      when: [
        { field: 'stitch', is: isWound },
        { field: 'bobbin', is: given(bobbin) },
      ],
      step: { do: words.wind, ...ready, caution: threadAnswerWords.machine },
      of: (fields) =>
        then(fields, (thread) => fillsFor(thread, needed({ bobbin: fields.bobbin }).bobbin)),
    }),
    output({
      key: 'hand',
      name: words.hand,
      kind: 'count',
      reads: [...SEAM_FIELDS, 'working', 'tail'],
      when: { field: 'stitch', is: stitch.is('hand') },
      step: { do: words.cut, datum: 'done', stage: 'cut', undoable: false },
      of: (fields) => then(fields, (thread) => byHand(fields, thread)),
    }),
  ],
};
