import { expect, test } from 'vitest';
import type { ReadRows } from '../../../src/tape/characters/read-cells.ts';
import { wordNumbers } from '../../../src/tape/claims/word-numbers.ts';
import type { TickRange } from '../../../src/tape/graduations/sheet.ts';
import { tickPattern } from '../../../src/tape/graduations/tick-pattern.ts';
import type { NumberRead, NumberRow } from '../../../src/tape/numbers/number-row.ts';
import { wordRows } from '../../../src/tape/numbers/word-rows.ts';
import { centimetreLines, drawTape, truthOf } from '../made/drawn-tape.ts';
import { readAt } from '../made/read-numbers.ts';

const RANGE: TickRange = [-40, 40];

const rowOf = (reads: readonly NumberRead[], across: number): NumberRow => ({
  cells: reads.map(({ cell }) => cell),
  height: 20,
  middle: 0,
  turned: false,
  across,
});

test('numbers are read beyond a nearer row of more digits that begin anew', async () => {
  const tape = { width: 1000, height: 300, pitchPx: 10, lineLength: centimetreLines };
  const [work, { frame, pitch }] = [drawTape(tape), truthOf(tape)];
  const pattern = tickPattern(work, frame, pitch, RANGE)!;
  // A third off their lines, as where the slant of the lines is not quite known: they count from none.
  const digits = [-19, -9, 1, 11].flatMap((from) =>
    Array.from({ length: 9 }, (_, i) => readAt(from + i + 0.33, i + 1)),
  );
  const numbers = [45, 46, 47, 48, 49].map((value) => readAt(10 * (value - 47), value));
  const rows = new Map([
    [rowOf(digits, 4), digits],
    [rowOf(numbers, 8), numbers],
  ]);
  const readRows: ReadRows = async () => rows;
  const words = { ...wordRows(work, frame, pitch, RANGE, pattern), rows: [...rows.keys()] };
  const claimed = await wordNumbers(words, pattern, readRows);
  if (!claimed.ok) throw new Error(claimed.why);
  expect(claimed.claim.agreeing.map(({ value }) => value)).toEqual([45, 46, 47, 48, 49]);
});
