import { exactLength, type Length } from '../../lengths/length.ts';
import { type Outcome, refused } from '../problem.ts';
import {
  type ClosuresInput,
  keptPitch,
  MOST_CLOSURES,
  tooClose,
  wholeRow,
} from './closure-input.ts';
import { type Layout, type Place, planned } from './closure-row.ts';
import { fewestWithin, lengthOf, mostAt, pitchOf, placesIn, type Segment } from './segment.ts';

/** A row with nothing sewn and no level to meet. */
export function evenRow(input: ClosuresInput): Outcome<Layout> {
  const row = wholeRow(input);
  const kept = keptPitch(input.rule);
  const count = kept === undefined ? evenCount(input, row) : mostAt(row, kept);
  if (count > MOST_CLOSURES) return refused(tooClose(input));
  return { ok: true, value: kept === undefined ? even(row, count) : fromTop(row, kept, count) };
}

/** How many marks the rule asks for when the pitch may give way: at least one. */
export function evenCount({ rule }: ClosuresInput, row: Segment): number {
  if (rule.by === 'count') return rule.count;
  return rule.by === 'widest' ? Math.max(1, fewestWithin(row, rule.pitch)) : 1;
}

function even(row: Segment, count: number): Layout {
  return {
    places: placesIn(row, count).map((at): Place => ({ at, kind: 'closure' })),
    stretches: planned(count - 1, pitchOf(row, count)),
  };
}

/** The pitch kept exactly, from the top; the remainder lies below the last mark. */
function fromTop(row: Segment, pitch: Length, count: number): Layout {
  const places = Array.from({ length: count }, (_, i): Place => {
    const at = exactLength((2 * row.from + (row.head + 2 * i) * pitch) / 2);
    return { at, kind: 'closure' };
  });
  const below = lengthOf(row) - (count - 1 + row.head) * pitch;
  return {
    places,
    stretches: planned(count - 1, pitch),
    remainder: { above: exactLength(0), below: exactLength(below) },
  };
}
