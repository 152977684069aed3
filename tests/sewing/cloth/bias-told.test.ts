import { describe, expect, test } from 'vitest';
import { exactLength, type Length, length, mm, toMm, ZERO } from '../../../src/lengths/length.ts';
import { type BiasInput, biasFor, biasFrom } from '../../../src/sewing/cloth/bias.ts';
import {
  roundFrom,
  singleFor,
  singleFrom,
  squareFor,
} from '../../../src/sewing/cloth/bias-round.ts';
import { boundTold } from '../as-told.ts';
import { fieldsOf, solved } from '../outcomes.ts';

// Geometry at 45° worked out here, no source.

const STRIPS: BiasInput = { width: mm(25), cloth: mm(860), shortest: mm(100), seam: ZERO };
const from = (set: Partial<BiasInput>, piece = 200) => biasFrom({ ...STRIPS, ...set }, mm(piece));
const about = (units: number, mms: number) => expect(units / mm(1)).toBeCloseTo(mms, 3);

describe('strips from a piece: what a refusal says will do does', () => {
  test('a piece as long as the shortest strip across the corner', () => {
    const at = (piece: number) => biasFrom(STRIPS, piece as Length);
    const refused = at(mm(50));
    expect(refused).toMatchObject({ problems: [{ kind: 'too-short', field: 'long' }] });
    // 100 ÷ √2; a unit is let go, as nothing is whole with √2.
    const least = 100 / Math.SQRT2;
    expect([at(mm(70.71)).ok, at(Math.ceil(least * mm(1)) - 2).ok]).toEqual([false, false]);
    const [told] = refused.ok ? [] : refused.problems;
    about(told && 'least' in told ? Number(told.least) : 0, least);
    expect(at(Math.ceil(least * mm(1))).ok).toBe(true);
  });

  test('on narrow cloth a piece that goes on past both corners', () => {
    // Lines from 100 ÷ √2 to 25 √2 on, and the last as far from the other corner: 141.4 + 35.4 − 80.
    const at = (piece: number) => biasFrom({ ...STRIPS, cloth: mm(80) }, piece as Length);
    const [told] = ((outcome) => (outcome.ok ? [] : outcome.problems))(at(mm(60)));
    about(told && 'least' in told ? Number(told.least) : 0, 125 * Math.SQRT2 - 80);
  });

  test('a piece that is just let go as the shortest gives its one strip', () => {
    for (const cloth of [mm(80), mm(860)]) {
      const at = (piece: number) => biasFrom({ ...STRIPS, cloth }, piece as Length);
      const told = at(mm(60));
      const [problem] = told.ok ? [] : told.problems;
      const least = problem && 'least' in problem ? Number(problem.least) : 0;
      expect(solved(at(Math.ceil(least - 1))).strips).toBeGreaterThanOrEqual(1);
    }
  });

  test('without a seam a strip may begin at nothing', () => {
    expect(from({ shortest: ZERO }).ok).toBe(true);
  });

  test('cloth as wide as the shortest strip, which is longer than its joins take', () => {
    const cloth = (of: number) => from({ cloth: of as Length });
    about(boundTold(cloth, mm(50), 'cloth', 'least'), 100 / Math.SQRT2);
    const shortest = (of: number) => from({ shortest: of as Length, seam: mm(10) });
    about(boundTold(shortest, mm(5), 'shortest', 'least'), 20 * Math.SQRT2);
  });

  test('a strip narrower than the cloth', () => {
    const width = (of: number) => biasFor({ ...STRIPS, width: of as Length }, mm(5000));
    about(boundTold(width, mm(900), 'width', 'under'), 860);
    expect(fieldsOf(from({ width: mm(860) }, 2000))).toEqual(['width']);
    expect(fieldsOf(biasFor({ ...STRIPS, width: mm(1300) }, mm(150)))).toEqual(['width']);
  });

  test('no more than 500 strips: of 860 and 200 none under 1060 ÷ 500√2', () => {
    const width = (of: number) => from({ width: of as Length });
    about(boundTold(width, mm(1), 'width', 'least'), 1060 / (500 * Math.SQRT2));
  });
});

describe('the piece for a strip', () => {
  test('as the piece that is found gives it, and one unit shorter does not', () => {
    for (const need of [1, 150, 980, 5000]) {
      const piece = solved(biasFor(STRIPS, mm(need)));
      expect(solved(biasFrom(STRIPS, piece)).long).toBeGreaterThanOrEqual(mm(need) - 1);
      const less = biasFrom(STRIPS, length(piece - 1));
      if (less.ok) expect(less.value.long).toBeLessThan(mm(need));
    }
  });

  test('no more than 500 strips of it either', () => {
    const wide = (need: number) => (of: number) =>
      biasFor({ ...STRIPS, width: of as Length }, mm(need));
    // 1 m on 860: less than two strips’ worth of the 707 widths there are along the cloth.
    about(boundTold(wide(1000), 1, 'width', 'least'), 860 / (500 * Math.SQRT2 - 1000 / 860));
    const need = (of: number) => biasFor({ ...STRIPS, cloth: mm(100) }, of as Length);
    const told = need(mm(80_000));
    expect(told).toMatchObject({ problems: [{ kind: 'too-long', field: 'need' }] });
    const [problem] = told.ok ? [] : told.problems;
    about(problem && 'most' in problem ? Number(problem.most) : 0, 50_000 * Math.SQRT2);
  });
});

describe('round and round', () => {
  const ROUND = { width: mm(25), seam: mm(10) };

  test('a side as long as one round takes and its seam, the other more than its seam', () => {
    const long = (of: number) => roundFrom(ROUND, of as Length, mm(40));
    const refused = long(mm(50));
    expect(refused).toMatchObject({ problems: [{ kind: 'too-short', field: 'long' }] });
    const least = 25 * Math.SQRT2 + 20;
    const [told] = refused.ok ? [] : refused.problems;
    about(told && 'least' in told ? Number(told.least) : 0, least);
    expect([long(Math.ceil(least * mm(1))).ok, long(mm(55.35)).ok]).toEqual([true, false]);
    const short = (of: number) => roundFrom(ROUND, mm(600), of as Length);
    expect(boundTold(short, mm(5), 'sideShort', 'over')).toBe(mm(20));
  });

  test('seams that cross it: one fewer than rounds, and those the slant runs over', () => {
    // 10 rounds of 35.36 in 373.6; 160 of the other side are 4.5 widths of it: 5 and one more.
    const found = solved(roundFrom(ROUND, mm(373.6), mm(160)));
    expect([found.rounds, found.joins]).toEqual([10, 9 + 6]);
    about(found.long, 10 * Math.SQRT2 * 140);
  });

  test('500 rounds and no more', () => {
    // Of 1 m less 20 in all 500 widths of √2.
    const wide = (of: number) => roundFrom({ ...ROUND, width: of as Length }, mm(1000), mm(900));
    const refused = wide(mm(1));
    const [told] = refused.ok ? [] : refused.problems;
    expect(told).toMatchObject({ kind: 'too-close', field: 'width', most: 500 });
    const least = 980 / (500 * Math.SQRT2);
    about(told && 'least' in told ? Number(told.least) : 0, least);
    expect([wide(mm(1.37)).ok, wide(mm(1.39)).ok]).toEqual([false, true]);
    // Of 2 mm, 500 × 2√2 and the seams.
    const long = (rounds: number) =>
      roundFrom(
        { ...ROUND, width: mm(2) },
        length(Math.ceil(rounds * mm(2) * Math.SQRT2) + mm(20)),
        mm(900),
      );
    expect([solved(long(500)).rounds, long(501).ok]).toEqual([500, false]);
    const square = (of: number) => squareFor({ ...ROUND, width: of as Length }, mm(20_000));
    const [many] = ((outcome) => (outcome.ok ? [] : outcome.problems))(square(80));
    expect(many).toMatchObject({ kind: 'too-close', field: 'width', most: 500 });
    about(many && 'least' in many ? Number(many.least) : 0, 20_000 / (2 * 500 ** 2));
    about(boundTold(square, 80, 'width', 'least'), 20_000 / (2 * 500 ** 2));
  });

  test('nothing of what is needed is nothing', () => {
    const none = { width: ZERO, seam: length(-1) };
    expect(fieldsOf(roundFrom(none, ZERO, ZERO))).toEqual(['width', 'seam', 'long', 'sideShort']);
    expect(fieldsOf(squareFor(none, ZERO))).toEqual(['width', 'seam', 'need']);
    expect(fieldsOf(singleFrom(ZERO, ZERO))).toEqual(['width', 'long']);
    expect(fieldsOf(singleFor(ZERO, ZERO))).toEqual(['width', 'need']);
  });

  test('one strip from corner to corner, and back', () => {
    const side = (of: number) => singleFrom(mm(25), of as Length);
    about(boundTold(side, mm(10), 'long', 'over'), 25 / Math.SQRT2);
    expect(toMm(exactLength(solved(side(mm(100)))))).toBeCloseTo(100 * Math.SQRT2 - 25, 6);
  });
});
