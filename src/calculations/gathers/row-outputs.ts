import { gathersOutputWords as words } from '#words/outputs/gathers-output-words.ts';
import { type Comes, type Output, outputOf } from '../../calculation/output.ts';
import { type ExactLength, type Length, ZERO } from '../../lengths/length.ts';
import { type GatherRows, gatherRows } from '../../sewing/fullness/gather-rows.ts';
import { mustNotBeNegative } from '../../sewing/length-checks.ts';
import { answerUnless } from '../../sewing/problem.ts';
import { gathersFields } from './fields.ts';

const output = outputOf(gathersFields);

/** One row from the raw edge; none where there is no allowance to sew it in. */
function rowOf(top: Length, see: (rows: GatherRows) => ExactLength): Comes<ExactLength> {
  if (top === ZERO) return { ok: false, absent: 'top' };
  return answerUnless(mustNotBeNegative('top', top), () => ({
    ok: true,
    value: see(gatherRows(top)),
  }));
}

const asked = {
  kind: 'length',
  reads: ['top'],
} as const;
const beside = { datum: 'raw-edge', stage: 'join', undoable: true } as const;

/** Both rows that are drawn up. */
export const rowOutputs: readonly Output[] = [
  output({
    ...asked,
    key: 'row-1',
    name: words.firstRow,
    step: { do: words.sewRows[0], ...beside },
    of: ({ top }) => rowOf(top, ({ first }) => first),
  }),
  output({
    ...asked,
    key: 'row-2',
    name: words.secondRow,
    step: { do: words.sewRows[1], ...beside },
    of: ({ top }) => rowOf(top, ({ second }) => second),
  }),
];
