import type { ExactLength } from '../../lengths/length.ts';
import type { Mark, Run } from '../../sewing/run.ts';

/**
 * Where a mark lies on an edge of a corner.
 *
 * @throws an Error where the edge has no such mark
 */
export function placeOf({ marks }: Run, kind: Mark['kind']): ExactLength {
  const mark = marks.find((one) => one.kind === kind);
  if (!mark) throw new Error(`an edge without a mark to ${kind}`);
  return mark.at;
}
