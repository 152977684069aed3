import { describe, expect, test } from 'vitest';
import { linesSeen, runAround } from '../../../src/tape/graduations/detected-lines.ts';
import { tickPattern } from '../../../src/tape/graduations/tick-pattern.ts';
import {
  numbersApart,
  readableStretches,
  withoutSlips,
} from '../../../src/tape/scales/readable-stretches.ts';
import type { Stretch } from '../../../src/tape/scales/scale.ts';
import { centimetreLines, type DrawnTape, drawTape, truthOf } from '../made/drawn-tape.ts';
import { madeClaim, placed } from '../made/made-rows.ts';

const FIRST = -38;

/** Graduations −38 to 38 with some of them hidden. */
function seen(...hidden: readonly (readonly [from: number, to: number])[]) {
  const there = Array.from({ length: 77 }, (_, i) => {
    const tick = FIRST + i;
    return !hidden.some(([from, to]) => tick >= from && tick <= to);
  });
  return { first: FIRST, there };
}

/** Numbers 17 to 23 on the graduations −30 to 30. */
const seven = madeClaim([20], {
  agreeing: [-30, -20, -10, 0, 10, 20, 30].map((tick) => placed(tick, 20 + tick / 10)),
});
const only = (...ticks: number[]) => ({
  ...seven,
  agreeing: seven.agreeing.filter(({ tick }) => ticks.includes(tick)),
});

describe('the run of lines round a number', () => {
  test('ends where two lines in a row are missing, and not where one is', () => {
    expect(runAround(seen([-20, -20], [12, 13]), 0)).toEqual([-38, 11]);
    expect(runAround(seen([-20, -19], [12, 13]), 0)).toEqual([-18, 11]);
  });

  test('is none where the number stands on no line', () => {
    expect(runAround(seen([-10, 10]), 0)).toBeNull();
  });
});

describe('the stretches that may be read', () => {
  test('run over all lines seen, half a line’s width beyond the last', () => {
    expect(readableStretches(seven, seen())).toEqual([{ from: -38.4, to: 38.4 }]);
  });

  test('a gap of 4 hidden lines doesn’t part them, nor one of 5', () => {
    expect(readableStretches(seven, seen([1, 4]))).toHaveLength(1);
    expect(readableStretches(seven, seen([1, 5]))).toHaveLength(1);
  });

  test('a gap of 9 hidden lines does: the following may have slipped there', () => {
    expect(readableStretches(seven, seen([1, 9]))).toEqual([
      { from: -38.4, to: 0.4 },
      { from: 9.6, to: 38.4 },
    ]);
    expect(readableStretches(seven, seen([1, 6]))).toHaveLength(2);
  });

  test('beyond a gap without a number of its own nothing may be read', () => {
    expect(readableStretches(only(-30, -20, -10), seen([1, 9]))).toEqual([
      { from: -38.4, to: 0.4 },
    ]);
  });

  test('a stretch of fewer than five lines is none', () => {
    expect(readableStretches(seven, seen([1, 9], [14, 38]))).toEqual([{ from: -38.4, to: 0.4 }]);
    expect(readableStretches(seven, seen([1, 9], [15, 38]))).toHaveLength(2);
  });

  test('lines more than one number past the last agreeing one aren’t vouched for', () => {
    expect(readableStretches(only(-30, -20), seen())).toEqual([{ from: -38.4, to: -9.6 }]);
    expect(readableStretches(only(30), seen())).toEqual([{ from: 19.6, to: 38.4 }]);
  });

  test('past a number that says something else another scale may have begun: cut off before it', () => {
    const claim = { ...only(-30, -20, -10, 0, 10), contrary: [placed(20, 3), placed(30, 4)] };
    expect(readableStretches(claim, seen())).toEqual([{ from: -38.4, to: 10.4 }]);
    const before = { ...only(0, 10, 20, 30), contrary: [placed(-20, 4)] };
    expect(readableStretches(before, seen())).toEqual([{ from: -0.4, to: 38.4 }]);
  });

  test('misread numbers between agreeing ones cut nothing off', () => {
    const within = { ...only(-30, -20, 10, 20, 30), contrary: [placed(-10, 5), placed(0, 6)] };
    expect(readableStretches(within, seen())).toEqual([{ from: -38.4, to: 38.4 }]);
  });

  test('without numbers or without lines there are none', () => {
    expect(readableStretches(only(), seen())).toEqual([]);
    expect(readableStretches(seven, seen([-38, 38]))).toEqual([]);
  });
});

describe('a line slipped behind hidden ones', () => {
  const stretches = [
    { from: -60, to: -50 },
    { from: -30, to: 20 },
    { from: 40, to: 60 },
  ];

  const alike = () => 0;
  const [far, middle] = [stretches[0] as Stretch, stretches[1] as Stretch];

  test('so is one whose numbers lie otherwise to their lines: the pitch took up the line missed', () => {
    const kept = (tick: number) => {
      const agreeing = [placed(tick, 15), placed(-9.7, 19), placed(10.2, 21)];
      const claim = { ...seven, agreeing };
      return withoutSlips(stretches, alike, (one, next) => numbersApart(claim, one, next));
    };
    expect(kept(-49.7)).toEqual(stretches);
    expect(kept(-50.6)).toEqual(stretches.slice(1));
  });

  test('numbers of other lengths, or none, say nothing of that', () => {
    const other = { ...seven, agreeing: [placed(-50.6, 15), placed(-110, 9), placed(-9.7, 100)] };
    expect(numbersApart(other, far, middle)).toBe(0);
    expect(numbersApart(only(0), far, middle)).toBe(0);
  });

  test('a stretch that goes on a whole line off is dropped, and what lies behind it', () => {
    expect(withoutSlips(stretches, (tick) => (tick < -40 ? 1 : 0), alike)).toEqual(
      stretches.slice(1),
    );
    const twice = [...stretches, { from: 80, to: 90 }];
    expect(withoutSlips(twice, (tick) => (tick > 30 ? 1 : 0), alike)).toEqual(
      stretches.slice(0, 2),
    );
  });

  test('a gentle bend over a gap drops nothing', () => {
    expect(withoutSlips(stretches, (tick) => tick / 100, alike)).toEqual(stretches);
    expect(withoutSlips([], () => 0, alike)).toEqual([]);
  });
});

describe('lines seen one by one', () => {
  const tape: DrawnTape = { width: 800, height: 200, pitchPx: 10, lineLength: centimetreLines };

  function linesOf(drawn: DrawnTape) {
    const [work, { frame, pitch }] = [drawTape(drawn), truthOf(drawn)];
    const pattern = tickPattern(work, frame, pitch, [-35, 35])!;
    const { first, there } = linesSeen(work, { frame, pitch, range: [-35, 35], pattern });
    return new Set([...there.keys()].filter((i) => there[i]).map((i) => first + i));
  }

  test('every line of a whole row is there, and some past its ends', () => {
    const ticks = linesOf(tape);
    for (let tick = -38; tick <= 38; tick++) expect(ticks.has(tick), `${tick}`).toBe(true);
  });

  test('the hidden ones are not, on dark print and on light', () => {
    // Length −2 ends before the line begins.
    const hidden = (tick: number) => tick >= 4 && tick <= 12;
    const lineLength = (tick: number) => (hidden(tick) ? -2 : centimetreLines(tick));
    for (const light of [false, true]) {
      const ticks = linesOf({ ...tape, lineLength, light });
      for (let tick = -35; tick <= 35; tick++)
        expect(ticks.has(tick), `${tick}`).toBe(!hidden(tick));
    }
  });

  test('those outside the picture are not', () => {
    const ticks = linesOf({ ...tape, width: 600 });
    for (const tick of [-38, -31, 31, 38]) expect(ticks.has(tick), `${tick}`).toBe(false);
    for (const tick of [-29, 0, 29]) expect(ticks.has(tick), `${tick}`).toBe(true);
  });
});
