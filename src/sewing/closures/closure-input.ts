import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import type { Problem } from '../problem.ts';
import { lengthOf, type Segment } from './segment.ts';

/** The most closures one opening may carry. */
export const MOST_CLOSURES = 2000;

/** How the spacing is asked for. A gap is clear, between items of a width; pitches run centre to centre. */
export type SpacingRule =
  | { by: 'count'; count: number }
  | { by: 'widest'; pitch: Length }
  | { by: 'exact'; pitch: Length }
  | { by: 'gap'; gap: Length; width: Length };

/**
 * Where first and last stand: at distances of their own, or a whole or a half
 * space from the edges of the opening.
 */
export type Ends = 'given' | 'whole' | 'half';

/** Which way round a level is met: a pitch above it and another below, or one pitch and other ends. */
export type LevelBy = 'two-pitches' | 'moved-ends';

/** An opening to be closed. Every length is in 1/8000 mm, places from the top edge. */
export interface ClosuresInput {
  opening: Length;
  ends: Ends;
  /** From the top edge to the first; read only when the ends are given. */
  top: Length;
  /** From the last to the bottom edge; read only when the ends are given. */
  bottom: Length;
  rule: SpacingRule;
  /** A place that must carry a mark, from the top edge. */
  level?: Length | undefined;
  /** Default 'two-pitches'. A pitch that is kept exactly always moves the ends. */
  levelBy?: LevelBy | undefined;
  /** Places measured on the work, in any order; they never move. */
  sewn?: readonly Length[] | undefined;
  /** The least clear gap that what is placed around sewn ones is to keep; read only with a width. */
  leastGap?: Length | undefined;
  /** Places of another row that this one follows, in order; then nothing of it is spaced. */
  follow?: readonly ExactLength[] | undefined;
  /** Width of one item, to show the clear gap. The gap rule has its own. */
  width?: Length | undefined;
}

/** The row from first to last as one segment. */
export function wholeRow({ opening, ends, top, bottom }: ClosuresInput): Segment {
  if (ends === 'given') return { from: top, to: opening - bottom, head: 0, tail: 0 };
  const share = ends === 'whole' ? 2 : 1;
  return { from: 0, to: opening, head: share, tail: share };
}

/** The pitch a rule keeps exactly, if it keeps one. */
export function keptPitch(rule: SpacingRule): Length | undefined {
  if (rule.by === 'exact') return rule.pitch;
  return rule.by === 'gap' ? ((rule.gap + rule.width) as Length) : undefined;
}

/** The field that a pitch was typed in. */
export function pitchField(rule: SpacingRule): 'pitch' | 'gap' {
  return rule.by === 'gap' ? 'gap' : 'pitch';
}

/** The width of one item, wherever it was given. */
export function itemWidth({ rule, width }: ClosuresInput): Length | undefined {
  return rule.by === 'gap' ? rule.width : width;
}

/**
 * More than `MOST_CLOSURES` would be needed. The least pitch, or gap, that is
 * named surely works: the very least for a plain row; with a level or sewn
 * marks a little more, since each part of the row rounds its count up.
 */
export function tooClose(input: ClosuresInput): Problem {
  const row = wholeRow(input);
  const fixed = (input.sewn?.length ?? 0) + (input.level === undefined ? 0 : 1);
  const plain = lengthOf(row) / (MOST_CLOSURES - 1 + row.head);
  const parts = input.opening / Math.max(1, MOST_CLOSURES - 2 - fixed);
  const least = (fixed > 0 ? parts : plain) - (input.rule.by === 'gap' ? input.rule.width : 0);
  const field = pitchField(input.rule);
  return { kind: 'too-close', field, least: exactLength(least), most: MOST_CLOSURES };
}
