import fc from 'fast-check';
import { expect, test } from 'vitest';
import { faultsOf } from '../../src/lay/check-lay.ts';
import {
  type Cloth,
  type CutPiece,
  MOST_PIECES,
  pieceOf,
  taskOf,
  toBuy,
  unfolded,
} from '../../src/lay/cloth.ts';
import { boxOf, signedArea } from '../../src/lay/outline.ts';
import { found, mostShared, outlines, rectangle } from './lays.ts';

const plain: Cloth = {
  ...{ width: 1500, folded: false, shrinkAlong: 0, shrinkAcross: 0 },
  ...{ nap: false, gap: 0, unit: 100 },
};

const cut = (id: string, more: Partial<CutPiece> = {}): CutPiece => ({
  ...{ id, outline: rectangle(700, 400), count: 1, pair: false, onFold: false },
  ...more,
});

const task = (pieces: CutPiece[], cloth: Partial<Cloth> = {}) => {
  const outcome = taskOf(pieces, { ...plain, ...cloth });
  if (!outcome.ok) throw new Error(outcome.problem.kind);
  return outcome;
};

const problem = (pieces: CutPiece[], cloth: Partial<Cloth> = {}) => {
  const outcome = taskOf(pieces, { ...plain, ...cloth });
  return outcome.ok ? undefined : outcome.problem;
};

test('of a pair half are mirror images on open cloth, and it is one placing on folded cloth', () => {
  const sleeves = cut('sleeve', {
    count: 2,
    pair: true,
    outline: [
      [0, 0],
      [500, 0],
      [300, 350],
    ],
  });
  const open = task([sleeves]).value.pieces;
  expect(open.map(({ id, count }) => [id, count])).toEqual([
    ['sleeve', 1],
    ['sleeve~', 1],
  ]);
  expect(open.map(({ id }) => pieceOf(id))).toEqual([
    { id: 'sleeve', isMirrored: false },
    { id: 'sleeve', isMirrored: true },
  ]);
  expect(open.map(({ outline }) => signedArea(outline))).toEqual([87_500, 87_500]);
  const folded = task([sleeves], { folded: true });
  expect(folded.value.pieces.map(({ id, count }) => [id, count])).toEqual([['sleeve', 1]]);
  expect(folded.value.width).toBe(750);
  expect(folded.wasted).toEqual([]);
});

test('on folded cloth an odd piece wastes its twin, and what lies on the fold does not', () => {
  const pieces = [cut('yoke', { count: 3 }), cut('back', { onFold: true })];
  const { value, wasted } = task(pieces, { folded: true });
  expect(value.pieces.map(({ count, onFold }) => [count, onFold === true])).toEqual([
    [2, false],
    [1, true],
  ]);
  expect(wasted).toEqual(['yoke']);
});

test('what lies on the fold is laid whole on open cloth', () => {
  const back = cut('back', {
    onFold: true,
    outline: [
      [0, 0],
      [600, 0],
      [500, 300],
      [0, 350],
    ],
  });
  const [whole] = task([back]).value.pieces;
  expect(boxOf(whole!.outline)).toEqual({ x0: 0, x1: 600, y0: -350, y1: 350 });
  expect(whole!.onFold).toBeUndefined();
});

test('opened, a half is twice its area and its own mirror image, wherever it was drawn', () => {
  fc.assert(
    fc.property(outlines(4, 8), (outline) => {
      // With an edge along the fold, as a half has.
      const { x0, x1, y0 } = boxOf(outline);
      const half = [[x0, y0 - 50] as const, [x1, y0 - 50] as const, ...outline];
      const hull = half.filter((_, i) => i < 2 || half[i]![1] > y0 - 40);
      fc.pre(signedArea(hull) > 0 && isSimple(hull));
      const whole = unfolded(hull);
      expect(signedArea(whole)).toBeCloseTo(2 * signedArea(hull), 3);
      const box = boxOf(whole);
      expect(box.y0).toBeCloseTo(-box.y1, 6);
    }),
    { seed: 11, numRuns: 100 },
  );
});

const isSimple = (outline: readonly (readonly [number, number])[]) =>
  outline.every((a, i) =>
    outline.every((c, j) => {
      const [b, d] = [outline[(i + 1) % outline.length]!, outline[(j + 1) % outline.length]!];
      if (a === c || a === d || b === c || b === d) return true;
      const side = (p: typeof a, q: typeof a, r: typeof a) =>
        Math.sign((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]));
      return side(a, b, c) * side(a, b, d) > 0 || side(c, d, a) * side(c, d, b) > 0;
    }),
  );

test('a nap, and a piece that must not, lie one way; all else may lie end for end', () => {
  const pieces = [cut('a'), cut('b', { turns: 'none' })];
  expect(task(pieces).value.pieces.map(({ turns }) => turns)).toEqual([[0, 180], [0]]);
  expect(task(pieces, { nap: true }).value.pieces.map(({ turns }) => turns)).toEqual([[0], [0]]);
});

test('washed cloth is narrower to lay on, and longer to buy', () => {
  // 36 × 42 in shrink to 35 × 41 (a published example of a shrunk sample): 2.78 and 2.38 %.
  const cloth = { ...plain, width: 1050, shrinkAlong: 1 / 36, shrinkAcross: 1 / 42, unit: 1 };
  expect(task([cut('a')], cloth).value.width).toBeCloseTo(1025, 9);
  expect(toBuy(35 * 25.4, cloth)).toBe(Math.ceil(36 * 25.4));
  // 3 yd at 5 % ask for 3.158, 4 yd at 10 % for 4.444: L/(1 − s), up to the eighth of a yard.
  const yard = 914.4;
  const eighths = { ...plain, unit: yard / 8 };
  expect(toBuy(3 * yard, { ...eighths, shrinkAlong: 0.05 }) / yard).toBeCloseTo(3.25, 9);
  expect(toBuy(4 * yard, { ...eighths, shrinkAlong: 0.1 }) / yard).toBeCloseTo(4.5, 9);
});

test('what fills a unit just so is no unit more', () => {
  expect(toBuy(1200.0000012, plain)).toBe(1200);
  expect(toBuy(1200.1, plain)).toBe(1300);
});

/**
 * Skirt lengths, from a published sewing book: two panels of 49 in lie side by side on 45 in
 * cloth and ask for 2 × 49 / 36 = 2.72, up to 2 3/4 yd, one after the other; three for 4.08, which
 * the book rounds down to "about 4" and this must not.
 */
test('published skirt lengths are what is bought where one panel fills the width', () => {
  const inch = 25.4;
  const panels = (count: number) => [
    cut('panel', { count, outline: rectangle(49 * inch, 41 * inch) }),
  ];
  const cloth = { ...plain, width: 45 * inch, unit: (36 * inch) / 8 };
  const two = found(task(panels(2), cloth).value)!;
  expect(toBuy(two.length, cloth) / (36 * inch)).toBeCloseTo(2.75, 9);
  const three = found(task(panels(3), cloth).value)!;
  expect(toBuy(three.length, cloth) / (36 * inch)).toBeCloseTo(4.125, 9);
});

test('wider cloth never asks for more: the invariant of published conversion tables', () => {
  const pieces = [
    cut('front', { count: 2, pair: true }),
    cut('back', { onFold: true }),
    cut('sleeve', { count: 2, pair: true, outline: rectangle(600, 450) }),
  ];
  // Common widths, in inches: 36, 45, 54, 60.
  const lengths = [36, 45, 54, 60].map((width) => {
    const { value } = task(pieces, { width: width * 25.4 });
    const lay = found(value, { rounds: 400 })!;
    expect(faultsOf(value, lay)).toEqual([]);
    return toBuy(lay.length, { ...plain, unit: 1 });
  });
  expect([...lengths].sort((a, b) => b - a)).toEqual(lengths);
});

test('what can’t be laid is said with what it lacks', () => {
  const wide = cut('back', { outline: rectangle(500, 800), onFold: true });
  expect(problem([wide])).toEqual({
    kind: 'wider-than-cloth',
    id: 'back',
    width: 1600,
    room: 1500,
  });
  expect(problem([wide], { folded: true })).toMatchObject({ width: 800, room: 750 });
  expect(problem([cut('a', { count: 0 })])).toEqual({ kind: 'no-count', id: 'a' });
  expect(problem([cut('a', { count: 501 })])).toMatchObject({ count: 501, most: MOST_PIECES });
  expect(problem([cut('a')], { width: 0 })).toEqual({ kind: 'no-width' });
  expect(problem([cut('a')], { width: Number.NaN })).toEqual({ kind: 'no-width' });
  const matched = cut('a', { match: [0, 0] });
  const repeat = { along: 50, across: 0 };
  expect(problem([matched], { folded: true, repeat })).toEqual({ kind: 'repeat-on-fold' });
});

test('off the grain by a few degrees, either way and either end up, and it passes the checker', () => {
  const bib = cut('bib', { onFold: true, tilt: 4, outline: rectangle(300, 200) });
  const { value } = task([cut('apron', { count: 4, tilt: 4 }), bib]);
  const [apron, whole] = value.pieces;
  expect(apron?.turns).toEqual([0, 4, 356, 180, 184, 176]);
  // Its grain is the fold.
  expect(whole?.turns).toEqual([0, 180]);
  const lay = found(value, { rounds: 60 })!;
  expect(faultsOf(value, lay)).toEqual([]);
  expect(mostShared(value, lay)).toBeLessThan(1);
});
