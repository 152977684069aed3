import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords } from '#words/common/turned-words.ts';
import { bindingOutputWords as words } from '#words/outputs/binding-output-words.ts';
import { type Comes, type Outputs, outputOf } from '../../calculation/output.ts';
import { ZERO } from '../../lengths/length.ts';
import { bindingWidth, goesRound } from '../../sewing/hems/binding.ts';
import { cornerPleats } from '../../sewing/hems/binding-corners.ts';
import { bindingLength } from '../../sewing/hems/binding-length.ts';
import { mustBePositive } from '../../sewing/length-checks.ts';
import { answerUnless, mapped } from '../../sewing/problem.ts';
import type { Run } from '../../sewing/run.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import { bindingFields, edgeOf, isLong, LONG_FIELDS, stitchOf, WIDTH_FIELDS } from './fields.ts';

const output = outputOf(bindingFields);
const { finish } = bindingFields.specs;

/** Where an edge is given: all of what is asked of it. */
const along = { reads: LONG_FIELDS, when: { field: 'straight', is: isLong } } as const;

const long = output({
  key: 'long',
  name: words.long,
  kind: 'length',
  bound: 'least',
  ...along,
  adds: true,
  of: (fields) => mapped(bindingLength(edgeOf(fields)), (found) => found.long),
});

const stitch = output({
  key: 'stitch',
  name: words.stitch,
  kind: 'length',
  reads: ['finish', 'width', 'seam'],
  step: {
    do: words.sew,
    datum: 'raw-edge',
    stage: 'edge',
    undoable: true,
    caution: cautionWords.pins,
  },
  of: (fields) => {
    const value = stitchOf(fields);
    const field = goesRound(fields.finish) ? 'width' : 'seam';
    return answerUnless(mustBePositive(field, value), () => ({ ok: true, value }));
  },
});

/** What a binding gives: its strip, how long it is, where it is sewn on, and how much its fold gives. */
export const bindingOutputs: Outputs = {
  id: 'binding',
  rule: 1,
  fields: bindingFields,
  outputs: [
    long,
    output({
      key: 'strip',
      name: words.strip,
      kind: 'length',
      reads: WIDTH_FIELDS,
      material: { kind: 'bias', edge: true, along: long },
      step: {
        do: words.cut,
        datum: 'cut-end',
        stage: 'cut',
        undoable: false,
        bound: 'least',
        caution: cautionWords.shears,
      },
      of: (fields) => mapped(bindingWidth(fields), ({ cut }) => cut),
    }),
    output({
      key: 'corner-pleats',
      name: words.pleats,
      kind: 'run',
      ...along,
      decides: ['straight', 'corners', 'ends'],
      step: { do: words.pleat, datum: 'cut-end', stage: 'edge', undoable: true },
      of: (fields): Comes<Run> => {
        const edge = edgeOf(fields);
        const long = bindingLength(edge);
        if (!long.ok) return long;
        const pleats = cornerPleats(edge);
        return pleats ? { ok: true, value: pleats } : { ok: false, absent: 'corners' };
      },
    }),
    stitch,
    output({
      key: 'finished',
      name: words.finished,
      kind: 'length',
      reads: ['finish', 'width'],
      when: { field: 'finish', is: finish.is('single', 'double') },
      bentBy: [stitch],
      step: {
        do: words.fold,
        datum: 'fold',
        stage: 'edge',
        undoable: true,
        caution: turnedWords.iron(IRON_ONE_DOT.value),
      },
      of: ({ width = ZERO }, { made }) =>
        answerUnless(mustBePositive('width', width), () => ({
          ok: true,
          value: made[stitch.key] ?? width,
        })),
    }),
    output({
      key: 'stretch',
      name: words.stretch,
      kind: 'number',
      ...along,
      of: (fields) => mapped(bindingLength(edgeOf(fields)), ({ stretch }) => 100 * stretch),
    }),
    output({
      key: 'ease',
      name: words.ease,
      kind: 'number',
      ...along,
      of: (fields) => mapped(bindingLength(edgeOf(fields)), ({ ease }) => 100 * ease),
    }),
  ],
};
