import { placketWords } from '#words/calculations/placket-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import { placketOutputWords as words } from '#words/outputs/placket-output-words.ts';
import { needed } from '../../calculation/needed.ts';
import { type Comes, type Output, outputOf } from '../../calculation/output.ts';
import type { ExactLength } from '../../lengths/length.ts';
import type { Zip } from '../../sewing/bands/zip.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import { OPEN_FIELDS, placketFields, way, ZIP_FIELDS } from './fields.ts';
import { openOf, zipOf } from './worked.ts';

const output = outputOf(placketFields);
const ofZip = { when: { field: 'way', is: way.is('zip') } } as const;

/** Where the seam stays open for a zip. */
export const open = output({
  key: 'open',
  name: words.open,
  kind: 'length',
  reads: OPEN_FIELDS,
  ...ofZip,
  step: { do: words.mark, datum: 'stitch-line', stage: 'join', undoable: true, bound: 'least' },
  of: openOf,
});

/** A zip that isn't shortened has neither a new stop nor a cut. */
function shortened(
  found: Outcome<Zip>,
  see: (at: NonNullable<Zip['shorten']>) => ExactLength,
): Comes<ExactLength> {
  if (!found.ok) return found;
  const { shorten } = found.value;
  return shorten ? { ok: true, value: see(shorten) } : { ok: false, absent: 'zip' };
}

/** The zip: what is bought, sewn in, and shortened where it is too long. */
export const zipOutputs: readonly Output[] = [
  open,
  output({
    key: 'zip',
    name: words.zip,
    kind: 'length',
    bound: 'least',
    reads: ZIP_FIELDS,
    ...ofZip,
    of: (fields) => mapped(zipOf(fields), ({ long }) => long),
  }),
  output({
    key: 'left',
    name: words.left,
    kind: 'length',
    reads: ZIP_FIELDS,
    ...ofZip,
    of: (fields) => mapped(zipOf(fields), ({ left }) => left),
  }),
  output({
    key: 'stop',
    name: words.stop,
    kind: 'length',
    reads: ZIP_FIELDS,
    ...ofZip,
    step: { do: words.sewStop, datum: 'zero', stage: 'join', undoable: true, bound: 'least' },
    of: (fields) => shortened(zipOf(fields), ({ stop }) => stop),
  }),
  output({
    key: 'cut',
    name: words.cut,
    kind: 'length',
    reads: ZIP_FIELDS,
    ...ofZip,
    step: {
      do: words.cutZip,
      datum: 'zero',
      stage: 'join',
      undoable: false,
      bound: 'least',
      caution: placketWords.cutZip,
    },
    of: (fields) => shortened(zipOf(fields), ({ cut }) => cut),
  }),
  output({
    key: 'row',
    name: words.row,
    kind: 'length',
    reads: ['row'],
    ...ofZip,
    step: {
      do: words.sewRow,
      datum: 'centre-line',
      stage: 'join',
      undoable: true,
      caution: cautionWords.pins,
    },
    of: ({ row }) => ({ ok: true, value: needed({ row }).row }),
  }),
];
