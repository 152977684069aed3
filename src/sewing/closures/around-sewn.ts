import type { ExactLength, Length } from '../../lengths/length.ts';
import { type Outcome, refused } from '../problem.ts';
import { endsTooLong } from './closure-checks.ts';
import {
  type ClosuresInput,
  itemWidth,
  keptPitch,
  MOST_CLOSURES,
  tooClose,
  wholeRow,
} from './closure-input.ts';
import type { Layout } from './closure-row.ts';
import {
  type FixedMarks,
  fixMarks,
  type Held,
  mostIn,
  offLevel,
  respaced,
  shareNearest,
  shareOut,
  shareWithin,
  sumOf,
  takesLevel,
  wantsEnd,
} from './respacing.ts';
import { lengthOf, pitchOf } from './segment.ts';

/** What was asked for and cannot be had around what is sewn. */
export type GivesWay = 'level' | 'top' | 'bottom' | 'gap';

/** A row around what is sewn, and how far the mark nearest to the level is from it. */
export interface SewnRow {
  layout: Layout;
  level: { at: Length; off: ExactLength } | undefined;
  givesWay: readonly GivesWay[];
}

/**
 * Places what is still to be sewn around what is, as the spacing rule asks.
 *
 * The level, the first and last place and the least gap are kept; a sewn mark near
 * enough serves the level or an end as made. What cannot be had gives way, and is
 * named: a level or an end that a sewn mark leaves no room for; where marks are too
 * few, the end with the shorter way to go first, the level last; the gap where so
 * many marks leave less. Items that would overlap are refused.
 */
export function aroundSewn(input: ClosuresInput, sewn: readonly Length[]): Outcome<SewnRow> {
  const width = itemWidth(input);
  const pitch = pitchAsked(input);
  const least = width === undefined ? 0 : width + (input.leastGap ?? 0);
  const asked = { pitch, least };
  const kept = placed(input, sewn, asked);
  if (kept) return finished(input, kept, []);
  // The gap gives way, then what overlaps: `spaceClosures` refuses that and says by how much.
  const tight = placed(input, sewn, { pitch, least: width ?? 0 });
  return finished(input, tight ?? placed(input, sewn, { pitch, least: 0 }), ['gap']);
}

interface Placed {
  marks: FixedMarks;
  counts: readonly number[];
  bare: readonly GivesWay[];
}

function placed(input: ClosuresInput, sewn: readonly Length[], held: Held): Placed | undefined {
  const { level, rule } = input;
  const more = rule.by === 'count' ? rule.count - sewn.length : Infinity;
  const takes = level === undefined ? undefined : takesLevel(level, sewn, held);
  const onLevel = takes === 'free' && more > 0;
  const marks = fixMarks(wholeRow(input), sewn, onLevel ? level : undefined);
  const most = marks.segments.map((segment) => mostIn(segment, held.least));
  const wanted = marks.segments.map((segment) => wantsEnd(segment, sewn, held));
  const first = endsFirst(marks, wanted, most, more - (onLevel ? 1 : 0));
  const counts = shares(input, marks, more - (onLevel ? 1 : 0), first, most);
  if (!counts) return undefined;
  const bare = (i: number, end: GivesWay) => (wanted[i] && !counts[i] ? [end] : []);
  return {
    marks,
    counts,
    bare: [
      ...(takes !== undefined && takes !== 'served' && !onLevel ? (['level'] as const) : []),
      ...bare(0, 'top'),
      ...bare(marks.segments.length - 1, 'bottom'),
    ],
  };
}

/** One mark for each end that wants one and has room, while there are any: the longer segment first. */
function endsFirst(
  { segments }: FixedMarks,
  wanted: readonly boolean[],
  most: readonly number[],
  more: number,
): number[] {
  const ends = segments
    .map((segment, i) => ({ i, long: lengthOf(segment) }))
    .filter(({ i }) => wanted[i] && most[i]! > 0)
    .sort((a, b) => b.long - a.long)
    .slice(0, Math.max(0, Math.min(more, 2)));
  return segments.map((_, i) => (ends.some((end) => end.i === i) ? 1 : 0));
}

/** How many marks each segment gets; undefined when there is no room for them. */
function shares(
  { rule }: ClosuresInput,
  { segments }: FixedMarks,
  more: number,
  first: readonly number[],
  most: readonly number[],
): readonly number[] | undefined {
  if (rule.by === 'count') return shareOut(segments, more, first, most);
  const asked =
    rule.by === 'widest'
      ? shareWithin(segments, rule.pitch)
      : shareNearest(segments, keptPitch(rule) ?? 0);
  return asked.map((count, i) => Math.max(count, first[i]!));
}

function finished(
  input: ClosuresInput,
  found: Placed | undefined,
  gap: readonly GivesWay[],
): Outcome<SewnRow> {
  // Only ends that meet leave no room at all.
  if (!found) return refused(endsTooLong(input.opening, input.opening));
  const { marks, counts, bare } = found;
  if (sumOf(counts) + marks.fixed.length > MOST_CLOSURES) return refused(tooClose(input));
  const layout = respaced(marks, counts);
  const at = input.level;
  const level = at === undefined ? undefined : { at, off: offLevel(layout.places, at) };
  return { ok: true, value: { layout, level, givesWay: [...bare, ...gap] } };
}

/** The pitch the row would have with nothing sewn. */
function pitchAsked(input: ClosuresInput): number {
  const { rule } = input;
  if (rule.by === 'widest') return rule.pitch;
  if (rule.by === 'count') return pitchOf(wholeRow(input), rule.count);
  return keptPitch(rule) ?? 0;
}
