import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { numbersPage, placeSymbols } from '../../../src/tape/characters/page.ts';
import type { QuarterTurns } from '../../../src/tape/characters/page-drawing.ts';
import type { TickRange } from '../../../src/tape/graduations/sheet.ts';
import { tickPattern } from '../../../src/tape/graduations/tick-pattern.ts';
import { numberRows, numberSheet } from '../../../src/tape/numbers/number-cells.ts';
import type { NumberRow, NumberRows } from '../../../src/tape/numbers/number-row.ts';
import { wordRows } from '../../../src/tape/numbers/word-rows.ts';
import {
  centimetreLines,
  type DrawnTape,
  drawTape,
  inchLines,
  truthOf,
} from '../made/drawn-tape.ts';
import { readGlyphs } from '../made/glyph-reader.ts';

/** Values on every tenth line, or as given, below the lines. */
function tapeOf(values: ReadonlyMap<number, number>, change: Partial<DrawnTape> = {}): DrawnTape {
  const numbers = [...values].map(([tick, value]) => ({
    text: String(value),
    along: tick,
    across: 6.5,
    height: 3.5,
  }));
  return {
    width: 800,
    height: 300,
    pitchPx: 10,
    lineLength: centimetreLines,
    numbers,
    ...change,
  };
}

const tens = new Map([-30, -20, -10, 0, 10, 20, 30].map((tick) => [tick, 45 + tick / 10]));
const range: TickRange = [-35, 35];

function strict(tape: DrawnTape): NumberRows {
  const [work, { frame, pitch }] = [drawTape(tape), truthOf(tape)];
  const pattern = tickPattern(work, frame, pitch, range)!;
  expect(pattern.valid).toBe(true);
  return numberRows(numberSheet(work, frame, pitch, range, pattern), pattern, range);
}

function words(tape: DrawnTape): NumberRows {
  const [work, { frame, pitch }] = [drawTape(tape), truthOf(tape)];
  return wordRows(work, frame, pitch, range, tickPattern(work, frame, pitch, range)!);
}

/** The values read in one row, by the graduation that each one's middle is nearest to. */
function readRow(found: NumberRows, row: NumberRow, turns: QuarterTurns = 0) {
  const page = numbersPage(found, [row], turns);
  const reads = placeSymbols(readGlyphs(page), page, 0).get(row) ?? [];
  return new Map(reads.map(({ cell, value }) => [Math.round(cell.middle), value]));
}

describe('numbers of a known pattern', () => {
  test.each([
    ['lying straight', {}],
    ['turned and sheared', { angle: 0.08, shear: 0.1 }],
    ['white on black', { light: true }],
  ])('are cut apart and read, %s', (_, change) => {
    const found = strict(tapeOf(tens, change));
    const there = found.rows.filter(({ across }) => Math.abs(across - 6.5) < 1);
    expect(there).toEqual([found.rows[0]]);
    const row = found.rows[0]!;
    expect(row.across).toBeCloseTo(6.5, 0);
    expect(row.height / found.sheet.perTick).toBeCloseTo(3.5, 0);
    expect(readRow(found, row)).toEqual(tens);
    for (const { middle, left, right, components } of row.cells) {
      expect(Math.abs(middle - 10 * Math.round(middle / 10))).toBeLessThan(0.5);
      expect(right).toBeGreaterThan(left);
      expect(components).toHaveLength(2);
    }
  });

  test('on the upper side of the lines', () => {
    const numbers = tapeOf(tens).numbers!.map((number) => ({ ...number, across: -6.5 }));
    const found = strict(tapeOf(tens, { upwards: true, numbers }));
    expect(found.rows[0]!.across).toBeCloseTo(-6.5, 0);
    expect(readRow(found, found.rows[0]!)).toEqual(tens);
  });

  test('of an inch in sixteenths', () => {
    const inches = new Map([-32, -16, 0, 16, 32].map((tick) => [tick, 25 + tick / 16]));
    const found = strict(tapeOf(inches, { lineLength: inchLines, numbers: tallNumbers(inches) }));
    expect(readRow(found, found.rows[0]!)).toEqual(inches);
  });

  test('upside down, they are read turned by half', () => {
    const tape = tapeOf(tens);
    const numbers = tape.numbers!.map((number) => ({ ...number, turns: 2 }));
    const found = strict({ ...tape, numbers });
    expect(readRow(found, found.rows[0]!, 2)).toEqual(tens);
    expect(readRow(found, found.rows[0]!, 0)).not.toEqual(tens);
  });

  test('a line that runs through a middle digit is wiped, and the digit put back', () => {
    const ticks = [...tens.keys()];
    const numbers = ticks.map((along) => ({ text: '919', along, across: 6.5, height: 2.5 }));
    const lineLength = (tick: number) => (tick % 10 ? centimetreLines(tick) : 9);
    const { cells } = strict(tapeOf(tens, { lineLength, numbers })).rows[0]!;
    expect(cells.map(({ middle }) => Math.round(middle) + 0)).toEqual(ticks);
    for (const { components, gap } of cells) {
      const [left, stroke, right] = components;
      expect(gap).toBe(false);
      expect(stroke!.x0).toBeGreaterThan(left!.x1);
      expect(stroke!.x1).toBeLessThan(right!.x0);
      expect(Math.abs(stroke!.height - left!.height)).toBeLessThanOrEqual(2);
    }
  });

  test('without numbers there are no rows', () => {
    expect(strict(tapeOf(new Map())).rows).toEqual([]);
  });
});

function tallNumbers(values: ReadonlyMap<number, number>) {
  return [...values].map(([tick, value]) => ({
    text: String(value),
    along: tick,
    across: 10,
    height: 5,
  }));
}

describe('words beside any row of graduations', () => {
  const twenties = new Map([-32, -24, -16, -8, 0, 8, 16, 24, 32].map((k) => [k, 20 + k / 4]));

  test('are found where the lines tell nothing', () => {
    const found = words(tapeOf(twenties, { lineLength: () => 1.5 }));
    const row = found.rows[0]!;
    expect(row).toMatchObject({ turned: false });
    expect(row.regularity).toBeGreaterThan(0.95);
    expect(readRow(found, row)).toEqual(twenties);
  });

  test('along a slant, and not quite even; larger ones come first', () => {
    const numbers = [...twenties].flatMap(([along, value]) => [
      { text: String(value), along, across: 6.5 + 0.03 * along + (value % 4) / 8, height: 3 },
      { text: String(value), along, across: -8, height: 1.5 },
    ]);
    const found = words(tapeOf(twenties, { lineLength: () => 1.5, numbers }));
    const [large, small] = found.rows;
    expect(large!.height).toBeGreaterThan(1.5 * small!.height);
    expect(readRow(found, large!)).toEqual(twenties);
    expect(readRow(found, small!)).toEqual(twenties);
  });

  test('turned by a quarter, each way', () => {
    for (const turns of [1, 3] as const) {
      const tape = tapeOf(twenties, { lineLength: () => 1.5 });
      const numbers = tape.numbers!.map((number) => ({ ...number, turns }));
      const found = words({ ...tape, numbers });
      const row = found.rows.find((one) => one.turned)!;
      expect(readRow(found, row, turns)).toEqual(twenties);
    }
  });

  test('at most 18 of a row, those in the middle', () => {
    const ticks = Array.from({ length: 31 }, (_, i) => 2 * i - 30);
    const numbers = ticks.map((along) => ({ text: '2', along, across: 5, height: 1.5 }));
    const found = words(tapeOf(tens, { lineLength: () => 1, numbers }));
    const places = found.rows[0]!.cells.map(({ middle }) => Math.round(middle));
    expect(places).toHaveLength(18);
    expect(Math.abs(Math.max(...places) + Math.min(...places))).toBeLessThanOrEqual(3);
  });
});

describe('a page', () => {
  const found = strict(tapeOf(tens));
  const row = found.rows[0]!;

  test('keeps numbers apart, and out of each other’s reach', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 4 }),
        fc.constantFrom(0 as const, 2 as const),
        (n, turns) => {
          const page = numbersPage(found, Array(n).fill(row), turns);
          expect(page.pixels).toHaveLength(page.width * page.height);
          expect(page.items).toHaveLength(n * row.cells.length);
          page.items.forEach((one, i) => {
            expect(one.x + one.width + 40).toBeLessThan(page.width);
            expect(one.y + 36 + 36).toBeLessThan(page.height);
            for (const other of page.items.slice(i + 1)) {
              const beside = Math.abs(other.x - one.x) >= Math.min(one.width, other.width) + 28;
              expect(beside || Math.abs(other.y - one.y) >= 36 + 28).toBe(true);
            }
          });
        },
      ),
      // There are eight of them in all.
      { numRuns: 16 },
    );
  });

  test('has upside-down numbers in the order they are read', () => {
    const cellsOf = (turns: QuarterTurns) =>
      numbersPage(found, [row], turns).items.map(({ cell }) => cell);
    expect(cellsOf(0)).toEqual(row.cells);
    expect(cellsOf(2)).toEqual([...row.cells].reverse());
  });

  test('shows a number’s own ink and no other', () => {
    const [first] = row.cells;
    const [digit] = first!.components;
    const page = numbersPage(found, [{ ...row, cells: [{ ...first!, components: [digit!] }] }], 0);
    const { x, width } = page.items[0]!;
    const inked = [...page.pixels.keys()].filter((at) => page.pixels[at]! < 250);
    const columns = inked.map((at) => at % page.width);
    expect(Math.min(...columns)).toBeLessThan(x + 3);
    expect(Math.max(...columns)).toBeLessThan(x + 0.6 * width);
  });

  test('shows a number only if it has no gap and is no bar', () => {
    const [first, second, ...rest] = row.cells;
    const cells = [
      { ...first!, gap: true },
      { ...second!, x1: second!.x0 + 5 * row.height },
      ...rest,
    ];
    expect(numbersPage(found, [{ ...row, cells }], 0).items).toHaveLength(rest.length);
    expect(numbersPage(found, [], 0)).toMatchObject({ width: 100, items: [] });
  });

  test('has only whole numbers of up to four digits read', () => {
    const page = numbersPage(found, [row], 0);
    const at = (index: number, text: string, dx = 0) => {
      const { x, y } = page.items[index]!;
      return { text, confidence: 80, x0: x + dx, x1: x + dx + 4, y0: y, y1: y + 36 };
    };
    const symbols = [at(0, '7', 12), at(0, '4'), at(1, 'o'), at(2, '12345'), at(3, '0')];
    const reads = placeSymbols(symbols, page, 0).get(row)!;
    expect(reads.map(({ text, value, confidence }) => [text, value, confidence])).toEqual([
      ['47', 47, 80],
      ['0', 0, 80],
    ]);
    expect(reads[0]!.cell).toBe(row.cells[0]);
    expect(placeSymbols([], page, 0).size).toBe(0);
  });
});
