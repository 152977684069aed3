import { type ExactLength, exactLength, type Length, length } from '../../lengths/length.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';
import type { Mark, Run } from '../run.ts';
import { TUCK_TAKES } from '../sources/tucks.ts';
import {
  MOST_TUCKS,
  type TucksInput,
  tuckedRoom,
  tuckProblems,
  wantedSpacing,
} from './tuck-input.ts';

/** Lines that each tuck is marked with: its two stitch lines, its fold between them. */
export const TUCK_LINES = 3;

/** So many tucks on a width. */
export interface Tucking {
  count: number;
  /** From stitch line to stitch line; undefined of one tuck. */
  spacing: ExactLength | undefined;
  /** What is cut, with its seams. */
  cut: Length;
}

export interface Tucks extends Tucking {
  /** Clear between neighbours, at its least: less than nothing where one covers the next stitch line. */
  gap: ExactLength | undefined;
  /** From the last stitch line of a group to the first of the next; undefined without groups. */
  between: ExactLength | undefined;
  /** Cloth in all tucks: what letting them out gains. */
  taken: Length;
  /** One tuck fewer and one more, where there can be. */
  beside: readonly Tucking[];
  /** Finished places of the stitch lines, from the first edge. */
  places: readonly ExactLength[];
  /** From the cut end: of each tuck its stitch line, its fold, and the line it is stitched to. */
  run: Run;
}

/**
 * Tucks over a finished width L between edges e₁ and e₂: gaps k are (L − e₁ − e₂) ÷ spacing, the
 * nearest whole number, or as told; tucks are k + 1, each (L − e₁ − e₂) ÷ k from the next. Cut is
 * L + 2 × all depths. In the cloth the lines of tuck i lie where they lie finished, and as far on as
 * all tucks before it take.
 *
 * Source: National Instructional Media Institute (Government of India), CITS Dress Making, Trade
 * Practical, vol. 2, 2024, page 209; groups and tucks that grow are derived here.
 *
 * Problems: a length of nothing, edges that leave no room, over 300 tucks, groups that don't fit, a tuck
 * that lies over its edge.
 */
export function tucks(input: TucksInput): Outcome<Tucks> {
  return answerUnless(tuckProblems(input), () => {
    const count = countOf(input);
    const over = overEdge(input, count);
    if (over) return refused(over);
    const { spread, seam } = input;
    const between = betweenOf(input);
    const tucking = tucked(input, count);
    const places = placesOf(input, tucking, between);
    return {
      ok: true,
      value: {
        ...tucking,
        gap: leastGap(input, tucking, between),
        between,
        taken: takenBy(input, count),
        beside: spread.by === 'groups' ? [] : besideOf(input, count),
        places,
        run: {
          datum: 'cut-end',
          length: tucking.cut,
          marks: places.flatMap((place, i) => linesOf(input, i, exactLength(seam + place))),
        },
      },
    };
  });
}

/** How deep a tuck is, from its stitch line to its fold; they are counted from 0. */
export function depthOf(input: Deepening, i: number): Length {
  const { depth, step } = input;
  return length(depth + (i % cycleOf(input)) * step);
}

type Deepening = Pick<TucksInput, 'depth' | 'step' | 'spread' | 'anew'>;

/** After how many tucks their depths begin anew. */
function cycleOf({ spread, anew }: Deepening): number {
  return anew && spread.by === 'groups' ? spread.each : Number.POSITIVE_INFINITY;
}

/** What is clear between neighbours where that is least: of groups that begin anew their ends lie apart. */
function leastGap(
  input: TucksInput,
  { count, spacing }: Tucking,
  between: ExactLength | undefined,
): ExactLength | undefined {
  if (spacing === undefined) return undefined;
  const { lies, spread } = input;
  if (!input.anew || spread.by !== 'groups' || between === undefined) {
    return exactLength(spacing - depthOf(input, lies === 'last' ? count - 2 : count - 1));
  }
  const { each } = spread;
  const [within, out] = lies === 'last' ? [each - 2, each - 1] : [each - 1, 0];
  return exactLength(Math.min(spacing - depthOf(input, within), between - depthOf(input, out)));
}

/** All that so many of the first tucks take. */
function takenBy(input: Deepening, count: number): Length {
  const { depth, step } = input;
  const cycle = Math.min(cycleOf(input), Math.max(1, count));
  // Of whole numbers n × (n − 1) is even.
  const grown = (n: number) => n * (n - 1) * step;
  const whole = Math.floor(count / cycle);
  return length(
    TUCK_TAKES.value * count * depth + whole * grown(cycle) + grown(count - whole * cycle),
  );
}

function countOf(input: TucksInput): number {
  const { spread, depth } = input;
  if (spread.by === 'count') return spread.count;
  if (spread.by === 'groups') return spread.groups * spread.each;
  const room = tuckedRoom(input);
  if (room === 0) return 1;
  const wanted = wantedSpacing(spread, depth);
  // Both are whole: a quotient of whole numbers is whole only where it is.
  const fewer = Math.floor(room / wanted);
  const rest = room - fewer * wanted;
  const more = { nearest: 2 * rest > wanted, 'no-closer': false, 'no-wider': rest > 0 }[spread.fit];
  return Math.min(MOST_TUCKS, Math.max(1, fewer + (more ? 1 : 0)) + 1);
}

function tucked(input: TucksInput, count: number): Tucking {
  const { spread, finished, seam } = input;
  const even = count === 1 ? undefined : exactLength(tuckedRoom(input) / (count - 1));
  const spacing = spread.by === 'groups' ? spread.spacing : even;
  return { count, spacing, cut: length(finished + takenBy(input, count) + 2 * seam) };
}

function besideOf(input: TucksInput, count: number): Tucking[] {
  const room = tuckedRoom(input) > 0;
  return [count - 1, count + 1]
    .filter((n) => n > 1 && n <= MOST_TUCKS && room && !overEdge(input, n))
    .map((n) => tucked(input, n));
}

function betweenOf(input: TucksInput): ExactLength | undefined {
  const { spread } = input;
  if (spread.by !== 'groups') return undefined;
  const within = spread.groups * (spread.each - 1) * spread.spacing;
  return exactLength((tuckedRoom(input) - within) / (spread.groups - 1));
}

function placesOf(
  input: TucksInput,
  { count }: Tucking,
  between: ExactLength | undefined,
): ExactLength[] {
  const { spread, first } = input;
  return Array.from({ length: count }, (_, i) => {
    if (spread.by === 'groups' && between !== undefined) {
      const group = Math.floor(i / spread.each);
      const gaps = i - group;
      return exactLength(first + gaps * spread.spacing + group * between);
    }
    return exactLength(count === 1 ? first : first + (i * tuckedRoom(input)) / (count - 1));
  });
}

function linesOf(input: TucksInput, i: number, at: ExactLength): Mark[] {
  const [before, depth] = [takenBy(input, i), depthOf(input, i)];
  const kinds = ['stitch', 'fold', 'stitch'] as const;
  return kinds.map((kind, line): Mark => {
    const taken = exactLength(before + line * depth);
    const label = String(TUCK_LINES * i + line + 1);
    return { at: exactLength(at + taken), taken, label, kind };
  });
}

/** The outermost tuck, where it is deeper than the edge it lies to is wide. */
function overEdge(input: TucksInput, count: number): Problem | undefined {
  const { lies, first, last } = input;
  const least = depthOf(input, lies === 'first' ? 0 : count - 1);
  // One tuck alone lies towards all that is left of the width.
  const edge = lies === 'first' ? first : count === 1 ? length(input.finished - first) : last;
  return edge < least ? { kind: 'too-short', field: lies, least, given: edge } : undefined;
}
