import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches, length, mm, toInches, ZERO } from '../../../src/lengths/length.ts';
import { otherSide } from '../../../src/sewing/pieces/other-side.ts';
import {
  HOOK_PITCH,
  HOOK_SET_BACK_EIGHTH,
  HOOK_SET_BACK_QUARTER,
} from '../../../src/sewing/sources/hooks.ts';
import { answer, byCount, opening, planFor, problems, typed } from '../closures/closures-cases.ts';

const { run } = planFor(opening(mm(463), byCount(7)));

// New Mexico State University, Guide C-232, and School Sewing §133: hooks 1/8 in back, the eye
// projecting as far. Butterick, The New Dressmaker (1921), ch. 24, and Text-Book on Domestic Art:
// 1/4 in. They conflict; with either, the edges just meet.
test('an eye projects as far as its hook is set back', () => {
  for (const [published, back] of [
    [HOOK_SET_BACK_EIGHTH, 1 / 8],
    [HOOK_SET_BACK_QUARTER, 1 / 4],
  ] as const) {
    expect(toInches(published.value)).toBe(back);
    const eyes = answer(otherSide(run, { setBack: published.value, lap: ZERO }));
    expect(toInches(eyes.setBack)).toBe(-back);
  }
});

// Butterick, The New Dressmaker (1921), p. 117.
test('hooks on a waist closing are 1 1/4 in apart', () => {
  expect(HOOK_PITCH.value).toBe(inches(1.25));
});

test('a lap shifts across the edge, never along it', () => {
  const under = answer(otherSide(run, { setBack: mm(20), lap: mm(35) }));
  expect(under.setBack).toBe(mm(15));
  expect(under.along).toBe(0);
  expect(under.run).toEqual(run);
});

test('carried over and back again it is where it was', () => {
  fc.assert(
    fc.property(typed(0, 50), typed(0, 50), (setBack, lap) => {
      const there = answer(otherSide(run, { setBack, lap }));
      expect(there.run).toEqual(run);
      if (there.setBack < 0) return;
      const back = otherSide(there.run, { setBack: length(there.setBack), lap });
      expect(answer(back).setBack).toBe(setBack);
    }),
  );
});

test('a set-back or lap below nothing is a problem', () => {
  const wrong = problems(otherSide(run, { setBack: length(-1), lap: length(-1) }));
  expect(wrong.map(({ field }) => field)).toEqual(['setBack', 'lap']);
});
