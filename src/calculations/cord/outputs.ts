import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import { cordOutputWords as words } from '#words/outputs/cord-output-words.ts';
import { type Outputs, outputOf } from '../../calculation/output.ts';
import { ZERO } from '../../lengths/length.ts';
import { cord, freeOf } from '../../sewing/fullness/cord.ts';
import { mapped } from '../../sewing/problem.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import { CORD_FIELDS, cordFields, cordInput } from './fields.ts';

const output = outputOf(cordFields);
const asked = { kind: 'length', reads: CORD_FIELDS } as const;

const cut = output({
  ...asked,
  key: 'cut',
  name: words.cut,
  adds: true,
  material: { kind: 'lace' },
  // Too long is what can hurt a child.
  step: {
    do: words.cutCord,
    datum: 'cut-end',
    stage: 'close',
    undoable: false,
    bound: 'most',
    caution: cautionWords.cords,
  },
  of: (fields) => mapped(cord(cordInput(fields)), (plan) => plan.cut),
});

/** What a drawstring gives: its casing, the cord, and how much of it is free. */
export const cordOutputs: Outputs = {
  id: 'cord',
  rule: 1,
  fields: cordFields,
  outputs: [
    output({
      ...asked,
      key: 'allowance',
      name: words.allowance,
      edge: true,
      step: {
        do: words.cutAllowance,
        datum: 'fold',
        stage: 'cut',
        undoable: false,
        bound: 'least',
        caution: cautionWords.shears,
      },
      of: (fields) => mapped(cord(cordInput(fields)), ({ casing }) => casing.allowance),
    }),
    output({
      ...asked,
      key: 'turn',
      name: words.turn,
      step: {
        do: words.press,
        datum: 'raw-edge',
        stage: 'turn-up',
        undoable: true,
        caution: turned.iron(IRON_ONE_DOT.value),
      },
      of: (fields) =>
        fields.turn === ZERO
          ? { ok: false, absent: 'turn' }
          : mapped(cord(cordInput(fields)), () => fields.turn),
    }),
    output({
      ...asked,
      key: 'header',
      name: words.header,
      step: {
        do: words.sewHeader,
        datum: 'fold',
        stage: 'turn-up',
        undoable: true,
        bound: 'most',
      },
      of: (fields) =>
        fields.header === ZERO
          ? { ok: false, absent: 'header' }
          : mapped(cord(cordInput(fields)), () => fields.header),
    }),
    output({
      ...asked,
      key: 'stitch',
      name: words.stitch,
      step: {
        do: words.sew,
        datum: 'fold',
        stage: 'turn-up',
        undoable: true,
        // Between the lines nothing is lost: the cord has its room on any tape.
        bound: 'least',
        caution: cautionWords.pins,
      },
      of: (fields) => mapped(cord(cordInput(fields)), ({ casing }) => casing.stitch),
    }),
    output({
      ...asked,
      key: 'clear',
      name: words.clear,
      of: (fields) => mapped(cord(cordInput(fields)), ({ casing }) => casing.clear),
    }),
    cut,
    output({
      ...asked,
      key: 'free',
      name: words.free,
      bentBy: [cut],
      of: (fields, { made }) => {
        const input = cordInput(fields);
        const there = made[cut.key];
        return mapped(cord(input), ({ free }) =>
          there === undefined ? free : freeOf(input, there),
        );
      },
    }),
  ],
};
