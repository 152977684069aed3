import fc from 'fast-check';
import { type Geom, union } from 'polyclip-ts';
import { expect, test } from 'vitest';
import { boxOf, type Outline, type Point, signedArea } from '../../../src/lay/outline.ts';
import { withAllowances } from '../../../src/lay/pieces/allowance.ts';
import { MITRE_MOST } from '../../../src/lay/pieces/allowance-corner.ts';
import {
  type PieceShape,
  pieceOutline,
  type SidedOutline,
} from '../../../src/lay/pieces/piece-outline.ts';
import { outlines, shared } from '../lays.ts';

/** What the library's whole numbers may move a corner by, in mm. */
const ROUNDED = 0.002;

function pieceOf(shape: PieceShape): SidedOutline {
  const found = pieceOutline(shape);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
}

function cut(piece: SidedOutline, allowances: readonly number[], onFold = false): Outline {
  const found = withAllowances(piece, allowances, onFold);
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
}

const plain = (points: Outline) => pieceOf({ kind: 'points', points });
const allowance = fc.oneof(fc.constant(0), fc.integer({ min: 1, max: 60 }));
const some = fc.array(allowance, { minLength: 9, maxLength: 9 });

/** Each straight way of an outline, with its length and its turn at the corner where it ends. */
function waysOf(outline: Outline) {
  return outline.map((from, i) => {
    const to = outline[(i + 1) % outline.length]!;
    const next = outline[(i + 2) % outline.length]!;
    const angle = (a: Point, b: Point) => Math.atan2(b[1] - a[1], b[0] - a[0]);
    const turn = angle(to, next) - angle(from, to);
    const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return { from, to, length, turn: turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI)) };
  });
}

/** Outlines without a hollow corner: corners at rising angles on a circle. */
const convex = fc
  .uniqueArray(fc.integer({ min: 0, max: 59 }), { minLength: 3, maxLength: 12 })
  .map((angles) =>
    [...angles]
      .sort((a, b) => a - b)
      .map(
        (at): Point => [300 * Math.cos((at * Math.PI) / 30), 300 * Math.sin((at * Math.PI) / 30)],
      ),
  );

test('a rectangle grows by what each of its sides is given', () => {
  const piece = pieceOf({ kind: 'straight', length: 400, width: 250 });
  expect(cut(piece, [10, 15, 40, 0])).toEqual(
    expect.arrayContaining([
      [0, -10],
      [415, -10],
      [415, 290],
      [0, 290],
    ]),
  );
  expect(cut(piece, [0, 0, 0, 0])).toEqual(expect.arrayContaining([...piece.outline]));
});

test('a curve is followed: half a circle of 100 with 15 is half of one of 115', () => {
  const piece = pieceOf({ kind: 'straight', length: 300, width: 200, rises: [0, 100] });
  const grown = signedArea(cut(piece, [0, 15, 0, 0]));
  const half = (Math.PI * 115 ** 2) / 2;
  // Beside the ends of the bow lie no mitres: its ends run on along the grain.
  expect(grown).toBeGreaterThan(300 * 200 + half);
  expect(grown).toBeLessThan(300 * 200 + half + 0.6 * Math.PI * 115);
});

test('one width round a convex piece adds what Steiner says, and in mitres a little more', () => {
  // Steiner's formula for the area of a convex outline of area A and length L, all round wider by
  // a: A + a L + π a². A mitre of turn t holds a² tan(t / 2) where the round one holds a² t / 2.
  const law = fc.property(convex, fc.integer({ min: 1, max: 60 }), (outline, a) => {
    const ways = waysOf(outline);
    fc.pre(ways.every(({ turn }) => 1 / Math.cos(turn / 2) < MITRE_MOST));
    const around = ways.reduce((sum, { length }) => sum + length, 0);
    const mitres = ways.reduce((sum, { turn }) => sum + Math.tan(turn / 2), 0);
    const area = signedArea(
      cut(
        plain(outline),
        outline.map(() => a),
      ),
    );
    expect(area).toBeGreaterThan(signedArea(outline) + a * around + Math.PI * a * a - 1);
    const most = ROUNDED * (around + 600 * ways.length);
    expect(Math.abs(area - signedArea(outline) - a * around - a * a * mitres)).toBeLessThan(most);
  });
  fc.assert(law, { seed: 18, numRuns: 300 });
});

test('sides of different widths meet where the lines beside them do', () => {
  // Between strips a and b at turn t lies a kite of (a p + b q) / 2, with p and q how far each
  // strip's edge runs on: p = (b − a cos t) / sin t, from the equations of both lines.
  const law = fc.property(convex, some, (outline, wide) => {
    const ways = waysOf(outline);
    let grown = signedArea(outline);
    for (const [i, { length, turn }] of ways.entries()) {
      const [a, b] = [wide[i % 9]!, wide[((i + 1) % ways.length) % 9]!];
      const [p, q] = [
        (b - a * Math.cos(turn)) / Math.sin(turn),
        (a - b * Math.cos(turn)) / Math.sin(turn),
      ];
      fc.pre(p >= 0 && q >= 0 && Math.hypot(a, p) <= MITRE_MOST * Math.max(a, b));
      grown += a * length + (a * p + b * q) / 2;
    }
    const area = signedArea(
      cut(
        plain(outline),
        outline.map((_, i) => wide[i % 9]!),
      ),
    );
    expect(Math.abs(area - grown)).toBeLessThan(ROUNDED * 4000);
  });
  fc.assert(law, { seed: 18, numRuns: 150 });
});

/** How far out a place lies from a straight way, where it lies beside it and not within. */
function beside({ from, to, length }: { from: Point; to: Point; length: number }, [x, y]: Point) {
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const along = (x - from[0]) * ux + (y - from[1]) * uy;
  const out = (x - from[0]) * uy - (y - from[1]) * ux;
  return along > ROUNDED && along < length - ROUNDED && out > -ROUNDED ? out : Infinity;
}

test('beside each side lies at least its allowance, whatever its neighbours have', () => {
  const law = fc.property(outlines(), some, (outline, wide) => {
    const piece = plain(outline);
    const grown = cut(piece, wide);
    // All of the sewn piece lies in it: by a library that shares nothing with the one used.
    expect(shared(outline, grown)).toBeCloseTo(signedArea(outline), 0);
    const ways = waysOf(outline);
    // A point cut off square is as wide there as the strips are.
    const farthest =
      Math.hypot(MITRE_MOST, 1) * Math.max(...outline.map((_, i) => wide[i]!)) + 0.01;
    for (const { from, to } of waysOf(grown)) {
      for (const share of [0, 0.07, 0.31, 0.5, 0.77]) {
        const place: Point = [
          from[0] + share * (to[0] - from[0]),
          from[1] + share * (to[1] - from[1]),
        ];
        const far = ways.map((way) => beside(way, place));
        const short = far.map((away, i) => wide[i]! - away);
        expect(Math.max(...short)).toBeLessThanOrEqual(ROUNDED);
        const corners = outline.map(([x, y]) => Math.hypot(x - place[0], y - place[1]));
        expect(Math.min(...far, ...corners)).toBeLessThanOrEqual(farthest);
      }
    }
  });
  fc.assert(law, { seed: 18, numRuns: 300 });
});

test('a hollow piece with one width has the area that another library finds', () => {
  const ring = (outline: Outline): Geom => [
    [...outline, outline[0]!].map(([x, y]): [number, number] => [x, y]),
  ];
  const law = fc.property(outlines(3, 7), fc.integer({ min: 1, max: 40 }), (outline, a) => {
    const ways = waysOf(outline);
    fc.pre(ways.every(({ turn }) => 1 / Math.cos(turn / 2) < MITRE_MOST));
    const parts = ways.flatMap(({ from, to, length, turn }, i): Geom[] => {
      const out = (one: (typeof ways)[number]): Point => [
        ((one.to[1] - one.from[1]) / one.length) * a,
        (-(one.to[0] - one.from[0]) / one.length) * a,
      ];
      const [n, m] = [out({ from, to, length, turn }), out(ways[(i + 1) % ways.length]!)];
      const at = ([x, y]: Point, [u, v]: Point): Point => [x + u, y + v];
      const strip = ring([from, at(from, n), at(to, n), to]);
      if (turn <= 0) return [strip];
      // The tip of a mitre: the sum of both normals, by 1 + cos of the turn.
      const tip: Point = [
        (n[0] + m[0]) / (1 + Math.cos(turn)),
        (n[1] + m[1]) / (1 + Math.cos(turn)),
      ];
      return [strip, ring([to, at(to, n), at(to, tip), at(to, m)])];
    });
    const found = union(ring(outline), ...parts).map(([outer]) =>
      Math.abs(signedArea(outer as Outline)),
    );
    const area = signedArea(
      cut(
        plain(outline),
        outline.map(() => a),
      ),
    );
    expect(Math.abs(area - Math.max(...found))).toBeLessThan(ROUNDED * 4000);
  });
  fc.assert(law, { seed: 18, numRuns: 120 });
});

test('on the fold nothing is added below it, and the sides beside it run down to it', () => {
  // A flared half: its end leans out, so that the hem's allowance would poke below the fold.
  const shape: PieceShape = {
    kind: 'points',
    points: [
      [0, 0],
      [400, 0],
      [450, 300],
      [0, 200],
    ],
  };
  const piece = pieceOf(shape);
  const open = cut(piece, [0, 40, 10, 10]);
  expect(boxOf(open).y0).toBeLessThan(-5);
  const half = cut(piece, [0, 40, 10, 10], true);
  expect(boxOf(half).y0).toBe(0);
  // The hem leans by 50 in 300: along the fold its 40 measure 40 × √(50² + 300²) / 300.
  const low = half.filter(([, y]) => y === 0).map(([x]) => x);
  expect(Math.max(...low)).toBeCloseTo(400 + (40 * Math.hypot(50, 300)) / 300, 2);
  expect(Math.min(...low)).toBe(-10);
  const law = fc.property(some, fc.integer({ min: -90, max: 90 }), (wide, lean) => {
    const leaning: Point[] = [
      [0, 0],
      [400, 0],
      [400 + lean, 300],
      [lean, 200],
    ];
    const { y0 } = boxOf(cut(plain(leaning), wide, true));
    expect(y0).toBe(0);
  });
  fc.assert(law, { seed: 18, numRuns: 100 });
});

test('in a hollow corner the wider strip runs on to the edge of the narrower', () => {
  const piece = plain([
    [0, 0],
    [100, 0],
    [200, -100],
    [200, 200],
    [0, 200],
  ]);
  // The lines y = −20 and x + y = 100 − 5 √2 meet at x = 120 − 5 √2.
  const found = cut(piece, [20, 5, 0, 0, 0]);
  const tip = found.find(([x, y]) => Math.hypot(x - (120 - 5 * Math.SQRT2), y + 20) < ROUNDED);
  expect(tip).toBeDefined();
  const turnedRound = cut(piece, [5, 20, 0, 0, 0]);
  // The lines y = −5 and x + y = 100 − 20 √2 meet at x = 105 − 20 √2.
  const other = turnedRound.find(
    ([x, y]) => Math.hypot(x - (105 - 20 * Math.SQRT2), y + 5) < ROUNDED,
  );
  expect(other).toBeDefined();
});

test('what allowances close in is part of the piece: a keyhole is no hole', () => {
  const ring: Outline = [
    [0, 0],
    [200, 0],
    [200, 99],
    [150, 99],
    [150, 50],
    [50, 50],
    [50, 150],
    [150, 150],
    [150, 101],
    [200, 101],
    [200, 200],
    [0, 200],
  ];
  const grown = cut(
    plain(ring),
    ring.map(() => 5),
  );
  expect(grown).toHaveLength(4);
  expect(signedArea(grown)).toBe(210 * 210);
});

test('an allowance that is none, or is not said, is named with its side', () => {
  const piece = pieceOf({ kind: 'straight', length: 400, width: 250 });
  expect(withAllowances(piece, [10, -1, Number.NaN, 501])).toEqual({
    ok: false,
    problems: [
      { kind: 'out-of-range', field: 'allowance', at: 1, mm: -1, least: 0, most: 500 },
      { kind: 'not-a-number', field: 'allowance', at: 2 },
      { kind: 'out-of-range', field: 'allowance', at: 3, mm: 501, least: 0, most: 500 },
    ],
  });
  expect(withAllowances(piece, [10])).toMatchObject({
    problems: [{ at: 1 }, { at: 2 }, { at: 3 }],
  });
  // A file's last digits make no fold slanted.
  const nearly = plain([
    [0, 0.0004],
    [300, 0],
    [300, 90],
    [0, 90],
  ]);
  expect(withAllowances(nearly, [0, 9, 9, 9], true)).toMatchObject({ ok: true });
  const slanted = plain([
    [0, 0],
    [100, 20],
    [0, 90],
  ]);
  expect(withAllowances(slanted, [1, 1, 1], true)).toEqual({
    ok: false,
    problems: [{ kind: 'no-fold' }],
  });
});
