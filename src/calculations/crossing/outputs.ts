import { holeWords } from '#words/common/hole-words.ts';
import { crossingOutputWords as words } from '#words/outputs/crossing-output-words.ts';
import { type Outputs, outputOf, runTaken } from '../../calculation/output.ts';
import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import type { Crossed } from '../../sewing/crossing/crossing-holes.ts';
import { chosenOf, shorterMove } from '../../sewing/crossing/crossing-move.ts';
import { newHoles } from '../../sewing/crossing/crossing-run.ts';
import { type Crossing, crossing } from '../../sewing/crossing/strip-crossing.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import type { Run } from '../../sewing/run.ts';
import { crossedOf, crossingFields } from './fields.ts';

const output = outputOf(crossingFields);

/** Every field says how the strips lie. */
const reads = Object.keys(crossingFields.specs) as (keyof (typeof crossingFields)['specs'])[];

const shift = output({
  key: 'shift',
  name: words.shift,
  kind: 'length',
  reads,
  step: { do: words.move, datum: 'zero', stage: 'edge', undoable: true },
  of: (fields) =>
    mapped(crossing(crossedOf(fields)), (plan) => {
      const { chosen, moved } = chosenOf(plan);
      const { by, back } = shorterMove(chosen);
      if (!moved) return ZERO;
      return back ? exactLength(-by) : by;
    }),
});

const holes = output({
  key: 'holes',
  name: words.holes,
  kind: 'run',
  reads,
  bentBy: [shift],
  // Where they come to lie decides how many there are: none is kept.
  decides: reads,
  step: {
    do: words.punch,
    datum: 'hole-before',
    stage: 'edge',
    undoable: false,
    caution: holeWords.punch,
  },
  of: (fields, { made }) => {
    const input = crossedOf(fields);
    return mapped(laid(input, made[shift.key]), (found) => runOf(input, found));
  },
});

/** As it is to lie, or as it was moved. */
function laid(input: Crossed, moved: ExactLength | undefined): Outcome<Crossing> {
  if (moved === undefined) return mapped(crossing(input), (plan) => chosenOf(plan).chosen);
  const { upper } = input;
  const phase = exactLength(upper.phase + moved);
  return mapped(crossing({ ...input, upper: { ...upper, phase } }), ({ asLaid }) => asLaid);
}

/** Where every hole is shared there is nothing to punch. */
function runOf({ lower }: Crossed, found: Crossing): Run {
  return newHoles(lower, found)?.run ?? { datum: 'hole-before', length: ZERO, marks: [] };
}

/** What two crossing strips give: how the upper one is moved, and the holes to punch through the lower. */
export const crossingOutputs: Outputs = {
  id: 'crossing',
  rule: 1,
  fields: crossingFields,
  outputs: [
    shift,
    holes,
    output({
      key: 'count',
      name: words.count,
      kind: 'count',
      reads: [],
      takes: [holes],
      adds: true,
      of: (_, { takes }) => ({ ok: true, value: runTaken(takes, holes).marks.length }),
    }),
  ],
};
