import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { alignment, between, type LineOf } from '../../../src/tape/numbering/alignment.ts';
import type { NumberCell } from '../../../src/tape/numbers/number-row.ts';
import { cellAt } from '../made/read-numbers.ts';

const lines = { subdivisions: 10, longAt: 3 };
/** Line n stands at 10n + 3; numbers of one digit and of two are 2 and 4.4 graduations wide. */
const widths = [2, 2, 2, 4.4, 4.4, 4.4];

function row(place: (line: number, width: number) => number): NumberCell[] {
  return widths.map((width, n) => cellAt(place(10 * n + 3, width), width));
}

const centred = row((line) => line + 0.2);
const before = row((line, width) => line - 0.6 - width / 2);
const after = row((line, width) => line + 0.6 + width / 2);

/** Zero without a sign. */
const placeBy = (line: LineOf) => (cell: NumberCell) => line(cell) + 0;

function linesOf(cells: readonly NumberCell[]) {
  const found = alignment(cells, lines);
  if (!found || found.kind === 'unsure') return null;
  return { kind: found.kind, lines: cells.map(placeBy(found.line)) };
}

describe('numbers stand', () => {
  const own = widths.map((_, n) => n);

  test.each([
    ['centred', centred],
    ['before', before],
    ['after', after],
  ] as const)('%s: each has its own line', (kind, cells) => {
    expect(linesOf(cells)).toEqual({ kind, lines: own });
  });

  test('anywhere: nothing to do with the lines', () => {
    expect(
      alignment(
        row((line) => 1.37 * line),
        lines,
      ),
    ).toBeNull();
    expect(
      between(
        row((line) => 1.37 * line),
        lines,
      ),
    ).toBeNull();
  });

  test('midway, all as wide: before or after can’t be told', () => {
    const found = alignment(
      [0, 1, 2, 3].map((n) => cellAt(10 * n + 8, 7)),
      lines,
    );
    expect(found?.kind).toBe('unsure');
    if (found?.kind !== 'unsure') return;
    expect(found.before(cellAt(18, 7))).toBe(2);
    expect(found.after(cellAt(18, 7))).toBe(1);
  });

  test('midway, but of two widths: the edge that keeps step with the lines tells', () => {
    const wide = [4.4, 6.4, 4.4, 6.4];
    const ahead = wide.map((width, n) => cellAt(10 * n + 1 - width / 2, width));
    const behind = wide.map((width, n) => cellAt(10 * n + 5 + width / 2, width));
    expect(linesOf(ahead)).toEqual({ kind: 'before', lines: [0, 1, 2, 3] });
    expect(linesOf(behind)).toEqual({ kind: 'after', lines: [0, 1, 2, 3] });
  });

  test('too loosely about the lines to tell', () => {
    const loose = [0.2, 2, 0.2, 2].map((off, n) => cellAt(10 * n + 3 + off, 2));
    expect(alignment(loose, lines)).toBeNull();
  });

  test('too few, or as wide as the interval, say nothing', () => {
    expect(alignment(centred.slice(0, 1), lines)).toBeNull();
    expect(alignment([cellAt(3, 10), cellAt(13, 10)], lines)).toBeNull();
  });

  test('nearly filling their interval: between two lines, and no more', () => {
    const found = between(
      [0, 1, 2].map((n) => cellAt(10 * n + 8, 9.9)),
      lines,
    );
    expect(found?.kind).toBe('unsure');
    if (found?.kind !== 'unsure') return;
    expect([found.before(cellAt(18)), found.after(cellAt(18))]).toEqual([2, 1]);
  });
});

test('mirrored, before is after, and centred stays; counted from another line, lines follow', () => {
  const noise = fc.array(fc.double({ min: -0.25, max: 0.25, noNaN: true }), {
    minLength: widths.length,
    maxLength: widths.length,
  });
  const kinds = fc.constantFrom(
    [centred, 'centred'] as const,
    [before, 'after'] as const,
    [after, 'before'] as const,
  );
  fc.assert(
    fc.property(kinds, noise, fc.integer({ min: -9, max: 9 }), ([cells, mirrored], off, shift) => {
      const shaken = cells.map((cell, i) => cellAt(cell.middle + off[i]!, cell.right - cell.left));
      const found = linesOf(shaken)!;
      const turned = shaken.map(({ middle, left, right }) => cellAt(6 - middle, right - left));
      const other = linesOf(turned)!;
      expect(other.kind).toBe(mirrored);
      other.lines.forEach((line, i) => {
        expect(line + found.lines[i]!).toBe(0);
      });
      const moved = alignment(shaken, { ...lines, longAt: 3 + 10 * shift })!;
      expect(moved.kind === 'unsure' ? [] : shaken.map(placeBy(moved.line))).toEqual(
        found.lines.map((line) => line - shift + 0),
      );
    }),
  );
});
