import { expect, test } from 'vitest';
import { faultsOf } from '../../../src/lay/check-lay.ts';
import { boxOf, type Outline, signedArea } from '../../../src/lay/outline.ts';
import { withAllowances } from '../../../src/lay/pieces/allowance.ts';
import { readSvg } from '../../../src/lay/pieces/file/read-svg.ts';
import {
  pieceOutline,
  plainOutline,
  type SidedOutline,
} from '../../../src/lay/pieces/piece-outline.ts';
import { simplified } from '../../../src/lay/pieces/simplify.ts';
import type { LayTask } from '../../../src/lay/task.ts';
import { found, mostShared, piece, shared } from '../lays.ts';

/** A piece as it is cut: with its allowances, and with as few corners as the search likes. */
function cut(sewn: SidedOutline, allowances: readonly number[], onFold = false): Outline {
  const wide = withAllowances(sewn, allowances, onFold);
  if (!wide.ok) throw new Error(JSON.stringify(wide.problems));
  return simplified(wide.value, onFold ? boxOf(wide.value).y0 : undefined);
}

/** Our own invented pieces of an apron: a bib on the fold with a hollowed side, and a round pocket. */
const FILE = `<svg width="400mm" height="400mm" viewBox="0 0 40 40" xmlns="http://www.w3.org/2000/svg">
  <path id="pocket" d="M2 2h18v10a9 9 0 0 1-18 0z"/></svg>`;

test('pieces typed and read from a file are laid with their allowances, and nothing overlaps', () => {
  const bib = pieceOutline({
    kind: 'tapered',
    length: 600,
    start: 140,
    end: 260,
    slant: 'high',
    rises: [0, 10, -60, 0],
  });
  const file = readSvg(FILE);
  if (!bib.ok || !file.ok) throw new Error('not read');
  const pocket = plainOutline(file.shapes[0]!.outline);
  if (!pocket.ok) throw new Error('no pocket');
  const cutBib = cut(bib.value, [0, 40, 10, 20], true);
  const cutPocket = cut(
    pocket.value,
    pocket.value.sides.map(() => 10),
  );
  for (const [sewn, outer] of [
    [bib.value.outline, cutBib],
    [pocket.value.outline, cutPocket],
  ] as const) {
    expect(shared(sewn, outer)).toBeCloseTo(signedArea(sewn), 0);
    expect(outer.length).toBeLessThanOrEqual(40);
  }
  const task: LayTask = {
    width: 700,
    pieces: [
      piece('bib', cutBib, { onFold: true, turns: [0] }),
      piece('pocket', cutPocket, { count: 3 }),
    ],
  };
  const lay = found(task, { rounds: 60 })!;
  expect(faultsOf(task, lay)).toEqual([]);
  expect(mostShared(task, lay)).toBeLessThan(1);
});
