import { ventOutputWords as words } from '#words/outputs/vent-output-words.ts';
import { type Comes, type Outputs, outputOf } from '../../calculation/output.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { mapped } from '../../sewing/problem.ts';
import { roomAtHip, type Vent, type VentInput, ventFrom } from '../../sewing/wearer/vent.ts';
import { ventFields } from './fields.ts';

const output = outputOf(ventFields);

const HIP_FIELDS = ['hip', 'ease', 'seat'] as const;
const FIELDS = [...HIP_FIELDS, 'hem', 'down', 'long', 'stride', 'top', 'bodyTop'] as const;

/** Of a vent; nothing of it where the hem is wide enough closed. */
function ofVent(fields: VentInput, see: (vent: Vent) => ExactLength): Comes<ExactLength> {
  const found = ventFrom(fields);
  if (!found.ok) return found;
  if (found.value.by === 'closed') return { ok: false, absent: 'hem' };
  return { ok: true, value: see(found.value) };
}

const begins = output({
  key: 'begins',
  name: words.begins,
  kind: 'length',
  reads: FIELDS,
  step: { do: words.mark, datum: 'top-edge', stage: 'join', undoable: true, bound: 'most' },
  of: (fields) => ofVent(fields, (vent) => vent.begins),
});

/** What a garment over the hips gives: the room there, and its vent. */
export const ventOutputs: Outputs = {
  id: 'vent',
  rule: 1,
  fields: ventFields,
  outputs: [
    output({
      key: 'needs',
      name: words.needs,
      kind: 'length',
      bound: 'least',
      reads: HIP_FIELDS,
      of: (fields) => mapped(roomAtHip(fields), ({ needs }) => needs),
    }),
    output({
      key: 'ease',
      name: words.ease,
      kind: 'length',
      reads: HIP_FIELDS,
      of: (fields) => mapped(roomAtHip(fields), ({ ease }) => ease),
    }),
    output({
      key: 'lacks',
      name: words.lacks,
      kind: 'length',
      bound: 'least',
      reads: HIP_FIELDS,
      of: (fields) => mapped(roomAtHip(fields), ({ lacks }) => lacks),
    }),
    begins,
    output({
      key: 'vent',
      name: words.vent,
      kind: 'length',
      bound: 'least',
      reads: FIELDS,
      bentBy: [begins],
      of: (fields, { made }) =>
        ofVent(fields, (vent) => exactLength(fields.long - (made[begins.key] ?? vent.begins))),
    }),
  ],
};
