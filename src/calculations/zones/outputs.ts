import { cautionWords } from '#words/common/caution-words.ts';
import { zonesOutputWords as words } from '#words/outputs/zones-output-words.ts';
import { type Outputs, outputOf } from '../../calculation/output.ts';
import { type ExactLength, length } from '../../lengths/length.ts';
import { type GatherZones, gatherZones, partsOfZones } from '../../sewing/fullness/gather-zones.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import { ZONES_FIELDS, type ZonesAsked, zonesFields, zonesInput } from './fields.ts';

const output = outputOf(zonesFields);
const { by } = zonesFields.specs;
const asked = { reads: ZONES_FIELDS } as const;
const decides = ['zones', 'ratios', 'parts'] as const;

/** As asked, or with as many marks as were begun, on a strip as it was cut. */
function planOf(fields: ZonesAsked, count?: number, cut?: ExactLength): Outcome<GatherZones> {
  const input = zonesInput(fields);
  const parts = count === undefined ? undefined : partsOfZones(input.ratios, count);
  const strip = cut === undefined ? input.strip : length(Math.round(cut));
  return gatherZones({ ...input, strip, parts: parts ?? input.parts });
}

const strip = output({
  ...asked,
  key: 'strip',
  name: words.strip,
  kind: 'length',
  adds: true,
  when: { field: 'by', is: by.is('ratio') },
  step: {
    do: words.cut,
    datum: 'cut-end',
    stage: 'cut',
    undoable: false,
    bound: 'least',
    caution: cautionWords.shears,
  },
  of: (fields) => mapped(planOf(fields), ({ cut }) => cut),
});

/** What gathers in zones give: the strip, and marks on it and its edge that meet. */
export const zonesOutputs: Outputs = {
  id: 'zones',
  rule: 1,
  fields: zonesFields,
  outputs: [
    strip,
    output({
      ...asked,
      key: 'marks',
      name: words.marks,
      kind: 'run',
      decides,
      bentBy: [strip],
      step: {
        do: words.mark,
        datum: 'cut-end',
        stage: 'join',
        undoable: true,
        caution: cautionWords.pins,
      },
      of: (fields, { count, made }) =>
        mapped(planOf(fields, count, made[strip.key]), ({ marks }) => marks.strip),
    }),
    output({
      ...asked,
      key: 'edge-marks',
      name: words.edgeMarks,
      kind: 'run',
      decides,
      step: { do: words.markEdge, datum: 'strip-begins', stage: 'join', undoable: true },
      of: (fields, { count }) => mapped(planOf(fields, count), ({ marks }) => marks.edge),
    }),
    output({
      ...asked,
      key: 'edge',
      name: words.edge,
      kind: 'length',
      step: {
        do: words.draw,
        datum: 'zero',
        stage: 'join',
        undoable: true,
        caution: cautionWords.pins,
      },
      of: (fields) => mapped(planOf(fields), ({ edge }) => edge),
    }),
  ],
};
