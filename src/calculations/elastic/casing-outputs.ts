import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import { elasticOutputWords as words } from '#words/outputs/elastic-output-words.ts';
import { given } from '../../calculation/field-spec.ts';
import { type Comes, type Output, outputOf } from '../../calculation/output.ts';
import { type Length, ZERO } from '../../lengths/length.ts';
import { type Casing, type CasingInput, casing } from '../../sewing/fullness/casing.ts';
import { mapped } from '../../sewing/problem.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import { CASING_FIELDS, elasticFields } from './fields.ts';

const output = outputOf(elasticFields);
const { turn, header } = elasticFields.specs;
const asked = { kind: 'length', reads: CASING_FIELDS } as const;
const turnUp = { stage: 'turn-up', undoable: true } as const;

/** A measure of the casing; none of nothing. */
function ofCasing(
  fields: CasingInput,
  field: 'turn' | 'header' | 'width',
  see: (found: Casing) => Length,
): Comes<Length> {
  const found = mapped(casing(fields), see);
  return found.ok && found.value === ZERO ? { ok: false, absent: field } : found;
}

/** The casing: cut, turned down and stitched before the elastic is threaded. */
export const casingOutputs: readonly Output[] = [
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
    of: (fields) => ofCasing(fields, 'width', ({ allowance }) => allowance),
  }),
  output({
    ...asked,
    key: 'turn',
    name: words.turn,
    when: { field: 'turn', is: given(turn) },
    step: {
      do: words.press,
      datum: 'raw-edge',
      ...turnUp,
      caution: turned.iron(IRON_ONE_DOT.value),
    },
    of: (fields) => ofCasing(fields, 'turn', () => fields.turn),
  }),
  output({
    ...asked,
    key: 'header',
    name: words.header,
    when: { field: 'header', is: given(header) },
    step: { do: words.sewHeader, datum: 'fold', ...turnUp, bound: 'most' },
    of: (fields) => ofCasing(fields, 'header', () => fields.header),
  }),
  output({
    ...asked,
    key: 'stitch',
    name: words.stitch,
    // Between the lines nothing is lost: what is threaded has its room on any tape.
    step: { do: words.sew, datum: 'fold', ...turnUp, bound: 'least', caution: cautionWords.pins },
    of: (fields) => ofCasing(fields, 'width', ({ stitch }) => stitch),
  }),
  output({
    ...asked,
    key: 'opening',
    name: words.opening,
    bound: 'least',
    of: (fields) => ofCasing(fields, 'width', ({ opening }) => opening),
  }),
];
