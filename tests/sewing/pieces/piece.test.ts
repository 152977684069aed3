/**
 * Published: the patch pocket is A Complete Course in Dressmaking, vol. 2 (about 1922), pages 27 and
 * 32; the patch US Army FM 10-16, General Fabric Repair (2000); the narrow and the wide hem Theta
 * Johnson, It’s Fun to Sew a Cotton School Dress. Finished sizes that a source leaves open are ours.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  exactLength,
  inches,
  type Length,
  length,
  mm,
  toInches,
  toMm,
  ZERO,
} from '../../../src/lengths/length.ts';
import { longestOf, piece, sizedAlong, widestOf } from '../../../src/sewing/pieces/piece.ts';
import { EDGES } from '../../../src/sewing/pieces/piece-edges.ts';
import type { EdgesAdd, PieceInput } from '../../../src/sewing/pieces/piece-input.ts';
import { outlineOf } from '../../../src/sewing/pieces/piece-outline.ts';
import type { Slants } from '../../../src/sewing/pieces/piece-slants.ts';
import { FITTING } from '../../../src/sewing/sources/pieces.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cm = (x: number) => mm(10 * x);

const FINE: PieceInput = {
  given: 'finished',
  width: cm(40),
  length: cm(60),
  fold: false,
  edges: { top: cm(1.5), bottom: cm(4), side: cm(1.5), other: cm(1.5) },
  angle: 90,
  shrinks: { across: 0, along: 0 },
};
const plan = (set: Partial<PieceInput> = {}) => solved(piece({ ...FINE, ...set }));
const edges = (top: Length, bottom: Length, side: Length, other = side) => ({
  edges: { top, bottom, side, other },
});

/** Cut width and length, in inches. */
const cutIn = (set: Partial<PieceInput>) => {
  const { across, along } = plan(set);
  return [toInches(across?.cut ?? ZERO), toInches(along?.cut ?? ZERO)];
};

describe('published', () => {
  test('18.7: a patch pocket takes 1 3/8 at the top, a hem of 1 and 3/8, and 3/8 at every other edge', () => {
    const pocket = {
      width: inches(6),
      length: inches(7),
      ...edges(inches(1.375), inches(0.375), inches(0.375)),
    };
    expect(cutIn(pocket)).toEqual([6.75, 8.75]);
  });

  // The New Dressmaker (1921), page 104 as en.wikisource.org prints it.
  test('18.6: the facing of a slash pocket of 5 in is 6 long: 1/2 in beyond each end', () => {
    const facing = {
      width: inches(3),
      length: inches(5),
      ...edges(inches(0.5), inches(0.5), ZERO),
    };
    expect(cutIn(facing)).toEqual([3, 6]);
  });

  test('3.13: a patch is 1/2 in past the damage on all four sides, 1 in more each way', () => {
    const patch = {
      width: inches(2),
      length: inches(3),
      ...edges(inches(0.5), inches(0.5), inches(0.5)),
    };
    expect(cutIn(patch)).toEqual([3, 4]);
  });

  test('2.3, 2.4: a scarf with narrow hems of 1/4 and 1/4; a skirt with a hem of 2 1/2 and a turn', () => {
    const narrow = inches(0.5);
    expect(
      cutIn({ width: inches(20), length: inches(20), ...edges(narrow, narrow, narrow) }),
    ).toEqual([21, 21]);
    const skirt = { length: inches(26), ...edges(inches(0.5), inches(2.75), inches(1.5)) };
    expect(cutIn({ width: inches(20), ...skirt })).toEqual([23, 29.25]);
  });

  // 18.11: a drafting textbook of the 1920s, search.library.wisc.edu APQNNBQSEU2T5M9B.
  test('18.11: drafted pieces: skirt 1/2 and 1 1/2, bodice 1 and 1, sleeve 1/4, 1/4 and 1 in', () => {
    const { skirt, bodice, sleeve } = FITTING.value;
    const inIn = ({ top, bottom, side }: typeof skirt) =>
      [top, bottom ?? ZERO, side].map((one) => toInches(one));
    expect([skirt, bodice, sleeve].map(inIn)).toEqual([
      [0.5, 0, 1.5],
      [1, 0, 1],
      [0.25, 0.25, 1],
    ]);
  });

  // 21.12: 60 × 40 that loses 3 % and 1 % is cut 61.86 × 40.40 (worked by the rule of 7.16: ÷ (1 − s)).
  test('21.12: what shrinks is cut larger by division, each way by itself', () => {
    const { across, along } = plan({
      width: cm(40),
      length: cm(60),
      ...edges(ZERO, ZERO, ZERO),
      shrinks: { across: 1, along: 3 },
    });
    const found = [along, across].map((way) => (toMm(way?.cut ?? ZERO) / 10).toFixed(2));
    expect(found).toEqual(['61.86', '40.40']);
  });
});

describe('on the fold', () => {
  test('the hand cuts half; the far edge’s allowance is in both halves', () => {
    const { across, along } = plan({ fold: true });
    expect(toMm(across?.cut ?? ZERO)).toBe(215);
    expect(toMm(across?.gives ?? ZERO)).toBe(400);
    expect(toMm(along?.cut ?? ZERO)).toBe(655);
  });

  test('half cut 21 is 39 finished: a slip of 0.5 counts twice', () => {
    const way = sizedAlong({ ...FINE, fold: true }, 'width');
    expect(toMm(solved(way).givenBy(cm(21)))).toBe(390);
  });
});

describe('slanted sides', () => {
  // Side at 60° to the bottom: 1.5 ÷ sin 60° = 1.7321 each; corner (1.5 + 4 × cos 60°) ÷ sin 60°.
  test('the allowance is wider along the bottom, and the raw corner further out', () => {
    const { across, corner } = plan({ angle: 60, length: cm(20) });
    expect(toMm(across?.cut ?? ZERO)).toBeCloseTo(400 + 2 * 17.3205, 3);
    expect(toMm(corner?.alongBottom ?? ZERO)).toBeCloseTo(35 / Math.sin(Math.PI / 3), 6);
    expect(toMm(corner?.alongSide ?? ZERO)).toBeCloseTo(47.5 / Math.sin(Math.PI / 3), 6);
  });

  test('at a right angle the corner is the two allowances, and the piece as wide all along', () => {
    const { corner, widest } = plan();
    expect([corner?.alongBottom, corner?.alongSide]).toEqual([cm(1.5), cm(4)]);
    expect(widest).toBe(cm(43));
  });

  // A second road: the corners of the cut outline, each found where two straight lines cross.
  test('the cut outline lies its allowance outside the finished one, and is as wide as is said', () => {
    const allowance = fc.integer({ min: 0, max: 60 }).map((n) => mm(n));
    fc.assert(
      fc.property(
        fc.record({ top: allowance, bottom: allowance, side: allowance, other: allowance }),
        fc.integer({ min: 75, max: 120 }),
        fc.boolean(),
        (all, angle, fold) => {
          const input: PieceInput = {
            ...FINE,
            edges: fold ? { ...all, other: all.side } : all,
            angle,
            fold,
          };
          const { finished, cut } = outlineOf(input, cm(40), cm(60));
          const [low, right, high, left] = finished.map((from, i) => {
            const to = finished[(i + 1) % 4] ?? from;
            const [x, y] = [to.x - from.x, to.y - from.y];
            const long = Math.hypot(x, y);
            // The distance of each raw corner from this edge's line, outwards.
            return cut.map((p) => (x * (p.y - from.y) - y * (p.x - from.x)) / long);
          });
          const near = (off: readonly number[] | undefined, i: number, j: number, to: Length) => {
            expect(off?.[i]).toBeCloseTo(to, 2);
            expect(off?.[j]).toBeCloseTo(to, 2);
          };
          near(low, 0, 1, input.edges.bottom);
          near(right, 1, 2, input.edges.other);
          near(high, 2, 3, input.edges.top);
          near(left, 3, 0, input.edges.side);
          const xs = cut.map(({ x }) => x);
          const widest = solved(widestOf(input));
          expect(widest).toBeCloseTo(Math.max(...xs) - Math.min(...xs), 2);
        },
      ),
      { seed: 1501, numRuns: 300 },
    );
  });
});

// Design: a slanted edge takes a ÷ cos γ of the other way.
describe('edges that slant by two measures', () => {
  const slant = (by: number, over: number) => ({ by: cm(by), over: cm(over) });

  // By hand: 3 over 4 is a slant of which cos is 4/5: 1.5 takes 1.875; 5 over 12, cos 12/13: 4 takes 4.333.
  test('take a ÷ cos of their slant: top and bottom of the length, sides of the width', () => {
    const slants = {
      top: slant(3, 4),
      bottom: slant(-5, 12),
      side: slant(3, 4),
      other: slant(0, 1),
    };
    const { across, along } = plan({ width: cm(200), length: cm(90), slants });
    expect(toMm(along?.takes ?? ZERO)).toBeCloseTo(18.75 + 43.3333, 3);
    expect(toMm(along?.cut ?? ZERO)).toBeCloseTo(962.0833, 3);
    expect(toMm(across?.cut ?? ZERO)).toBeCloseTo(2000 + 18.75 + 15, 6);
    expect(toMm(plan({ width: cm(200), fold: true, slants }).across?.cut ?? ZERO)).toBeCloseTo(
      1018.75,
      6,
    );
  });

  // By hand: 40 wide, from its middle up 20 × 0.1 each way: one end 2 higher, the other 2 lower than 60.
  test('in the middle a piece is as long as is said; in all it reaches further', () => {
    const slants = { top: slant(1, 10) };
    const { finished } = outlineOf({ ...FINE, slants }, cm(40), cm(60));
    expect(finished.map(({ x, y }) => [toMm(x as Length) + 0, toMm(y as Length) + 0])).toEqual([
      [0, 0],
      [400, 0],
      [400, -580],
      [0, -620],
    ]);
    const folded = outlineOf({ ...FINE, fold: true, slants }, cm(40), cm(60)).finished;
    expect(folded.map(({ y }) => toMm(y as Length) + 0)).toEqual([0, 0, -580, -580]);
    const none = edges(ZERO, ZERO, ZERO);
    expect(toMm(plan({ ...none, slants }).longest ?? ZERO)).toBeCloseTo(620, 6);
    expect(toMm(plan({ ...none, slants, fold: true }).longest ?? ZERO)).toBeCloseTo(600, 6);
    expect(plan().longest).toBe(plan().along?.cut);
  });

  // A second road: each raw corner's distance from the finished edges it lies between, by their own lines.
  test('each raw edge of the outline lies its allowance beyond the finished one, all along', () => {
    const allowance = fc.integer({ min: 0, max: 40 }).map((n) => mm(n));
    const some = fc
      .tuple(fc.integer({ min: -60, max: 60 }), fc.integer({ min: 300, max: 900 }))
      .map(([by, over]) => ({ by: mm(by), over: mm(over) }));
    fc.assert(
      fc.property(
        fc.record({ top: allowance, bottom: allowance, side: allowance, other: allowance }),
        fc.record({ top: some, bottom: some, side: some, other: some }),
        fc.boolean(),
        (all, own, fold) => {
          const slants: Slants = fold ? { ...own, other: own.side } : own;
          const input: PieceInput = {
            ...{ ...FINE, fold, slants },
            edges: fold ? { ...all, other: all.side } : all,
          };
          const { finished, cut } = outlineOf(input, cm(40), cm(60));
          const half = cm(20);
          const inner = (y: number) => ({ x: half as number, y });
          const across = fold
            ? { low: inner(0), high: inner(-cm(60)) }
            : { low: finished[1], high: finished[2] };
          const off = (
            from: { x: number; y: number },
            to: { x: number; y: number },
            at: number,
          ) => {
            const [x, y, p] = [to.x - from.x, to.y - from.y, cut[at]];
            if (!p) return Number.NaN;
            return (x * (p.y - from.y) - y * (p.x - from.x)) / Math.hypot(x, y);
          };
          expect(off(finished[0], across.low, 0)).toBeCloseTo(input.edges.bottom, 2);
          expect(off(across.high, finished[3], 3)).toBeCloseTo(input.edges.top, 2);
          for (const at of [0, 3]) {
            expect(off(finished[3], finished[0], at)).toBeCloseTo(input.edges.side, 2);
          }
          for (const at of [1, 2]) {
            expect(off(finished[1], finished[2], at)).toBeCloseTo(input.edges.other, 2);
          }
          // Level with the bottom's middle, and along the middle, it is as wide and long as is said.
          const [a, d] = [finished[0], finished[3]];
          expect(a.x - (a.y * (d.x - a.x)) / (d.y - a.y)).toBeCloseTo(0, 2);
          const { across: wide, along } = solved(piece(input));
          const b = { ...cut[0] };
          const level = b.x - (b.y * (cut[3].x - b.x)) / (cut[3].y - b.y);
          const far = cut[1].x - (cut[1].y * (cut[2].x - cut[1].x)) / (cut[2].y - cut[1].y);
          expect((far - level) / (fold ? 2 : 1)).toBeCloseTo(wide?.cut ?? 0, 2);
          const ys = cut.map(({ y }) => y);
          const tall = solved(longestOf(input));
          expect(tall).toBeGreaterThanOrEqual(Math.max(...ys) - Math.min(...ys) - 1);
          expect(tall).toBeGreaterThanOrEqual((along?.cut ?? 0) - 1);
        },
      ),
      { seed: 1530, numRuns: 300 },
    );
  });

  test.each<[string, Partial<PieceInput>, string[]]>([
    ['a top at half a right angle', { slants: { top: slant(10, 10) } }, ['topFalls']],
    ['a side that leans out as much', { slants: { side: slant(-10, 10) } }, ['sideLeans']],
    ['a slant over nothing', { slants: { bottom: slant(1, 0) } }, ['bottomOver']],
    [
      'a top that falls past the bottom',
      { length: cm(10), slants: { top: slant(6, 10) } },
      ['topFalls'],
    ],
    ['sides that meet', { slants: { side: slant(4, 10), other: slant(4, 10) } }, ['sideLeans']],
  ])('%s is refused', (_, set, fields) => {
    expect(fieldsOf(piece({ ...FINE, ...set }))).toEqual(fields);
  });
});

// By hand: 40 + 2 × 1.5 is 43, a fifth of it lost: 53.75; slanted 53.75 is what a square piece is widest, too.
test('its widest place is that of the cloth before it shrinks, square or nearly', () => {
  const shrinks = { across: 20, along: 0 };
  expect(toMm(plan({ shrinks }).widest ?? ZERO)).toBe(537.5);
  const nearly = plan({ shrinks, angle: 89.9999, ...edges(cm(1.5), ZERO, cm(1.5)) });
  expect(toMm(nearly.widest ?? ZERO)).toBeCloseTo(537.5, 2);
});

// By hand: sides at 60° meet at 20 × tan 60° = 34.641 above the bottom; as cut, with 1.5 and 4 more.
test('sides that meet say how long a piece can be, finished or as cut', () => {
  const most = (set: Partial<PieceInput>) => {
    const found = piece({ ...FINE, angle: 60, ...set });
    return found.ok
      ? undefined
      : found.problems.map((one) => 'most' in one && toMm(one.most as Length));
  };
  expect(most({})?.[0]).toBeCloseTo(346.41, 2);
  const wide = 40 + 3 / Math.sin(Math.PI / 3);
  const cut = { given: 'cut', width: cm(wide), length: cm(60) } as const;
  expect(most(cut)?.[0]).toBeCloseTo(346.41 + 55, 2);
});

const some = fc.record({
  width: fc.integer({ min: 800_000, max: 8_000_000 }).map(length),
  fold: fc.boolean(),
  side: fc.integer({ min: 0, max: 300_000 }).map(length),
  other: fc.integer({ min: 0, max: 300_000 }).map(length),
  angle: fc.integer({ min: 60, max: 120 }),
  shrinks: fc.integer({ min: 0, max: 20 }),
});

test('cut and turned round, a piece gives what was wanted; what is cut more, it gives more', () => {
  fc.assert(
    fc.property(some, fc.integer({ min: -99_999, max: 99_999 }), (set, off) => {
      const { width, fold, side, other, angle } = set;
      const input: PieceInput = {
        ...FINE,
        ...{ width, fold, angle },
        edges: { ...FINE.edges, side, other: fold ? side : other },
        shrinks: { across: set.shrinks, along: 0 },
      };
      const way = solved(sizedAlong(input, 'width'));
      expect(way.givenBy(way.cut)).toBeCloseTo(width, 3);
      const more = (fold ? 2 : 1) * off * (1 - set.shrinks / 100);
      expect(way.givenBy(exactLength(way.cut + off)) - width).toBeCloseTo(more, 3);
      // The same size, given as what was cut, gives the same piece.
      const cut = length(Math.round(way.cut));
      const back = solved(sizedAlong({ ...input, given: 'cut', width: cut }, 'width'));
      expect(back.cut).toBe(cut);
      expect(Math.abs(back.gives - width)).toBeLessThan(2);
    }),
    { seed: 1502 },
  );
});

describe('refused', () => {
  test.each<[string, Partial<PieceInput>, string[]]>([
    ['no size at all', { width: undefined, length: undefined }, ['width']],
    ['a width of nothing', { width: ZERO }, ['width']],
    ['an allowance of less than nothing', edges(mm(-1), ZERO, ZERO), ['top']],
    ['a side hardly off the bottom', { angle: 5 }, ['angle']],
    ['a side bent back past it', { angle: 175 }, ['angle']],
    ['sides that meet below the top', { angle: 60 }, ['length']],
    ['cloth that shrinks to nothing', { shrinks: { across: 100, along: 0 } }, ['shrinksAcross']],
    ['cut no wider than its seams', { given: 'cut', width: cm(3) }, ['width']],
    ['cut shorter than hem and seam', { given: 'cut', length: cm(5) }, ['length']],
  ])('%s', (_, set, fields) => {
    expect(fieldsOf(piece({ ...FINE, ...set }))).toEqual(fields);
  });

  test('what was cut just wide enough for its seams says what they take', () => {
    const found = piece({ ...FINE, given: 'cut', width: cm(3) });
    expect(found).toMatchObject({
      problems: [{ kind: 'does-not-fit', needed: cm(3), room: cm(3) }],
    });
  });
});

describe('what each edge adds to', () => {
  const adds = (set: Partial<EdgesAdd>): Pick<PieceInput, 'adds'> => ({
    adds: { top: 'length', bottom: 'length', side: 'width', other: 'width', ...set },
  });
  const cut = (set: Partial<PieceInput>) => {
    const { across, along } = plan(set);
    return [toMm(across?.cut ?? ZERO), toMm(along?.cut ?? ZERO)];
  };

  // By hand: 40 + 2 × 1.5 and 60 + 1.5 + 4, each allowance taken away or to the other way.
  test('by itself as usual, to the other way, or to nothing, as a bound edge does', () => {
    expect(cut(adds({}))).toEqual(cut({}));
    expect(cut(adds({ top: 'none' }))).toEqual([430, 640]);
    expect(cut(adds({ side: 'none', other: 'none' }))).toEqual([400, 655]);
    expect(cut(adds({ bottom: 'width' }))).toEqual([470, 615]);
    expect(cut(adds({ side: 'length' }))).toEqual([415, 670]);
  });

  test('on the fold the far side is the only one, and what adds to the width is in both halves', () => {
    expect(cut({ fold: true, ...adds({ side: 'none', other: 'none' }) })).toEqual([200, 655]);
    expect(cut({ fold: true, ...adds({ top: 'width' }) })).toEqual([230, 640]);
    expect(toMm(plan({ fold: true, ...adds({ top: 'width' }) }).widest ?? ZERO)).toBe(460);
  });

  // A second road: what each way takes is the sum over all edges, however they are shared out.
  test('nothing is lost or taken twice; turned round it gives what was wanted', () => {
    const way = fc.constantFrom('width' as const, 'length' as const, 'none' as const);
    const all = fc.record({ top: way, bottom: way, side: way, other: way });
    const sizes = fc.tuple(...[0, 1, 2, 3].map(() => fc.integer({ min: 0, max: 40 })));
    fc.assert(
      fc.property(
        all,
        sizes,
        fc.boolean(),
        (to, [top = 0, bottom = 0, side = 0, other = 0], fold) => {
          const own = { top: mm(top), bottom: mm(bottom), side: mm(side), other: mm(other) };
          const input: PieceInput = { ...FINE, fold, edges: own, adds: to };
          for (const one of ['width', 'length'] as const) {
            const sum = EDGES.filter((edge) => to[edge] === one && !(fold && edge === 'other'))
              .map((edge) => toMm(own[edge]))
              .reduce((so, more) => so + more, 0);
            const found = solved(sizedAlong(input, one));
            expect(toMm(found.takes)).toBeCloseTo(sum, 6);
            expect(found.givenBy(found.cut)).toBe(input[one]);
          }
          const { across, along } = solved(piece(input));
          const { cut: outline } = outlineOf(input, cm(40), cm(60));
          const [xs, ys] = [outline.map(({ x }) => x), outline.map(({ y }) => y)];
          const span = (of: number[]) => Math.max(...of) - Math.min(...of);
          expect(span(xs)).toBeCloseTo((fold ? 2 : 1) * (across?.cut ?? 0), 3);
          expect(span(ys)).toBeCloseTo(along?.cut ?? 0, 3);
        },
      ),
      { seed: 1502, numRuns: 300 },
    );
  });
});
