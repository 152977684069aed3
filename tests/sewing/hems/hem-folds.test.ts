import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type ExactLength, type Length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import { hem } from '../../../src/sewing/hems/hem.ts';
import { depthIn, foldShare, foldsOf, thickestFor } from '../../../src/sewing/hems/hem-folds.ts';
import { solved } from '../outcomes.ts';

const SEED = { seed: 1203 };

// Derived by hand, with every length measured to the outside of a fold: (π/2)(g + τ) − (g + 2τ).
// Felt of 2 mm: −0.86 mm round nothing, +0.28 mm over one layer, 1.42 mm over two.
test.each([
  [0, -0.858],
  [1, 0.283],
  [2, 1.425],
])('a fold of felt, 2 mm, over %d layers changes what is needed by %d mm', (layers, change) => {
  expect(toMm(foldShare(mm(2), layers))).toBeCloseTo(change, 3);
});

test('felt of 2 mm turned once, twice equally, twice with less first (derived by hand)', () => {
  const felt = { depth: mm(20), thickness: mm(2), edgeStitch: ZERO };
  const takes = (turn: Length) => toMm(solved(hem({ ...felt, turn })).allowance);
  expect(takes(ZERO)).toBeCloseTo(20 - 0.858, 3);
  expect(takes(mm(20))).toBeCloseTo(40 - 0.858 + 0.283, 3);
  // The raw edge of a first turn of 7 mm stays clear of the hem line: both folds are empty.
  expect(takes(mm(7))).toBeCloseTo(27 - 2 * 0.858, 2);
});

interface Place {
  x: number;
  y: number;
}

/** Straight parts of a half circle. */
const PARTS = 2000;

/** Half a circle of a fold, from one layer's middle to the next; `side` is the way it bulges. */
function halfCircle(from: number, to: number, y: number, side: 1 | -1): Place[] {
  const radius = Math.abs(to - from) / 2;
  return Array.from({ length: PARTS + 1 }, (_, i) => {
    const angle = (Math.PI * i) / PARTS;
    return {
      x: (from + to) / 2 + ((from - to) / 2) * Math.cos(angle),
      y: y + side * radius * Math.sin(angle),
    };
  });
}

function lengthOf(places: readonly Place[]): number {
  return places.slice(1).reduce((sum, place, i) => {
    const before = places[i] as Place;
    return sum + Math.hypot(place.x - before.x, place.y - before.y);
  }, 0);
}

/**
 * A finished hem drawn as its cloth lies, thickness and all, in mm: the middle of the
 * cloth from the hem line's height on the piece, down round the folds, to the raw edge.
 * The hem line's outside is at y = 0, the inner fold's outside at y = depth.
 */
function middleOf(depth: number, turn: number, thick: number): Place[] {
  const equal = turn === depth;
  const hemX = equal ? 2 * thick : thick; // over the layer turned in, or straight on the piece
  const piece = { x: 0, y: depth };
  const round = (x: number) => (x + thick) / 2; // half across, to the outside
  const last = halfCircle(0, hemX, round(hemX), -1);
  if (turn === 0) return [piece, ...last, { x: hemX, y: depth }];
  const first = halfCircle(2 * thick, thick, depth - thick, 1);
  return [piece, ...last, ...first, { x: thick, y: depth - turn }];
}

test('laid out flat, a hem drawn with its thickness is as long as is said', () => {
  const tenths = (min: number, max: number) => fc.integer({ min, max }).map((n) => n / 10);
  fc.assert(
    fc.property(
      tenths(200, 600),
      fc.constantFrom(0, 0.3, 1),
      tenths(1, 40),
      (depth, part, thick) => {
        const turn = Math.round(depth * part * 10) / 10;
        const parts = { depth: mm(depth), turn: mm(turn), thickness: mm(thick) };
        fc.pre(thick < turn || turn === 0);
        const { allowance } = solved(hem({ ...parts, edgeStitch: ZERO }));
        const drawn = lengthOf(middleOf(depth, turn, thick)) - depth;
        // An unequal hem leans from the first turn's thickness to the fold: that is all it adds.
        const lean = part === 0.3 ? thick ** 2 / (depth - 2.5 * thick) / 2 : 0;
        expect(drawn - toMm(allowance)).toBeGreaterThan(-0.002);
        expect(drawn - toMm(allowance)).toBeLessThan(lean * 1.5 + 0.002);
      },
    ),
    SEED,
  );
});

test('the middle of each fold is where its press line is, and the stitching is as far up', () => {
  for (const [depth, turn, thick] of [
    [20, 20, 2],
    [20, 0, 2],
    [35, 35, 1.3],
  ] as const) {
    const input = { depth: mm(depth), turn: mm(turn), thickness: mm(thick), edgeStitch: mm(3) };
    const { hemLine, firstPress, run, allowance } = solved(hem(input));
    const middle = middleOf(depth, turn, thick);
    const all = lengthOf(middle);
    const fromRaw = (i: number) => all - lengthOf(middle.slice(0, i + 1));
    // The middle of a half circle of so many parts; the piece's one place comes before it.
    const [last, first] = [1 + PARTS / 2, 1 + PARTS + 1 + PARTS / 2];
    expect(toMm(hemLine)).toBeCloseTo(fromRaw(last), 2);
    if (firstPress !== undefined) expect(toMm(firstPress)).toBeCloseTo(fromRaw(first), 2);
    // On the piece, 3 mm below the inner fold's height; the drawing starts at that height.
    expect(toMm(run.marks.at(-1)?.at ?? ZERO)).toBeCloseTo(all - 3, 2);
    expect(toMm(allowance) + depth).toBeCloseTo(all, 2);
  }
});

test('the depth that takes all of a cloth takes just that', () => {
  const units = fc.integer({ min: 1, max: 800_000 });
  fc.assert(
    fc.property(units, units, fc.nat(24_000), fc.boolean(), (cloth, turn, thick, equal) => {
      const [all, first, thickness] = [cloth, turn, thick] as unknown as [Length, Length, Length];
      const depth = depthIn(all, equal ? 'equal' : first, thickness) as ExactLength as Length;
      fc.pre(depth > 0);
      const turned = equal ? depth : first;
      const folds = foldsOf({ depth, turn: turned, thickness });
      expect(depth + turned + folds.first + folds.last).toBeCloseTo(cloth, 6);
    }),
    SEED,
  );
});

test('no cloth is thicker than the rounds of its own folds have room for', () => {
  expect(thickestFor(mm(20), ZERO)).toBe(mm(20));
  expect(thickestFor(mm(20), mm(20))).toBe(mm(8));
  expect(thickestFor(mm(20), mm(3))).toBe(mm(3));
});
