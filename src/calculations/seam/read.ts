import { needed } from '../../calculation/needed.ts';
import { type Length, length } from '../../lengths/length.ts';
import { mustBePositive } from '../../sewing/length-checks.ts';
import { answerUnless, type Outcome } from '../../sewing/problem.ts';
import { type LetOut, letOut } from '../../sewing/seams/seam-change.ts';
import type { ClipInput } from '../../sewing/seams/seam-clips.ts';
import { leastAllowance, rowProblems, USUAL_ROWS } from '../../sewing/seams/seam-finish.ts';
import type { FinishInput } from '../../sewing/seams/seam-rows.ts';
import type { SeamAsked } from './fields.ts';

/** What the rows of a finish are worked out from, besides the allowance they lie in. */
export const ROW_FIELDS = [
  'finish',
  'first',
  'trim',
  'second',
  'under',
  'turn',
  'laid',
  'top',
  'topSecond',
] as const satisfies readonly (keyof SeamAsked)[];

/** What is moved when a garment is let out or taken in: its finish has to keep its rows. */
export const GIRTH_FIELDS = [
  'allowance',
  'change',
  'seams',
  'way',
  ...ROW_FIELDS,
] as const satisfies readonly (keyof SeamAsked)[];

type Read<Fields extends readonly (keyof SeamAsked)[]> = Pick<SeamAsked, Fields[number]>;
export type RowsAsked = Read<typeof ROW_FIELDS>;

/** A finish on an allowance; rows that another finish has are the usual ones. */
export function finishInput(given: Length, asked: RowsAsked): FinishInput {
  return { finish: asked.finish, given, ...USUAL_ROWS, ...ownRows(asked) };
}

function ownRows({
  finish,
  first,
  trim,
  second,
  under,
  turn,
  laid,
  top,
  topSecond,
}: RowsAsked): Partial<FinishInput> {
  if (finish === 'plain') return { top, topSecond };
  if (finish === 'french') return needed({ first, trim, second });
  return finish === 'felled' ? { ...needed({ under, turn }), laid } : {};
}

/** Letting out or taking in, with what its finish must be left. */
export function girthChange(asked: Read<typeof GIRTH_FIELDS>): Outcome<LetOut> {
  const { allowance, by, seams } = needed({
    allowance: asked.allowance,
    by: asked.change,
    seams: asked.seams,
  });
  const input = finishInput(allowance, asked);
  const change = asked.way === 'out' ? by : length(-by);
  return answerUnless([...mustBePositive('change', by), ...rowProblems(input)], () =>
    letOut({ allowance, change, seams, least: leastAllowance(input) }),
  );
}

/** The clips of a curve. */
export function clipInput({
  radius,
  allowance,
  opening,
  along,
}: Pick<SeamAsked, 'radius' | 'allowance' | 'opening'> &
  Partial<Pick<SeamAsked, 'along'>>): ClipInput {
  return { ...needed({ radius, allowance, opening }), along };
}
