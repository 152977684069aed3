import { describe, expect, test } from 'vitest';
import type { Sheet } from '../../../src/tape/graduations/sheet.ts';
import { fullLines } from '../../../src/tape/numbering/full-lines.ts';
import { cellOf, type NumberRow } from '../../../src/tape/numbers/number-row.ts';
import { placeIn } from '../../../src/tape/picture/space.ts';
import { madePattern, patch } from '../made/made-rows.ts';

const PER_TICK = 8;
const TICKS = 100;
const WIDTH = TICKS * PER_TICK;
const HEIGHT = 160;
/** Rows of the sheet that the numbers stand in; the graduations' zone ends at 24. */
const [TOP, BOTTOM] = [60, 120];

/**
 * A sheet whose third graduation of ten crosses it, inked on every row but for a share of each
 * twenty, with numbers before it; `over`: graduations that other digits stand over.
 */
function boxed(worn: number, over: readonly number[] = []) {
  const values = new Float32Array(WIDTH * HEIGHT);
  const ink = (tick: number, from: number, to: number, share: number) => {
    for (let y = from; y < to; y++) {
      if (y % 20 < 20 * share) continue;
      for (let x = -1; x <= 1; x++) values[y * WIDTH + tick * PER_TICK + x] = -1;
    }
  };
  for (let tick = 3; tick < TICKS; tick += 10) ink(tick, 0, HEIGHT, worn);
  for (const tick of over) ink(tick, TOP, BOTTOM, 0);
  const sheet: Sheet = {
    width: WIDTH,
    height: HEIGHT,
    values,
    perTick: PER_TICK,
    fromTick: 0,
    fromAcross: 0,
    toMeasuring: (x, y) => placeIn(x, y),
  };
  // A number in each box, 3 graduations wide, but for the last three: those weren't read.
  const cells = Array.from({ length: 7 }, (_, i) =>
    cellOf([patch((10 * i + 9) * PER_TICK, 3 * PER_TICK, BOTTOM - TOP, TOP)], sheet),
  );
  const middle = (TOP + BOTTOM) / 2;
  const row: NumberRow = {
    cells,
    height: 24,
    middle,
    turned: true,
    across: middle / PER_TICK,
  };
  const pattern = { ...madePattern(10), zoneFrom: 0, zoneMiddle: 1.5, zoneTo: 3, contrast: 1 };
  return { sheet, row, pattern };
}

const longAt = ({ sheet, row, pattern }: ReturnType<typeof boxed>, longest?: number) =>
  fullLines(sheet, pattern, 10, row, longest)?.longAt;

describe('lines across the tape', () => {
  test('are found by their ink', () => {
    expect(longAt(boxed(0))).toBe(3);
  });

  test('thin or worn, where nothing else crosses the numbers’ band, they are, too', () => {
    expect(longAt(boxed(0.35))).toBe(3);
    expect(longAt(boxed(0.5))).toBeUndefined();
  });

  test('worn by half, where their own graduations are surely the longest, and only those', () => {
    expect(longAt(boxed(0.5), 3)).toBe(3);
    expect(longAt(boxed(0.5), 8)).toBeUndefined();
    expect(longAt(boxed(0.6), 3)).toBeUndefined();
    expect(longAt(boxed(0.5, [16, 36, 56, 76, 86, 96]), 3)).toBeUndefined();
  });

  test('worn, beside other ink, they aren’t', () => {
    const every = Array.from({ length: 10 }, (_, i) => 10 * i + 6);
    expect(
      longAt(
        boxed(
          0.35,
          every.filter((_, i) => i % 2 === 0),
        ),
      ),
    ).toBeUndefined();
  });

  // Three numbers that weren't read leave their digits where the line would be a graduation off.
  test('aren’t refuted by digits over the few lines that are clear of numbers', () => {
    expect(longAt(boxed(0, [80, 90]))).toBe(3);
  });
});
