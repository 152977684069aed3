import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import { bandOutputWords as words } from '#words/outputs/band-output-words.ts';
import { given, not } from '../../calculation/field-spec.ts';
import { type Comes, type Outputs, outputOf, sumTaken } from '../../calculation/output.ts';
import { exactLength } from '../../lengths/length.ts';
import { band, bandPieces, takenUp } from '../../sewing/bands/band.ts';
import { mapped } from '../../sewing/problem.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import { BAND_FIELDS, type BandAsked, bandFields, interfaced } from './fields.ts';
import { type Interfacing, interfacingOf } from './interfacing.ts';

const output = outputOf(bandFields);
const asked = { reads: BAND_FIELDS } as const;
const cuts = { datum: 'cut-end', stage: 'cut', undoable: false, bound: 'least' } as const;

const long = output({
  ...asked,
  key: 'long',
  name: words.long,
  kind: 'length',
  step: { do: words.cutLong, ...cuts, caution: cautionWords.shears },
  of: (fields) => mapped(band(fields), (plan) => plan.long),
});

const across = output({
  ...asked,
  key: 'across',
  name: words.across,
  kind: 'length',
  step: { do: words.cutAcross, ...cuts, caution: cautionWords.shears },
  of: (fields) => mapped(band(fields), (plan) => plan.across),
});

/** As the band is cut, where it is. */
const piece = output({
  key: 'piece',
  name: words.piece,
  kind: 'length',
  bound: 'least',
  reads: ['seam', 'cloth'],
  takes: [long],
  of: ({ seam, cloth }, { takes }) =>
    mapped(bandPieces({ long: exactLength(sumTaken(takes)) }, seam, cloth), (all) => all.long),
});

const INTERFACED = [...BAND_FIELDS, 'interfaced'] as const;
const when = { field: 'interfaced', is: not(interfaced.is('none')) } as const;

function ofInterfacing<Value>(
  fields: Pick<BandAsked, (typeof INTERFACED)[number]>,
  see: (one: Interfacing) => Value,
): Comes<Value> {
  const plan = band(fields);
  if (!plan.ok) return plan;
  const one = interfacingOf(fields, plan.value);
  return one ? { ok: true, value: see(one) } : { ok: false, absent: 'interfaced' };
}

const interfacingLong = output({
  key: 'interfacing-long',
  name: words.interfacingLong,
  kind: 'length',
  bound: 'least',
  reads: INTERFACED,
  when,
  of: (fields) => ofInterfacing(fields, (one) => one.long),
});

const interfacingWide = output({
  key: 'interfacing-wide',
  name: words.interfacingWide,
  kind: 'length',
  bound: 'least',
  reads: INTERFACED,
  when,
  of: (fields) => ofInterfacing(fields, (one) => one.wide),
});

/** What a band gives: its cloth, its interfacing, its marks, and what its edge takes up. */
export const bandOutputs: Outputs = {
  id: 'band',
  rule: 1,
  fields: bandFields,
  outputs: [
    long,
    across,
    piece,
    output({
      key: 'pieces',
      name: words.pieces,
      kind: 'count',
      reads: [...BAND_FIELDS, 'cloth'],
      adds: true,
      material: { kind: 'cloth', along: piece, across },
      of: ({ cloth, ...fields }) => {
        const plan = band(fields);
        if (!plan.ok) return plan;
        const both = fields.make === 'two' ? 2 : 1;
        return mapped(bandPieces(plan.value, fields.seam, cloth), ({ count }) => both * count);
      },
    }),
    interfacingLong,
    interfacingWide,
    output({
      key: 'interfacings',
      name: words.interfacings,
      kind: 'count',
      reads: INTERFACED,
      when,
      adds: true,
      material: { kind: 'interfacing', along: interfacingLong, across: interfacingWide },
      of: (fields) => ofInterfacing(fields, (one) => one.count),
    }),
    output({
      ...asked,
      key: 'marks',
      name: words.marks,
      kind: 'run',
      step: { do: words.mark, datum: 'cut-end', stage: 'cut', undoable: true },
      of: (fields) => mapped(band(fields), ({ run }) => run),
    }),
    output({
      ...asked,
      key: 'wide',
      name: words.wide,
      kind: 'length',
      step: {
        do: words.press,
        datum: 'stitch-line',
        stage: 'join',
        undoable: true,
        caution: turned.iron(IRON_ONE_DOT.value),
      },
      of: (fields) => mapped(band(fields), () => fields.wide),
    }),
    output({
      ...asked,
      key: 'finished',
      name: words.finished,
      kind: 'length',
      bentBy: [long],
      step: { do: words.close, datum: 'zero', stage: 'close', undoable: true },
      of: (fields, { made }) =>
        mapped(band(fields), (plan) => {
          const cut = made[long.key] ?? plan.long;
          return exactLength(plan.finished + cut - plan.long);
        }),
    }),
    output({
      ...asked,
      key: 'round',
      name: words.round,
      kind: 'length',
      of: (fields) => mapped(band(fields), (plan) => plan.round),
    }),
    output({
      key: 'take-up',
      name: words.takeUp,
      kind: 'length',
      reads: [...BAND_FIELDS, 'edge'],
      when: { field: 'edge', is: given(bandFields.specs.edge) },
      of: ({ edge, ...fields }) => mapped(band(fields), (plan) => takenUp(edge, plan)),
    }),
  ],
};
