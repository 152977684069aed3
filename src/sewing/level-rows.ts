import type { Length } from '../lengths/length.ts';
import {
  type ClosuresInput,
  keptPitch,
  MOST_CLOSURES,
  tooClose,
  wholeRow,
} from './closure-input.ts';
import type { Layout } from './closure-row.ts';
import { evenCount } from './even.ts';
import { keptThroughLevel, movedEnds, roomAtLevel } from './moved-ends.ts';
import { type Outcome, refused } from './problem.ts';
import { joined, twoPitches, twoPitchesWithin } from './two-pitches.ts';

/** Both ways of meeting a level; two pitches are none where they cannot be had. */
export interface LevelRows {
  twoPitches: Layout | undefined;
  movedEnds: Layout;
}

/** Meets a level in both ways, as the spacing rule asks. */
export function levelRows(input: ClosuresInput, level: Length): Outcome<LevelRows> {
  const pitch = keptPitch(input.rule);
  if (pitch !== undefined) return keeping(input, level, pitch);
  if (input.rule.by === 'widest') return within(input, level, input.rule.pitch);
  const row = wholeRow(input);
  const count = evenCount(input, row);
  return {
    ok: true,
    value: {
      twoPitches: twoPitches(row, level, count),
      movedEnds: movedEnds(row, level, count, input.opening),
    },
  };
}

/** A pitch that is kept on both sides of the level leaves no choice. */
function keeping(input: ClosuresInput, level: Length, pitch: Length): Outcome<LevelRows> {
  const row = wholeRow(input);
  const { above, below } = roomAtLevel(row, level, pitch);
  if (above + 1 + below > MOST_CLOSURES) return refused(tooClose(input));
  const moved = keptThroughLevel(row, level, pitch);
  return { ok: true, value: { twoPitches: undefined, movedEnds: moved } };
}

/** The fewest marks on each side, and the fewest in one pitch, whose pitch is not wider. */
function within(input: ClosuresInput, level: Length, widest: Length): Outcome<LevelRows> {
  const row = wholeRow(input);
  const { above, below } = twoPitchesWithin(row, level, widest);
  const count = evenCount(input, row);
  if (Math.max(above + 1 + below, count) > MOST_CLOSURES) return refused(tooClose(input));
  return {
    ok: true,
    value: {
      twoPitches: joined(row, level, above, below),
      movedEnds: movedEnds(row, level, count, input.opening),
    },
  };
}
