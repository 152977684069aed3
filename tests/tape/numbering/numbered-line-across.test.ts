import { describe, expect, test } from 'vitest';
import { pageReader } from '../../../src/tape/characters/read-cells.ts';
import { doubtsOf } from '../../../src/tape/claims/doubts.ts';
import { wordNumbers } from '../../../src/tape/claims/word-numbers.ts';
import type { TickRange } from '../../../src/tape/graduations/sheet.ts';
import { tickPattern } from '../../../src/tape/graduations/tick-pattern.ts';
import { wordRows } from '../../../src/tape/numbers/word-rows.ts';
import { centimetreLines, type DrawnTape, drawTape, truthOf } from '../made/drawn-tape.ts';
import { readGlyphs } from '../made/glyph-reader.ts';

const RANGE: TickRange = [-45, 45];
/** 45 stands for graduation 0. */
const TENS = [-40, -30, -20, -10, 0, 10, 20, 30, 40];
const ACROSS = 7;
const HEIGHT = 3.4;

/** Centimetres across the whole tape, as soft tapes box their numbers. */
const acrossAll = (tick: number) => (tick % 10 === 0 ? 13 : centimetreLines(tick));
/** Fives as long as tens: the other edge of such a tape, where the full line isn't printed from. */
const alike = (tick: number) => (tick % 5 === 0 ? 2.5 : 1);

/** Numbers turned by a quarter, their middles so far from their lines, in graduations. */
async function claimOf(
  aside: number,
  lineLength: DrawnTape['lineLength'],
  {
    turns = 1,
    upwards = true,
    ticks = TENS,
    lean = 0,
    across = ACROSS,
    first = 45,
    range = RANGE,
  } = {},
) {
  const numbers = ticks.map((tick) => ({
    text: String(first + ((upwards ? 1 : -1) * tick) / 10),
    along: tick + aside,
    across,
    height: HEIGHT,
    turns,
  }));
  const tape = { width: 1000, height: 400, pitchPx: 10, shear: lean, lineLength, numbers };
  const [work, { frame, pitch }] = [drawTape(tape), truthOf(tape)];
  const pattern = tickPattern(work, frame, pitch, range)!;
  const { readRows } = pageReader(async (page) => readGlyphs(page));
  const claimed = await wordNumbers(
    wordRows(work, frame, pitch, range, pattern),
    pattern,
    readRows,
  );
  if (!claimed.ok) throw new Error(claimed.why);
  return claimed.claim;
}

type Claim = Awaited<ReturnType<typeof claimOf>>;

/** What the claim says of graduation 0, where 45 is. */
const atZero = ({ anchorTick, anchorValue, direction }: Claim) =>
  anchorValue - (direction * anchorTick) / 10;

// How soft tapes are printed is seen on photographs; common practice, no source.
describe('numbers boxed between lines across the tape', () => {
  test.each([
    ['either way up', { turns: 3 }, -2.6],
    ['the other way up', { turns: 1 }, -2.6],
    ['counting against the row', { upwards: false }, 2.6],
    ['seen with lines that lean', { lean: 0.1 }, -2.6],
  ])('are those of the nearer line, where that is the higher: %s', async (_, set, aside) => {
    const claim = await claimOf(aside, acrossAll, set);
    expect(claim).toMatchObject({ placing: 'before', doubts: new Set() });
    expect(atZero(claim)).toBeCloseTo(45, 9);
  });

  test('nearer to the lower line, midway, or only three of them: it is asked', async () => {
    expect((await claimOf(2.6, acrossAll)).doubts).toEqual(new Set(['line']));
    expect((await claimOf(5, acrossAll)).doubts).toEqual(new Set(['line']));
    const three = await claimOf(-2.6, acrossAll, { ticks: [-10, 0, 10] });
    expect(three.doubts).toEqual(new Set(['line']));
  });
});

test('two numbers that the lines divide as a tape, and nothing else, are asked about', async () => {
  const claim = await claimOf(-2.6, acrossAll, { ticks: [-10, 0] });
  expect(claim.agreeing.map(({ value }) => value)).toEqual([44, 45]);
  expect(doubtsOf(claim)).toEqual(new Set(['line']));
  expect(atZero(claim)).toBeCloseTo(45, 9);
  // Farther from the lines than any number of theirs they may be another tape's.
  await expect(claimOf(-2.6, acrossAll, { ticks: [-10, 0], across: 15 })).rejects.toThrow();
});

test('two of three digits are, where so few lines are seen that they tell no pattern for sure', async () => {
  const short = { ticks: [-10, 0], range: [-13, 4] as TickRange };
  const claim = await claimOf(-2.6, acrossAll, { ...short, first: 142 });
  expect(claim.pattern.valid).toBe(false);
  expect(claim.agreeing.map(({ value }) => value)).toEqual([141, 142]);
  expect(doubtsOf(claim)).toContain('line');
  // Two of fewer digits may be anything.
  await expect(claimOf(-2.6, acrossAll, { ...short, first: 45 })).rejects.toThrow();
});

describe('numbers turned across, with no line between them', () => {
  test('fives as long as tens: not the line under the number is taken, the next long one asked', async () => {
    const claim = await claimOf(-2.6, alike);
    expect(claim.doubts).toEqual(new Set(['line']));
    expect(atZero(claim)).toBeCloseTo(45, 9);
  });

  test('on the longest line, or beside it on its low side, they are its', async () => {
    for (const aside of [0, -2.6]) {
      const claim = await claimOf(aside, centimetreLines);
      expect(claim.doubts.size, `${aside}`).toBe(0);
      expect(atZero(claim)).toBeCloseTo(45, 9);
    }
  });

  test('on the high side of a line: no scale seen is printed so, and it is asked', async () => {
    expect((await claimOf(2.6, centimetreLines)).doubts).toEqual(new Set(['line']));
  });
});
