import { type ExactLength, exactLength } from '../../lengths/length.ts';
import type { Mark } from '../run.ts';
import { depthsTaken, type PleatKind, type PleatsInput, pleatedWidth } from './pleat-input.ts';

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

/** So many pleats, as deep as they are where they are marked. */
export interface Marked extends Pick<PleatsInput, 'kind' | 'finished' | 'flat' | 'ends' | 'seam'> {
  depth: ExactLength;
  face: ExactLength;
  count: number;
}

/**
 * The lines of every pleat from the cut end, each pleat's after the one's before (derived here):
 * a knife pleat folds at its end, or in its middle, and is laid on the line 2 depths on; a box folds
 * at both sides of its front, an inverted pleat's folds meet over its middle.
 */
export function marksAcross(input: Marked): Mark[] {
  const { kind, depth, seam, count } = input;
  const each = Array.from({ length: count }, (_, i) => i);
  const lines = each.flatMap((i) => linesOf(input, i));
  return lines.map(({ kind: what, visible, taken }, i) => {
    const before = Math.floor(i / LINES[kind]) * depthsTaken(kind).value;
    const inFolds = exactLength((before + taken) * depth);
    const at = exactLength(seam + inFolds + visible / (2 * count));
    return { at, taken: inFolds, label: String(i + 1), kind: what };
  });
}

function linesOf(marked: Marked, i: number): FoldedLine[] {
  const { kind, count, face, ends } = marked;
  const each = pleatedWidth(marked);
  const middle = (2 * i + 1) * each;
  if (kind === 'knife') {
    const visible = ends === 'half' ? middle : 2 * (i + 1) * each;
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
