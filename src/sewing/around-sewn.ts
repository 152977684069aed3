import type { ExactLength, Length } from '../lengths/length.ts';
import { endsTooLong } from './closure-checks.ts';
import {
  type ClosuresInput,
  keptPitch,
  MOST_CLOSURES,
  tooClose,
  wholeRow,
} from './closure-input.ts';
import type { Layout } from './closure-row.ts';
import { type Outcome, refused } from './problem.ts';
import {
  type FixedMarks,
  fixMarks,
  offLevel,
  respaced,
  shareNearest,
  shareOut,
  shareWithin,
} from './respacing.ts';
import { pitchOf } from './segment.ts';

/** A row around what is sewn, and how far the mark that serves the level is from it. */
export interface SewnRow {
  layout: Layout;
  off: ExactLength | undefined;
}

/** Places what is still to be sewn around what is, as the spacing rule asks. */
export function aroundSewn(input: ClosuresInput, sewn: readonly Length[]): Outcome<SewnRow> {
  const { level } = input;
  const marks = fixMarks(wholeRow(input), sewn, level, pitchAsked(input));
  const counts = shares(input, marks);
  if (!counts.ok) return counts;
  const total = counts.value.reduce((sum, count) => sum + count, marks.fixed.length);
  if (total > MOST_CLOSURES) return refused(tooClose(input));
  const off = level === undefined ? undefined : offLevel(marks, level);
  return { ok: true, value: { layout: respaced(marks, counts.value), off } };
}

/** The pitch the row would have with nothing sewn. */
function pitchAsked(input: ClosuresInput): number {
  const { rule } = input;
  if (rule.by === 'widest') return rule.pitch;
  if (rule.by === 'count') return pitchOf(wholeRow(input), rule.count);
  return keptPitch(rule) ?? 0;
}

/** How many marks each segment gets. */
function shares(input: ClosuresInput, { fixed, segments }: FixedMarks): Outcome<readonly number[]> {
  const { rule, opening } = input;
  if (rule.by === 'widest') return { ok: true, value: shareWithin(segments, rule.pitch) };
  const kept = keptPitch(rule);
  if (rule.by !== 'count') return { ok: true, value: shareNearest(segments, kept ?? 0) };
  const more = rule.count - fixed.length;
  if (more < 0) {
    return refused({ kind: 'too-few', field: 'count', least: fixed.length, given: rule.count });
  }
  const counts = shareOut(segments, more);
  const { from, to } = wholeRow(input);
  return counts
    ? { ok: true, value: counts }
    : refused(endsTooLong(opening, opening - (to - from)));
}
