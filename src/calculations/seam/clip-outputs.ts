import { cautionWords } from '#words/common/caution-words.ts';
import { seamOutputWords as words } from '#words/outputs/seam-output-words.ts';
import { given } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { outputOf, runTaken } from '../../calculation/output.ts';
import { mapped } from '../../sewing/problem.ts';
import { clipCurve } from '../../sewing/seams/seam-clips.ts';
import { seamFields } from './fields.ts';
import { clipInput } from './read.ts';

const output = outputOf(seamFields);
const { what, along } = seamFields.specs;

const curve = {
  kind: 'length',
  reads: ['radius', 'allowance', 'opening'],
  when: { field: 'what', is: what.is('curve') },
} as const;
const marked = {
  reads: [...curve.reads, 'along'],
  // Only with the length of the curve are its clips marked.
  when: [curve.when, { field: 'along', is: given(along) }],
} as const;

const clips = output({
  key: 'clips',
  name: words.clips,
  kind: 'run',
  ...marked,
  decides: marked.reads,
  step: {
    do: words.clip,
    datum: 'zero',
    stage: 'join',
    undoable: false,
    caution: cautionWords.blades,
  },
  of: (fields, { count }) =>
    mapped(clipCurve({ ...clipInput(fields), count }), ({ run }) => needed({ run }).run),
});

/** Clips on a curved seam. */
export const clipOutputs = [
  clips,
  output({
    key: 'clip-count',
    name: words.clipCount,
    kind: 'count',
    reads: [],
    takes: [clips],
    when: marked.when,
    adds: true,
    of: (_, { takes }) => ({ ok: true, value: runTaken(takes, clips).marks.length }),
  }),
  output({
    key: 'clip-space',
    name: words.clipSpace,
    ...curve,
    bound: 'most',
    of: (fields) => mapped(clipCurve(clipInput(fields)), ({ spacing }) => spacing),
  }),
  output({
    key: 'clip-deep',
    name: words.clipDeep,
    ...curve,
    bound: 'most',
    of: (fields) => mapped(clipCurve(clipInput(fields)), ({ deep }) => deep),
  }),
  output({
    key: 'edge-differs',
    name: words.edgeDiffers,
    kind: 'length',
    ...marked,
    of: (fields) =>
      mapped(clipCurve(clipInput(fields)), ({ differs }) => needed({ differs }).differs),
  }),
];
