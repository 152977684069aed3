import { exactLength, type Length, length } from '../lengths/length.ts';
import { depthsTaken, type PleatKind, type PleatsInput } from './pleat-input.ts';
import type { Mark } from './run.ts';

/** How many lines each pleat is marked with. */
export const LINES: Readonly<Record<PleatKind, number>> = { knife: 2, box: 4, inverted: 3 };

/** A line of a pleat: where it lies when all is folded, and what lies in folds before it. */
interface FoldedLine {
  kind: 'fold' | 'placement';
  /** From the seam, in parts of 2 × count, so that it is one division. */
  visible: number;
  /** In depths. */
  taken: number;
}

/**
 * The lines of every pleat from the cut end, each pleat's after the one's before (derived here):
 * a knife pleat folds at its end and is laid on the line 2 depths on; a box folds at both sides of
 * its front, an inverted pleat's folds meet over its middle.
 */
export function marksAcross(
  input: Pick<PleatsInput, 'kind' | 'finished' | 'depth' | 'seam'> & {
    face: Length;
    count: number;
  },
): Mark[] {
  const { kind, depth, seam, count } = input;
  const each = Array.from({ length: count }, (_, i) => i);
  const lines = each.flatMap((i) => linesOf(input, i));
  return lines.map(({ kind: what, visible, taken }, i) => {
    const before = Math.floor(i / LINES[kind]) * depthsTaken(kind).value;
    const inFolds = length((before + taken) * depth);
    const at = exactLength(seam + inFolds + visible / (2 * count));
    return { at, taken: inFolds, label: String(i + 1), kind: what };
  });
}

function linesOf(
  { kind, finished, count, face }: Parameters<typeof marksAcross>[0],
  i: number,
): FoldedLine[] {
  const middle = (2 * i + 1) * finished;
  if (kind === 'knife') {
    const visible = 2 * (i + 1) * finished;
    return [
      { kind: 'fold', visible, taken: 0 },
      { kind: 'placement', visible, taken: 2 },
    ];
  }
  if (kind === 'inverted') {
    return [
      { kind: 'fold', visible: middle, taken: 0 },
      { kind: 'placement', visible: middle, taken: 2 },
      { kind: 'fold', visible: middle, taken: 4 },
    ];
  }
  const [left, right] = [middle - count * face, middle + count * face];
  return [
    { kind: 'placement', visible: left, taken: 0 },
    { kind: 'fold', visible: left, taken: 2 },
    { kind: 'fold', visible: right, taken: 2 },
    { kind: 'placement', visible: right, taken: 4 },
  ];
}
