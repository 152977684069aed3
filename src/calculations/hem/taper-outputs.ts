import { turnedWords } from '#words/common/turned-words.ts';
import { hemOutputWords as words } from '#words/outputs/hem-output-words.ts';
import { outputOf } from '../../calculation/output.ts';
import type { Taper } from '../../sewing/hems/taper.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import { hemFields } from './fields.ts';
import {
  apartOf,
  asGiven,
  type HemAsked,
  hemInput,
  TAPER_FIELDS,
  type TaperAsked,
  TURN_FIELDS,
  taperOf,
  widthsOf,
} from './read.ts';

const output = outputOf(hemFields);
const { taper } = hemFields.specs;

const tapered = {
  kind: 'length',
  reads: [...TURN_FIELDS, ...TAPER_FIELDS],
  when: { field: 'taper', is: taper.is('taper') },
} as const;
const cut = {
  datum: 'zero',
  stage: 'cut',
  undoable: false,
  bound: 'least',
  caution: turnedWords.tryOn,
} as const;

/** How wide the allowance of a tapered piece is cut, so that it lies flat when it is turned. */
export const taperOutputs = [
  output({
    key: 'across-fold',
    name: words.acrossFold,
    ...tapered,
    step: { do: words.cutAtFold, ...cut },
    of: (fields) => mapped(widths(fields), ({ atDepth }) => atDepth),
  }),
  output({
    key: 'across-edge',
    name: words.acrossEdge,
    ...tapered,
    step: { do: words.cutAcross, ...cut },
    of: (fields) => mapped(widths(fields), ({ atRawEdge }) => atRawEdge),
  }),
];

function widths(fields: HemAsked & TaperAsked): Outcome<Taper> {
  const input = hemInput(fields);
  if (!input.ok) return input;
  const given = widthsOf(fields, apartOf(fields, input.value.depth));
  if (!given) throw new Error('a straight piece has no taper');
  const taper = taperOf(input.value, given);
  return taper.ok ? taper : asGiven(taper, input.value, fields);
}
