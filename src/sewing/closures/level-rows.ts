import type { Length } from '../../lengths/length.ts';
import { type Outcome, refused } from '../problem.ts';
import {
  type ClosuresInput,
  itemWidth,
  keptPitch,
  MOST_CLOSURES,
  tooClose,
  wholeRow,
} from './closure-input.ts';
import type { Layout } from './closure-row.ts';
import { evenCount } from './even.ts';
import { keptClear, keptThroughLevel, movedEnds, roomAtLevel } from './moved-ends.ts';
import { joined, twoPitches, twoPitchesWithin } from './two-pitches.ts';

/** Both ways of meeting a level; none where it cannot be had. */
export interface LevelRows {
  twoPitches: Layout | undefined;
  movedEnds: Layout | undefined;
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
      movedEnds: movedEnds(input, row, level, count),
    },
  };
}

/** A pitch that is kept on both sides of the level leaves no choice. */
function keeping(input: ClosuresInput, level: Length, pitch: Length): Outcome<LevelRows> {
  const row = wholeRow(input);
  const clear = keptClear(row, level, input.opening, itemWidth(input) ?? 0);
  const { above, below } = roomAtLevel(clear, level, pitch);
  if (above + 1 + below > MOST_CLOSURES) return refused(tooClose(input));
  const moved = keptThroughLevel(row, clear, level, pitch);
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
      movedEnds: movedEnds(input, row, level, count),
    },
  };
}
