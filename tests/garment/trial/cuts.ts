import { length, lengthOrNone } from '../../../src/calculation/field-spec.ts';
import { type Outputs, outputOf, type Step } from '../../../src/calculation/output.ts';
import { schema } from '../../../src/calculation/schema.ts';
import { type ExactLength, exactLength } from '../../../src/lengths/length.ts';

const fields = schema(
  { length: 'Length', turn: 'Turn' },
  { length: length({}), turn: lengthOrNone('none') },
);
const output = outputOf(fields);
const cut = (key: string, bound?: Step['bound']) =>
  output({
    ...{ key, name: key, kind: 'length', reads: ['length'] },
    step: { do: 'Cut', datum: 'zero', stage: 'cut', undoable: false, ...(bound && { bound }) },
    of: ({ length }) => ({ ok: true, value: exactLength(length) }),
  });
const press = output({
  ...{ key: 'press', name: 'Press', kind: 'length', reads: ['turn'] },
  step: { do: 'Press', datum: 'zero', stage: 'turn-up', undoable: true },
  of: ({ turn }) => (turn > 0 ? { ok: true, value: turn } : { ok: false, absent: 'turn' }),
});
const folded = output({
  ...{ key: 'folded', name: 'Folded', kind: 'length', reads: ['length', 'turn'], bentBy: [press] },
  of: ({ length, turn }, { made }) => ({
    ...{ ok: true, value: exactLength(length - (made.press ?? turn)) },
  }),
});
const pressed = output({
  ...{ key: 'pressed', name: 'Pressed', kind: 'length', reads: [], takes: [press] },
  of: (_, { takes }) => ({ ok: true, value: takes.press as ExactLength }),
});

/**
 * Pieces cut to one length, rounded to the nearest graduation, up or down, and what is left of it when
 * it is pressed over by a turn: a turn of nothing takes its press away, and what is said of that.
 */
export const CUTS: Outputs = {
  ...{ id: 'cuts', rule: 1, fields },
  outputs: [cut('near'), cut('least', 'least'), cut('most', 'most'), press, folded, pressed],
};
