/** What a piece is with one way only, what its refusals tell, and pieces on the edge of what is one. By hand. */
import { describe, expect, test } from 'vitest';
import { type ExactLength, type Length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import {
  longestOf,
  piece,
  rawCorner,
  sizedAlong,
  widestOf,
} from '../../../src/sewing/pieces/piece.ts';
import type { PieceInput } from '../../../src/sewing/pieces/piece-input.ts';
import { outlineOf } from '../../../src/sewing/pieces/piece-outline.ts';
import { boundTold } from '../as-told.ts';
import { fieldsOf, solved } from '../outcomes.ts';

const cm = (x: number) => mm(10 * x);
const slant = (by: number, over: number) => ({ by: cm(by), over: cm(over) });

const NONE = { top: ZERO, bottom: ZERO, side: ZERO, other: ZERO };
const SEWN = { top: cm(1.5), bottom: cm(4), side: cm(1.5), other: cm(1.5) };
/** 40 wide and 60 long, without any allowance. */
const BARE: PieceInput = {
  given: 'finished',
  width: cm(40),
  length: cm(60),
  fold: false,
  edges: NONE,
  angle: 90,
  shrinks: { across: 0, along: 0 },
};

/** Cut across and along, widest and longest, in mm. */
function sizesOf(set: Partial<PieceInput>): (number | undefined)[] {
  const { across, along, widest, longest } = solved(piece({ ...BARE, ...set }));
  return [across?.cut, along?.cut, widest, longest].map((one) => one && inMm(one));
}

const inMm = (one: ExactLength) => Math.round(toMm(one) * 1e6) / 1e6;

describe('one way only', () => {
  test('a width alone, or a length alone, is worked out by itself', () => {
    expect(sizesOf({ edges: SEWN, length: undefined })).toEqual([430, undefined, 430, undefined]);
    expect(sizesOf({ edges: SEWN, width: undefined })).toEqual([undefined, 655, undefined, 655]);
  });

  test('how wide a slanted piece is in all needs its length, how long one with a slanted top its width', () => {
    expect(sizesOf({ angle: 80, length: undefined })).toEqual([
      400,
      undefined,
      undefined,
      undefined,
    ]);
    const slants = { top: slant(1, 10) };
    expect(sizesOf({ slants, width: undefined })).toEqual([undefined, 600, undefined, undefined]);
    // A slant of nothing, or one that isn't given, is none.
    for (const top of [slant(0, 10), undefined]) {
      const level = { slants: { top }, edges: SEWN };
      expect(sizesOf({ ...level, length: undefined })).toEqual([430, undefined, 430, undefined]);
      expect(sizesOf({ ...level, width: undefined })).toEqual([undefined, 655, undefined, 655]);
    }
  });

  test.each(['width', 'length'] as const)('a %s that isn’t there is not asked for', (way) => {
    expect(() => sizedAlong({ ...BARE, [way]: undefined }, way)).toThrow(way);
  });

  test('each way asks for what it needs itself, and for nothing of the other', () => {
    const refusals: [Partial<PieceInput>, across: string[], along: string[]][] = [
      [{ angle: 5 }, ['angle'], []],
      [{ slants: { side: slant(10, 10) } }, ['sideLeans'], []],
      [{ slants: { top: slant(10, 10) } }, [], ['topFalls']],
      [{ shrinks: { across: 60, along: 0 } }, ['shrinksAcross'], []],
      [{ shrinks: { across: 0, along: -1 } }, [], ['shrinksAlong']],
    ];
    for (const [set, across, along] of refusals) {
      const input = { ...BARE, ...set };
      expect(fieldsOf(sizedAlong(input, 'width'))).toEqual(across);
      expect(fieldsOf(sizedAlong(input, 'length'))).toEqual(along);
    }
  });

  test('in all it is refused for the way that is wrong', () => {
    const slants = { top: slant(1, 10) };
    expect(fieldsOf(longestOf({ ...BARE, slants, width: ZERO }))).toEqual(['width']);
    expect(fieldsOf(widestOf({ ...BARE, angle: 80, length: ZERO }))).toEqual(['length']);
  });
});

// A fifth lost across and a tenth along; the top falls 2 below and above its middle, 64 in all less 2.
test('in all it is as wide and as long as the cloth was before it shrank', () => {
  const shrinks = { across: 20, along: 10 };
  const [, , widest, longest] = sizesOf({ shrinks, slants: { top: slant(1, 10) } });
  expect([widest, longest?.toFixed(3)]).toEqual([500, (620 / 0.9).toFixed(3)]);
  const [, , , rising] = sizesOf({ shrinks, slants: { bottom: slant(1, 10) } });
  expect(rising?.toFixed(3)).toBe((620 / 0.9).toFixed(3));
});

// Sides that lean in 1 over 10: 4 below the finished bottom the piece is 0.4 wider at each.
test('sides that lean in are furthest apart at the raw bottom', () => {
  const edges = { ...NONE, bottom: cm(4) };
  const both = { side: slant(1, 10), other: slant(1, 10) };
  expect(sizesOf({ edges, slants: both })).toEqual([400, 640, 408, 640]);
  expect(sizesOf({ edges, slants: { side: slant(1, 10), other: slant(0, 10) } })[2]).toBe(404);
  expect(sizesOf({ edges, slants: { side: slant(1, 10) } })[2]).toBe(404);
});

test('square corners are square to the last place', () => {
  const { finished } = outlineOf(BARE, cm(40), cm(60));
  expect(finished.map(({ x, y }) => [x + 0, y + 0])).toEqual([
    [0, 0],
    [cm(40), 0],
    [cm(40), -cm(60)],
    [0, -cm(60)],
  ]);
});

describe('a raw corner by itself', () => {
  // Design: (1.5 + 4 × cos 60°) ÷ sin 60° along the bottom, (4 + 1.5 × cos 60°) ÷ sin 60° along the side.
  test('lies as far beyond the finished one as in a piece', () => {
    const { alongBottom, alongSide } = solved(rawCorner({ edges: SEWN, angle: 60, fold: false }));
    expect(toMm(alongBottom)).toBeCloseTo(35 / Math.sin(Math.PI / 3), 6);
    expect(toMm(alongSide)).toBeCloseTo(47.5 / Math.sin(Math.PI / 3), 6);
  });

  test('is refused for allowances of less than nothing, and a side hardly off the bottom', () => {
    const wrong = { ...SEWN, side: mm(-1), bottom: mm(-1) };
    const found = rawCorner({ edges: wrong, angle: 5, fold: false });
    expect(fieldsOf(found)).toEqual(['side', 'bottom', 'angle']);
  });
});

describe('what a refusal says would do, does', () => {
  const degrees = (angle: number) => piece({ ...BARE, length: undefined, angle });
  const loss = (across: number) => piece({ ...BARE, shrinks: { across, along: 0 } });
  const lean = (by: number) =>
    piece({ ...BARE, slants: { side: { by: by as Length, over: cm(10) } } });

  test('of an angle, a loss and a slant', () => {
    expect(boundTold(degrees, 5, 'angle', 'least')).toBe(10);
    expect(boundTold(degrees, 175, 'angle', 'most')).toBe(170);
    expect(boundTold(loss, -3, 'shrinksAcross', 'least')).toBe(0);
    expect(boundTold(loss, 60, 'shrinksAcross', 'most')).toBe(50);
    expect(boundTold(lean, cm(-11), 'sideLeans', 'over')).toBe(cm(-10));
  });

  // Sides at 60° meet 20 × tan 60° above the bottom; along the grain the cloth loses a fifth.
  test.each<[PieceInput['given'], number]>([
    ['finished', 346.41],
    ['cut', 346.41 / 0.8],
  ])('of a length whose sides would meet, %s', (given, most) => {
    const shrinks = { across: 0, along: 20 };
    const at = (long: number) =>
      piece({ ...BARE, given, shrinks, angle: 60, length: long as Length });
    expect(boundTold(at, cm(60), 'length', 'most') / 8000).toBeCloseTo(most, 1);
  });

  // 20 cut of cloth that loses a fifth is 16, and its seams take 20.
  test('of what was cut too small: what is left of it, and what its seams take', () => {
    const edges = { ...NONE, side: cm(10), other: cm(10) };
    const shrinks = { across: 20, along: 0 };
    const found = piece({ ...BARE, given: 'cut', width: cm(20), edges, shrinks });
    expect(found).toMatchObject({ problems: [{ room: cm(16), needed: cm(20) }] });
  });
});

describe('edges that cross say what there is and what they need', () => {
  test.each<[string, Partial<PieceInput>, object]>([
    // Each side leans in 24 over 60, of 40 in all; over 50 just 20, so that they meet in a point.
    [
      'sides above the top',
      { slants: { side: slant(4, 10), other: slant(4, 10) } },
      { field: 'sideLeans', room: cm(40), needed: cm(48) },
    ],
    [
      'sides in its top',
      { length: cm(50), slants: { side: slant(4, 10), other: slant(4, 10) } },
      { field: 'sideLeans', room: cm(40), needed: cm(40) },
    ],
    // A hem of 30 below a piece whose sides lean out takes 27 at each.
    [
      'sides below the bottom',
      {
        edges: { ...NONE, bottom: cm(30) },
        slants: { side: slant(-9, 10), other: slant(-9, 10) },
      },
      { field: 'sideLeans', room: cm(40), needed: cm(54) },
    ],
    // From its middle the top falls 10 to the one side: just to the bottom of a piece of 10.
    [
      'a top that ends in the bottom',
      { length: cm(10), slants: { top: slant(5, 10) } },
      { field: 'topFalls', room: cm(10), needed: cm(10) },
    ],
    [
      'a bottom that ends above the top',
      { length: cm(8), slants: { bottom: slant(5, 10) } },
      { field: 'bottomRises', room: cm(8), needed: cm(10) },
    ],
    [
      'the far side alone',
      { width: cm(20), slants: { other: slant(4, 10) } },
      { field: 'otherLeans', room: cm(20), needed: cm(24) },
    ],
  ])('%s', (_, set, told) => {
    const found = piece({ ...BARE, ...set });
    expect(found).toMatchObject({ problems: [{ kind: 'does-not-fit', ...told }] });
  });
});
