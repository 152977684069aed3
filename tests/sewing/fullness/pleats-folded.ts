import type { PleatKind } from '../../../src/sewing/fullness/pleat-input.ts';
import { LINES } from '../../../src/sewing/fullness/pleat-marks.ts';

/** A second road: the marked strip is folded line by line, and what shows is measured. */
export function visibleBetween(marks: readonly { at: number; kind: string }[], kind: PleatKind) {
  const hidden = marks.slice(1).map((mark, i) => {
    const before = marks[i] as { at: number; kind: string };
    const ofOne = Math.floor(i / LINES[kind]) === Math.floor((i + 1) / LINES[kind]);
    return ofOne && mark.kind !== before.kind ? mark.at - before.at : 0;
  });
  let taken = 0;
  return marks.map(({ at }, i) => {
    taken += i === 0 ? 0 : (hidden[i - 1] ?? 0);
    return at - taken;
  });
}
