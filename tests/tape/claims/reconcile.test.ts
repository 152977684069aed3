import { describe, expect, test } from 'vitest';
import { reconcileClaims } from '../../../src/tape/claims/reconcile.ts';
import { alongRow, placeIn } from '../../../src/tape/picture/space.ts';
import { alongAt } from '../../../src/tape/pitch/along.ts';
import { distanceAt } from '../../../src/tape/pitch/position.ts';
import { claimOn, madeRow, placed } from '../made/made-rows.ts';

const MM_PX = 10;
const SIXTEENTH_PX = (25.4 / 16) * MM_PX;
const unitDoubt = new Set(['unit'] as const);
const lineDoubt = new Set(['line'] as const);

/** Centimetres in millimetres along the upper edge, from 20 cm at x = 100. */
const upper = { y: 200, pitchPx: MM_PX };
/** Inches in sixteenths along the lower edge, 14 mm below. */
const lower = { y: 340, pitchPx: SIXTEENTH_PX, count: 63 };
const centimetres = { first: 20, numbers: 6 };
const inches = { unit: 'inch' as const, ticksPerNumber: 16, numbers: 4, across: -5 };

/** The doubts of each claim, in the order given. */
function doubtsIn(...rows: Parameters<typeof reconcileClaims>[0][number][]) {
  const weighed = reconcileClaims(rows);
  return rows.map(({ row }) => {
    const found = weighed.find((one) => one.row === row);
    return found && [...found.doubts].sort();
  });
}

describe('two edges of one tape', () => {
  test('the 25.4 between them settles what each counts', () => {
    const cm = claimOn(upper, { ...centimetres, doubts: unitDoubt });
    const inch = claimOn(lower, { ...inches, first: 17 });
    expect(doubtsIn(cm, inch)).toEqual([[], []]);
    expect(doubtsIn(cm)).toEqual([['unit']]);
    // At a steep slant the nearer edge is larger.
    const nearer = claimOn({ ...lower, pitchPx: 1.08 * SIXTEENTH_PX }, { ...inches, first: 17 });
    expect(doubtsIn(cm, nearer)).toEqual([[], []]);
  });

  test('so many numbers past two feet, on lines longer than tenths have, are centimetres', () => {
    const far = { ...centimetres, first: 24, doubts: unitDoubt };
    const { row, claim } = claimOn(upper, far);
    const longer = { ...claim, pattern: { ...claim.pattern, zoneFrom: -0.8, zoneTo: 0.8 } };
    expect(doubtsIn({ row, claim: longer })).toEqual([[]]);
    expect(doubtsIn({ row, claim: { ...longer, agreeing: claim.agreeing.slice(0, 4) } })).toEqual([
      ['unit'],
    ]);
  });

  test('half millimetres along the one settle the tens along the other, whichever way they run', () => {
    const tens = { unit: 'mm' as const, first: 200, numbers: 5, step: 10, doubts: unitDoubt };
    const rule = claimOn(upper, tens);
    const halves = claimOn(
      { y: 340, pitchPx: MM_PX / 2, count: 100 },
      {
        unit: 'mm',
        first: 700,
        numbers: 4,
        step: 10,
        ticksPerNumber: 20,
        across: -5,
        direction: -1,
      },
    );
    expect(doubtsIn(rule, halves)).toEqual([[], []]);
    expect(doubtsIn(rule)).toEqual([['unit']]);
    const stake = claimOn({ y: 340, pitchPx: MM_PX }, { ...tens, first: 700, across: -5 });
    expect(doubtsIn(rule, stake)[0]).toContain('unit');
  });

  test('sure centimetres along the one settle tens along the other, doubted ones don’t', () => {
    const tens = { unit: 'mm' as const, first: 700, numbers: 5, step: 10, across: -5 };
    const rule = claimOn({ y: 340, pitchPx: MM_PX }, { ...tens, doubts: unitDoubt });
    const sure = claimOn(upper, centimetres);
    expect(doubtsIn(sure, rule)).toEqual([[], []]);
    // The edges of a wide rule run together at a slant; another tape that lies across tells nothing.
    const turned = (angle: number) =>
      claimOn({ y: 340, pitchPx: MM_PX, angle }, { ...tens, doubts: unitDoubt });
    expect(doubtsIn(sure, turned(0.12))[1]).toEqual([]);
    expect(doubtsIn(sure, turned(0.2))[1]).toEqual(['unit']);
    const doubted = claimOn(upper, { ...centimetres, doubts: unitDoubt });
    expect(doubtsIn(doubted, rule)).toEqual([['unit'], ['unit']]);
    const stake = claimOn(
      { y: 340, pitchPx: 10 * MM_PX, count: 60 },
      { ...tens, doubts: unitDoubt },
    );
    expect(doubtsIn(sure, stake)[1]).toContain('unit');
  });

  test('tenths of an inch beside millimetres, both taken for centimetres, are told apart', () => {
    const cm = claimOn(upper, { ...centimetres, doubts: unitDoubt });
    const taken = { first: 8, numbers: 4, across: -5, doubts: unitDoubt };
    const tenths = claimOn({ y: 340, pitchPx: 25.4, count: 40 }, taken);
    const [first, second] = reconcileClaims([cm, tenths]);
    expect(first!.claim).toMatchObject({ unit: 'cm', mmPerTick: 1 });
    expect(second!.claim).toMatchObject({ unit: 'inch', mmPerTick: 2.54 });
    expect([first!.doubts.has('unit'), second!.doubts.has('unit')]).toEqual([false, false]);
  });

  test('tenths and halves of an inch, both taken for centimetres, settle nothing', () => {
    const tenths = claimOn(
      { y: 200, pitchPx: 25.4, count: 40 },
      { first: 3, numbers: 4, doubts: unitDoubt },
    );
    const halves = claimOn(
      { y: 500, pitchPx: 127, count: 8 },
      { first: 3, numbers: 4, ticksPerNumber: 2, across: -1.2, doubts: unitDoubt },
    );
    expect(doubtsIn(tenths, halves)).toEqual([['unit'], ['unit']]);
  });

  test('sizes that differ from 25.4 raise a doubt about the unit', () => {
    const cm = claimOn(upper, centimetres);
    // Tenths of an inch taken for millimetres: a "millimetre" here is 2.54 times as long.
    const tenths = claimOn({ ...lower, pitchPx: 25.4, count: 40 }, { ...centimetres, numbers: 4 });
    expect(doubtsIn(cm, tenths)).toEqual([['unit'], ['unit']]);
  });

  test('inches below twelve may count from any foot, unless the tape begins there', () => {
    const foot = claimOn(lower, { ...inches, first: 5 });
    expect(doubtsIn(foot)).toEqual([['line']]);
    const { row, claim } = claimOn(lower, { ...inches, first: 1 });
    const pitch = {
      ...row.pitch,
      from: alongRow<'measuring'>(-2000),
      to: alongRow<'measuring'>(2000),
    };
    expect(doubtsIn({ row: { ...row, pitch, range: [-16, 60] }, claim })).toEqual([[]]);
    expect(doubtsIn({ row: { ...row, pitch, range: [-22, 60] }, claim })).toEqual([['line']]);
    // Lines seen one by one tell the beginning better than how far they were followed.
    const seen = (from: number) => ({
      ...row,
      pitch,
      range: [-22, 60] as const,
      lines: [from, 60] as const,
    });
    expect(doubtsIn({ row: seen(-16), claim })).toEqual([[]]);
    expect(doubtsIn({ row: seen(-18), claim })).toEqual([['line']]);
    // Begun where the picture begins: there may be feet outside it.
    const zero = row.pitch.centre + distanceAt(row.pitch.model, -16);
    const cut = {
      ...row.pitch,
      from: alongRow<'measuring'>(zero - 10),
      to: alongRow<'measuring'>(2000),
    };
    expect(doubtsIn({ row: { ...row, pitch: cut, range: [-16, 60] }, claim })).toEqual([['line']]);
    expect(doubtsIn(claimOn(lower, { ...inches, first: 10 }))).toEqual([[]]);
  });

  test('one zero settles which line is which, for three numbers that say so alone', () => {
    const cm = claimOn(upper, { ...centimetres, first: 25.4, doubts: lineDoubt });
    const inch = claimOn(lower, { ...inches, first: 10, doubts: lineDoubt });
    expect(doubtsIn(cm, inch)).toEqual([[], []]);
    expect(doubtsIn(cm)).toEqual([['line']]);
  });

  test('two zeros settle nothing, and contradict nothing', () => {
    const cm = claimOn(upper, { ...centimetres, doubts: lineDoubt });
    const inch = claimOn(lower, { ...inches, first: 10 });
    expect(doubtsIn(cm, inch)).toEqual([['line'], []]);
  });

  test('coarse lines of the other edge are few of them away, and no others of the same', () => {
    const eighths = claimOn(
      { y: 340, pitchPx: (25.4 / 8) * MM_PX, count: 32 },
      { ...inches, first: 40, numbers: 4, ticksPerNumber: 8, across: -3 },
    );
    const cm = claimOn(upper, { ...centimetres, numbers: 3, first: 12, direction: -1 });
    expect(doubtsIn(eighths, { ...cm, claim: { ...cm.claim, foretold: true } })).toEqual([[], []]);
  });

  test('an edge that runs the other way settles nothing, though the two cross on one value', () => {
    const cm = claimOn(upper, { ...centimetres, first: 25.4, doubts: lineDoubt });
    // 31.5 sixteenths along, in the middle, both say 304 mm.
    const inch = claimOn(lower, { ...inches, first: 13.9375, direction: -1 });
    expect(doubtsIn(cm, inch)).toEqual([['line'], []]);
  });

  test('centimetres on both, off by whole numbers: one has its numbers on the wrong lines', () => {
    const low = { ...upper, y: 340 };
    const one = claimOn(upper, centimetres);
    const same = claimOn(low, { ...centimetres, across: -5 });
    expect(doubtsIn(one, same)).toEqual([[], []]);
    const other = claimOn(low, { ...centimetres, first: 23, across: -5 });
    expect(doubtsIn(one, other)).toEqual([['line'], ['line']]);
    // With far fewer numbers only the weaker is doubted; with another zero neither.
    const weak = claimOn(upper, { ...centimetres, numbers: 10 });
    expect(doubtsIn(weak, claimOn(low, { ...centimetres, first: 23, numbers: 5 }))).toEqual([
      [],
      ['line'],
    ]);
    // Many numbers, each with print of its own: two tapes side by side.
    const many = claimOn(upper, { ...centimetres, numbers: 10 });
    const beside = claimOn(low, { ...centimetres, first: 23, numbers: 9, across: -5 });
    expect(doubtsIn(many, beside)).toEqual([[], []]);
    const apart = claimOn(low, { ...centimetres, first: 23.5, across: -5 });
    expect(doubtsIn(one, apart)).toEqual([[], []]);
  });

  test('a slanted row over the same lines loses, though it tells nearly the same', () => {
    const strong = claimOn(upper, { ...centimetres, numbers: 8 });
    const across = { ...upper, y: 140, angle: 0.14 };
    const slanted = claimOn(across, { ...centimetres, numbers: 4 });
    expect(doubtsIn(strong, slanted)).toEqual([[], ['line']]);
    const even = claimOn(across, { ...centimetres, numbers: 8 });
    expect(doubtsIn(strong, even)).toEqual([['line'], ['line']]);
  });

  test('rows that lie apart at a slant are two tapes', () => {
    const one = claimOn(upper, centimetres);
    const other = claimOn({ ...upper, y: 320, angle: 0.1 }, centimetres);
    expect(doubtsIn(one, other)).toEqual([[], []]);
  });
});

describe('a tape that bends', () => {
  const turned = { ...upper, angle: 0.1, count: 60 };
  /** Where the turned row goes on from: beyond it the first is only guessed at. */
  const onwards = (first: number) => ({
    ...claimOn(turned, { ...centimetres, first, numbers: 5 }),
  });

  test('is followed in parts, which contradict each other only where both were followed', () => {
    const { row, claim } = claimOn({ ...upper, count: 50 }, { ...centimetres, numbers: 5 });
    const before = { row: { ...row, range: [-50, -5] as const }, claim };
    expect(doubtsIn(before, onwards(21))).toEqual([[], []]);
    const over = { row: { ...row, range: [-50, 30] as const }, claim };
    expect(doubtsIn(over, onwards(21))).toEqual([['line'], ['line']]);
  });
});

describe('rows of two tapes', () => {
  test('say nothing of each other', () => {
    const one = claimOn(upper, centimetres);
    const far = claimOn({ ...upper, y: 200 + 46 * MM_PX }, { ...centimetres, first: 23 });
    expect(doubtsIn(one, far)).toEqual([[], []]);
  });
});

describe('the same lines found twice', () => {
  const again = { ...upper, y: 215 };

  test('readings that say the same join, with the numbers of both', () => {
    const one = claimOn(upper, { ...centimetres, numbers: 3 });
    const other = claimOn(again, { ...centimetres, numbers: 5 });
    const [joined, ...rest] = reconcileClaims([one, other]);
    expect(rest).toEqual([]);
    expect(joined!.row).toBe(other.row);
    const values = joined!.claim.agreeing.map(({ value }) => value);
    expect(values.sort()).toEqual([20, 21, 22, 23, 24]);
  });

  test('numbers joined stand at the graduations of the row that is kept', () => {
    const one = claimOn(upper, { ...centimetres, numbers: 5 });
    const more = claimOn({ ...again }, { ...centimetres, numbers: 2 });
    const seventh = { ...placed(60, 26), at: placeIn<'measuring'>(100 + 60 * MM_PX, 260) };
    const claim = { ...more.claim, agreeing: [...more.claim.agreeing, seventh] };
    const [joined] = reconcileClaims([one, { ...more, claim }]);
    const { tick } = joined!.claim.agreeing.find(({ value }) => value === 26)!;
    expect(tick).toBeCloseTo(60, 6);
  });

  test('readings alike that differ are both doubted', () => {
    const one = claimOn(upper, { ...centimetres, numbers: 5 });
    const other = claimOn(again, { ...centimetres, first: 30, numbers: 4 });
    expect(doubtsIn(one, other)).toEqual([['line'], ['line']]);
  });

  test('a reading that doubts itself is no witness against one that doesn’t', () => {
    const one = claimOn(upper, { ...centimetres, numbers: 5 });
    const few = claimOn(again, { ...centimetres, first: 30, numbers: 3, doubts: lineDoubt });
    expect(doubtsIn(one, few)).toEqual([[], ['line']]);
  });

  test('nor is one that doubts itself in another way', () => {
    const one = claimOn(upper, { ...centimetres, numbers: 5 });
    const unsure = claimOn(again, { ...centimetres, first: 30, numbers: 4, doubts: unitDoubt });
    expect(doubtsIn(one, unsure)).toEqual([[], ['line', 'unit']]);
  });

  test('one that doubts itself is left out where a sure one read the same print the same', () => {
    const sure = claimOn(upper, { ...centimetres, numbers: 6 });
    const off = claimOn({ ...again, y: 210 }, { ...centimetres, numbers: 5, doubts: lineDoubt });
    // The same print, given to the lines next to its own.
    const agreeing = sure.claim.agreeing.slice(0, 5);
    const claim = { ...off.claim, agreeing, anchorTick: 1 };
    expect(reconcileClaims([sure, { ...off, claim }]).map(({ row }) => row)).toEqual([sure.row]);
    const others = agreeing.map((number) => ({ ...number, value: number.value + 10 }));
    const differs = { ...off, claim: { ...claim, agreeing: others, anchorValue: 30 } };
    expect(doubtsIn(sure, differs)[1]).toEqual(['line']);
  });

  test('numbers that digits between count up to are this row’s, though another row is nearer', () => {
    const counted = claimOn({ ...upper, y: 60 }, { ...centimetres, counted: true });
    const near = claimOn(upper, { ...centimetres, doubts: unitDoubt });
    const claim = { ...counted.claim, agreeing: near.claim.agreeing };
    const [found, ...rest] = reconcileClaims([near, { ...counted, claim }]);
    expect(rest).toEqual([]);
    expect(found!.row).toBe(counted.row);
  });

  test('of readings that differ the much weaker is doubted', () => {
    const one = claimOn(upper, { ...centimetres, numbers: 8 });
    const other = claimOn(again, { ...centimetres, first: 30, numbers: 4 });
    expect(doubtsIn(one, other)).toEqual([[], ['line']]);
  });
});

test('numbers printed for a nearer row are no claim of this one', () => {
  const near = claimOn(upper, centimetres);
  // Another row of lines, 14 mm the other way, that took the same print for its own.
  const far = claimOn({ ...upper, y: 60 }, { ...centimetres, numbers: 6 });
  const borrowed = near.claim.agreeing.map((number, i) => ({ ...number, value: 50 + i }));
  const claim = { ...far.claim, agreeing: borrowed, anchorValue: 50 };
  expect(reconcileClaims([near, { ...far, claim }]).map(({ row }) => row)).toEqual([near.row]);
});

test('lines that lean far aren’t those of a tape seen from above', () => {
  const leaning = (shear: number, change: Partial<typeof centimetres> = {}) => {
    const one = claimOn(upper, { ...centimetres, ...change });
    return { ...one, row: { ...one.row, frame: { ...one.row.frame, shear } } };
  };
  expect(doubtsIn(leaning(0.2))).toEqual([[]]);
  expect(doubtsIn(leaning(0.25))).toEqual([['line']]);
  expect(doubtsIn(leaning(-0.25))).toEqual([['line']]);
  // Many numbers that nothing speaks against are on no row that runs across a tape.
  expect(doubtsIn(leaning(0.25, { numbers: 8 }))).toEqual([[]]);
  expect(doubtsIn(leaning(0.4, { numbers: 8 }))).toEqual([['line']]);
  const { row, claim } = leaning(0.25, { numbers: 8 });
  const contrary = claim.agreeing.slice(0, 1);
  expect(doubtsIn({ row, claim: { ...claim, contrary } })).toEqual([['line']]);
  const unsure = { ...claim, placing: 'unsure' as const };
  expect(doubtsIn({ row, claim: unsure })).toEqual([['line']]);
});

test('nor are short lines that fan out far towards the ends of their row', () => {
  const fanned = (atEnd: number, zoneTo: number) => {
    const one = claimOn(upper, centimetres);
    const { frame, pitch, pattern, range } = one.row;
    const shearRate = atEnd / Math.max(...range.map((tick) => Math.abs(alongAt(pitch, tick))));
    const leaning = {
      frame: { ...frame, shear: 0, shearRate },
      pattern: { ...pattern, zoneFrom: 0, zoneTo },
    };
    return { ...one, row: { ...one.row, ...leaning } };
  };
  expect(doubtsIn(fanned(0.25, 0.3))).toEqual([[]]);
  expect(doubtsIn(fanned(0.4, 0.3))).toEqual([['line']]);
  expect(doubtsIn(fanned(-0.4, 0.3))).toEqual([['line']]);
  // Long lines fan out as far where a tape is seen at a steep slant.
  expect(doubtsIn(fanned(0.45, 1.5))).toEqual([[]]);
});

test('rows without a claim say nothing', () => {
  const one = claimOn(upper, centimetres);
  expect(reconcileClaims([{ row: madeRow({ ...upper, y: 215 }) }, one])).toHaveLength(1);
  expect(reconcileClaims([])).toEqual([]);
});
