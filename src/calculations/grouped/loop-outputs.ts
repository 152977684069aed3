import { cautionWords } from '#words/common/caution-words.ts';
import { groupedOutputWords as words } from '#words/outputs/grouped-output-words.ts';
import { needed } from '../../calculation/needed.ts';
import { type Output, outputOf } from '../../calculation/output.ts';
import { hanger, loops } from '../../sewing/closures/loops.ts';
import { mapped } from '../../sewing/problem.ts';
import { groupedFields, kind, LOOP_FIELDS, loopsInput } from './fields.ts';

const output = outputOf(groupedFields);
const ofLoops = { reads: LOOP_FIELDS, when: { field: 'kind', is: kind.is('loops') } } as const;
const cuts = {
  datum: 'cut-end',
  stage: 'cut',
  undoable: false,
  bound: 'least',
  caution: cautionWords.shears,
} as const;

/** Loops and hangers: a strip is cut, cut up, and sewn on. */
export const loopOutputs: readonly Output[] = [
  output({
    key: 'strip',
    name: words.strip,
    kind: 'length',
    ...ofLoops,
    adds: true,
    material: { kind: 'strip' },
    step: { do: words.cutStrip, ...cuts },
    of: (fields) => mapped(loops(loopsInput(fields)), ({ strip }) => strip),
  }),
  output({
    key: 'loop',
    name: words.loop,
    kind: 'length',
    ...ofLoops,
    step: { do: words.cutLoop, ...cuts, stage: 'join' },
    of: (fields) => mapped(loops(loopsInput(fields)), ({ each }) => each),
  }),
  output({
    key: 'loops',
    name: words.loops,
    kind: 'run',
    ...ofLoops,
    decides: ['loops'],
    step: { do: words.sewLoop, datum: 'zero', stage: 'close', undoable: true },
    of: (fields, { count }) => mapped(loops(loopsInput(fields, count)), ({ run }) => run),
  }),
  output({
    key: 'tape',
    name: words.tape,
    kind: 'length',
    reads: ['drop', 'seam'],
    when: { field: 'kind', is: kind.is('hanger') },
    adds: true,
    material: { kind: 'tape' },
    step: { do: words.cutTape, ...cuts },
    of: ({ drop, seam }) => {
      const all = needed({ drop, seam });
      return hanger(all.drop, all.seam);
    },
  }),
];
