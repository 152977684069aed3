import { placketWords } from '#words/calculations/placket-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import { placketOutputWords as words } from '#words/outputs/placket-output-words.ts';
import { not } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type Outputs, outputOf } from '../../calculation/output.ts';
import { exactLength } from '../../lengths/length.ts';
import { mapped } from '../../sewing/problem.ts';
import { SIDE_SPLIT } from '../../sewing/sources/plackets.ts';
import { OPEN_FIELDS, placketFields, STRIP_FIELDS, split, way } from './fields.ts';
import { aboveWaist, openOf, stripsOf } from './worked.ts';
import { open, zipOutputs } from './zip-outputs.ts';

const output = outputOf(placketFields);
const byStrips = { field: 'way', is: not(way.is('zip')) } as const;
const cuts = { stage: 'cut', undoable: false, bound: 'least' } as const;
const atWaist = { when: { field: 'split', is: split.is('waist') }, reads: OPEN_FIELDS } as const;
const { above, of } = SIDE_SPLIT.value;

const slit = output({
  key: 'slit',
  name: words.slit,
  kind: 'length',
  reads: OPEN_FIELDS,
  when: byStrips,
  step: { do: words.cutSlit, datum: 'stitch-line', ...cuts, caution: placketWords.stop },
  of: openOf,
});

const wide = output({
  key: 'wide',
  name: words.wide,
  kind: 'length',
  reads: STRIP_FIELDS,
  when: byStrips,
  step: { do: words.cutWide, datum: 'cut-end', ...cuts, caution: cautionWords.shears },
  of: (fields) => mapped(stripsOf(fields), (strips) => strips.wide),
});

/** What a placket gives: its opening, its strips or its zip, in the order of the hand. */
export const placketOutputs: Outputs = {
  id: 'placket',
  rule: 1,
  fields: placketFields,
  outputs: [
    slit,
    wide,
    output({
      key: 'strip',
      name: words.strip,
      kind: 'length',
      reads: STRIP_FIELDS,
      when: byStrips,
      bentBy: [slit],
      adds: true,
      material: { kind: 'strip', across: wide },
      step: { do: words.cutStrip, datum: 'cut-end', ...cuts, caution: cautionWords.shears },
      of: (fields, { made }) => mapped(stripsOf(fields, made[slit.key]), ({ long }) => long),
    }),
    output({
      key: 'facing',
      name: words.facing,
      kind: 'length',
      reads: STRIP_FIELDS,
      when: { field: 'way', is: way.is('strips') },
      step: { do: words.cutFacing, datum: 'cut-end', ...cuts, caution: cautionWords.shears },
      of: (fields) => mapped(stripsOf(fields), ({ facing }) => needed({ facing }).facing),
    }),
    output({
      key: 'width',
      name: words.width,
      kind: 'length',
      reads: STRIP_FIELDS,
      when: byStrips,
      step: {
        do: words.fold,
        datum: 'fold',
        stage: 'join',
        undoable: true,
        caution: cautionWords.pins,
      },
      of: (fields) => mapped(stripsOf(fields), () => needed({ width: fields.width }).width),
    }),
    ...zipOutputs,
    output({
      key: 'above',
      name: words.above,
      kind: 'length',
      ...atWaist,
      bentBy: [slit, open],
      of: (fields, { made }) =>
        mapped(openOf(fields), (long) =>
          aboveWaist(made[slit.key] ?? made[open.key] ?? long, above, of),
        ),
    }),
    output({
      key: 'below',
      name: words.below,
      kind: 'length',
      ...atWaist,
      bentBy: [slit, open],
      of: (fields, { made }) =>
        mapped(openOf(fields), (long) => {
          const there = made[slit.key] ?? made[open.key] ?? long;
          return exactLength(there - aboveWaist(there, above, of));
        }),
    }),
  ],
};
