import type { Output } from '../../calculation/output.ts';
import { homeOf } from '../record/home.ts';
import type { Answer } from './work-out.ts';

/** How many pieces of cloth a work is cut in. */
export interface PiecesOf {
  output: Output;
  /** On each of its sides, in their order. */
  each: readonly number[];
}

/** How many pieces of cloth a work gives on each of these sides; undefined where it gives none, or isn't known yet. */
export function piecesOf(
  { works, values }: Pick<Answer, 'works' | 'values'>,
  id: string,
  sides: readonly string[],
): PiecesOf | undefined {
  const all = works.get(id)?.outputs?.outputs ?? [];
  const output = all.find(({ kind, material }) => kind === 'count' && material?.kind === 'cloth');
  if (!output) return undefined;
  const each = sides.flatMap((side) => {
    const result = values.get(homeOf(id, side, output.key));
    return result?.ok && typeof result.value === 'number' ? result.value : [];
  });
  return each.length === sides.length ? { output, each } : undefined;
}
