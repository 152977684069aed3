import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toFrame } from '../../../src/tape/frame/frame.ts';
import { makeSheet, type Sheet, trustedRange } from '../../../src/tape/graduations/sheet.ts';
import { alongRow, centred } from '../../../src/tape/picture/space.ts';
import type { PhasePoint } from '../../../src/tape/pitch/phase.ts';
import { graduationAt } from '../../../src/tape/pitch/position.ts';
import { centimetreLines, type DrawnTape, drawTape, truthOf } from '../made/drawn-tape.ts';

const slanted: DrawnTape = {
  width: 360,
  height: 240,
  pitchPx: 9.3,
  angle: 0.3,
  shear: 0.15,
  crowding: 0.0004,
  lineLength: centimetreLines,
};

function sheetOf(tape: DrawnTape): Sheet {
  const { frame, pitch } = truthOf(tape);
  return makeSheet(drawTape(tape), frame, pitch, -12, 12, 8, -2, 6);
}

/** The darkest column between half a graduation before and after, averaged over some rows. */
function darkest({ values, width, perTick, fromTick }: Sheet, tick: number, rows: number[]) {
  const middle = (tick - fromTick) * perTick;
  const columns = Array.from({ length: perTick }, (_, i) => middle - perTick / 2 + i);
  const level = (x: number) => rows.reduce((sum, y) => sum + values[y * width + x]!, 0);
  return columns.reduce((best, x) => (level(x) < level(best) ? x : best)) - middle;
}

describe('a sheet', () => {
  test('has each graduation at its own column, upright, however the tape lies', () => {
    const sheet = sheetOf(slanted);
    expect(sheet).toMatchObject({ width: 192, height: 64, perTick: 8, fromAcross: -2 });
    for (let tick = -11; tick <= 11; tick++) {
      // The row runs at 16 px from the upper edge; lines go one graduation up and one down.
      expect(Math.abs(darkest(sheet, tick, [10, 11, 12]))).toBeLessThanOrEqual(1);
      expect(Math.abs(darkest(sheet, tick, [19, 20, 21]))).toBeLessThanOrEqual(1);
    }
  });

  test('has light print dark', () => {
    const sheet = sheetOf({ ...slanted, light: true });
    for (const tick of [-10, -3, 0, 8]) {
      expect(Math.abs(darkest(sheet, tick, [10, 12, 19]))).toBeLessThanOrEqual(1);
    }
  });

  test('ends where the picture ends', () => {
    const { frame, pitch } = truthOf(slanted);
    const wide = makeSheet(drawTape(slanted), frame, pitch, -40, 12, 8, -2, 6);
    expect(wide.values[0]).toBeNaN();
    expect(wide.values[16 * wide.width + wide.width - 1]).not.toBeNaN();
  });

  test('leads back to the picture', () => {
    const sheet = sheetOf(slanted);
    const { frame, pitch } = truthOf(slanted);
    const column = fc.integer({ min: 0, max: sheet.width - 1 });
    fc.assert(
      fc.property(column, fc.double({ min: 0, max: 63, noNaN: true }), (x, y) => {
        const [u, v] = toFrame<'measuring'>(frame, sheet.toMeasuring(x, y));
        expect(graduationAt(pitch.model, centred(u))).toBeCloseTo(-12 + x / 8, 3);
        const side = Math.sign(y - 16);
        if (Math.abs(y - 16) > 0.01) expect(Math.sign(v)).toBe(side);
      }),
    );
  });
});

describe('the trusted range', () => {
  const model = { a: 0.1, b: 0, c: 0 };
  const rangeOf = (qualities: readonly number[]) => {
    const track = qualities.map(
      (quality, i): PhasePoint<'measuring'> => ({
        u: alongRow(10 * i),
        t: centred(10 * i),
        phase: 0,
        quality,
        amplitude: 1,
        pitch: 10,
      }),
    );
    return trustedRange({ track, model });
  };
  const stretch = (count: number, quality: number) => Array(count).fill(quality);

  test('is one graduation wider than what was followed', () => {
    expect(rangeOf([...stretch(5, 0.1), ...stretch(20, 0.9), ...stretch(5, 0)])).toEqual([4, 25]);
  });

  test('goes on past a finger, but not past a hand', () => {
    const behind = (hidden: number) =>
      rangeOf([...stretch(20, 0.9), ...stretch(hidden, 0.1), ...stretch(12, 0.9)]);
    expect(behind(11)).toEqual([-1, 43]);
    expect(behind(12)).toEqual([-1, 20]);
  });

  test('is none if it is short, or nothing was followed', () => {
    expect(rangeOf(stretch(9, 0.9))).toBeNull();
    expect(rangeOf(stretch(40, 0.2))).toBeNull();
    expect(rangeOf([])).toBeNull();
  });

  test('is the longest run parted by 12 or more untrusted places', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.boolean(), fc.integer({ min: 1, max: 18 })), { maxLength: 9 }),
        (runs) => {
          const flags = runs.map(([good, count]) => (good ? 'x' : '.').repeat(count)).join('');
          const parts = [...flags.matchAll(/x(?:\.{0,11}x)*/g)].map((m) => [m.index, m[0].length]);
          const [at = 0, long = 0] = parts.reduce((a, b) => (b[1]! > a[1]! ? b : a), [0, 0]);
          const range = rangeOf([...flags].map((flag) => (flag === 'x' ? 0.8 : 0.2)));
          expect(range).toEqual(long < 10 ? null : [at - 1, at + long]);
        },
      ),
    );
  });
});
