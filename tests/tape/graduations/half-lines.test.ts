import { describe, expect, test } from 'vitest';
import { hasHalfLines } from '../../../src/tape/graduations/half-lines.ts';
import { centimetreLines, type DrawnTape, drawTape, truthOf } from '../made/drawn-tape.ts';

const PITCH_PX = 12;

/** Millimetres, with half ones from one graduation to another: drawn in halves, followed in whole ones. */
function ruled(from: number, to: number, change: Partial<DrawnTape> = {}) {
  const tape: DrawnTape = {
    width: 800,
    height: 160,
    pitchPx: PITCH_PX / 2,
    lineLength: (half) => {
      if (half % 2 === 0) return 2 * centimetreLines(half / 2);
      return half > 2 * from && half < 2 * to ? 0.6 : -2;
    },
    ...change,
  };
  const { frame, pitch } = truthOf({ ...tape, pitchPx: PITCH_PX });
  return hasHalfLines(drawTape(tape), frame, pitch, [-30, 30], { zoneFrom: -0.5, zoneTo: 0.8 });
}

describe('lines half-way between those followed', () => {
  test('are found where the first centimetres have them', () => {
    expect(ruled(-28, -12)).toBe(true);
    expect(ruled(10, 30)).toBe(true);
    expect(ruled(-30, 30)).toBe(true);
  });

  test('turned, sheared, and light on dark too', () => {
    expect(ruled(-28, -12, { angle: 0.1, shear: 0.15 })).toBe(true);
    expect(ruled(-28, -12, { light: true })).toBe(true);
  });

  test('are not where there are none, or only a few, as dirt and a pin would be', () => {
    expect(ruled(0, 0)).toBe(false);
    expect(ruled(0, 0, { light: true })).toBe(false);
    expect(ruled(3, 11)).toBe(false);
  });
});
