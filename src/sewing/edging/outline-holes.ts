import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { mustBeCount, mustBePositive, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';
import type { Mark, Run } from '../run.ts';

const MOST_HOLES = 2000;
const MOST_SIDES = 24;

/** How holes are shared out: as near to a pitch as goes, or just so many. */
export type HoleRule = { by: 'pitch'; pitch: Length } | { by: 'count'; count: number };

/** A closed outline; holes run so far inside it as the margin says. Lengths in 1/8000 mm. */
export type Outline =
  | { shape: 'rectangle'; wide: Length; high: Length; margin: Length }
  | { shape: 'regular'; sides: number; side: Length; margin: Length }
  /** Side by side, with the corner after each, in degrees inside it; over 180 it goes in. */
  | { shape: 'free'; sides: readonly Length[]; corners: readonly number[]; margin: Length }
  | { shape: 'circle'; across: Length; margin: Length };

/** One side of the line of holes. */
export interface HoleSide {
  line: ExactLength;
  spaces: number;
  pitch: ExactLength;
}

export interface OutlineHoles {
  /** From one corner to the next, in order; of a circle one. */
  sides: readonly HoleSide[];
  count: number;
  /** Round the line of holes from the first corner, whose hole both its sides share. */
  run: Run;
  /** The numbers of the holes in corners; none of a circle. */
  corners: readonly number[];
}

/**
 * Holes round a closed outline: each side's line is shorter by margin × cot(φ ÷ 2) at both its corners, and
 * has as many spaces as come nearest to the pitch, so that a hole lies in every corner. By number, each
 * side gets one space, and every further one goes where the pitch is greatest: no other sharing has a
 * smaller greatest pitch (derived here).
 *
 * Problems: lengths of nothing, a margin that meets itself, fewer holes than corners, more than 2000.
 */
export function outlineHoles(outline: Outline, rule: HoleRule): Outcome<OutlineHoles> {
  return answerUnless([...outlineProblems(outline), ...ruleProblems(rule)], () => {
    const lines = linesOf(outline);
    const least = Math.min(...lines);
    if (least <= 0) return refused(marginProblem(outline));
    const spaces = spacesOf(lines, rule);
    if (!spaces.ok) return spaces;
    return { ok: true, value: around(lines, spaces.value, outline.shape !== 'circle') };
  });
}

/** The lines of holes: of a rectangle its top first, then on round. */
function linesOf(outline: Outline): ExactLength[] {
  switch (outline.shape) {
    case 'rectangle': {
      const { wide, high, margin } = outline;
      const [one, other] = [exactLength(wide - 2 * margin), exactLength(high - 2 * margin)];
      return [one, other, one, other];
    }
    case 'regular': {
      const line = exactLength(outline.side - 2 * outline.margin * cornerTakes(outline.sides));
      return Array.from({ length: outline.sides }, () => line);
    }
    case 'free':
      return outline.sides.map((side, i) =>
        exactLength(side - outline.margin * endsTake(outline.corners, i)),
      );
    case 'circle':
      return [exactLength(Math.PI * (outline.across - 2 * outline.margin))];
  }
}

/** What each corner takes of a side's line, in margins: cot(φ ÷ 2) = tan(180° ÷ sides). */
export function cornerTakes(sides: number): number {
  return Math.tan(Math.PI / sides);
}

/** What the corners at both ends of a side take of its line, in margins: cot(φ ÷ 2) each; one that goes in lengthens it. */
export function endsTake(corners: readonly number[], i: number): number {
  const before = corners[(i + corners.length - 1) % corners.length] ?? 180;
  return cotOfHalf(before) + cotOfHalf(corners[i] ?? 180);
}

function cotOfHalf(degrees: number): number {
  return 1 / Math.tan((degrees * Math.PI) / 360);
}

/** The corners of an outline laid out from its first side, which runs to the right, in 1/8000 mm; the first again at the end. */
export function laidOut({
  sides,
  corners,
}: Pick<FreeOutline, 'sides' | 'corners'>): readonly (readonly [number, number])[] {
  let [x, y, turned] = [0, 0, 0];
  const places: [number, number][] = [[0, 0]];
  for (const [i, side] of sides.entries()) {
    x += side * Math.cos(turned);
    y += side * Math.sin(turned);
    turned += ((180 - (corners[i] ?? 180)) * Math.PI) / 180;
    places.push([x, y]);
  }
  return places;
}

type FreeOutline = Extract<Outline, { shape: 'free' }>;

/** How many spaces each line gets. Problems: too many, fewer than there are lines. */
function spacesOf(lines: readonly ExactLength[], rule: HoleRule): Outcome<number[]> {
  if (rule.by === 'count') {
    return answerUnless(mustBeCount('count', rule.count, lines.length, MOST_HOLES), () => ({
      ok: true,
      value: shared(lines, rule.count),
    }));
  }
  const all = lines.reduce((sum, line) => sum + line, 0);
  const least = exactLength(all / MOST_HOLES);
  if (rule.pitch < least) {
    return refused({ kind: 'too-close', field: 'pitch', least, most: MOST_HOLES });
  }
  return { ok: true, value: lines.map((line) => Math.max(1, Math.round(line / rule.pitch))) };
}

/** So many spaces over lines, each next one where the pitch is greatest. */
function shared(lines: readonly ExactLength[], count: number): number[] {
  const spaces = lines.map(() => 1);
  for (let left = count - lines.length; left > 0; left -= 1) {
    const pitches = lines.map((line, i) => line / (spaces[i] ?? 1));
    const widest = pitches.indexOf(Math.max(...pitches));
    spaces[widest] = (spaces[widest] ?? 1) + 1;
  }
  return spaces;
}

function around(
  lines: readonly ExactLength[],
  spaces: readonly number[],
  cornered: boolean,
): OutlineHoles {
  const marks: Mark[] = [];
  const corners: number[] = [];
  let from = 0;
  const sides = lines.map((line, i): HoleSide => {
    const count = spaces[i] ?? 1;
    if (cornered) corners.push(marks.length + 1);
    for (let hole = 0; hole < count; hole += 1) {
      const kind = cornered && hole === 0 ? 'corner' : 'hole';
      const at = exactLength(from + (hole * line) / count);
      marks.push({ at, label: String(marks.length + 1), kind });
    }
    from += line;
    return { line, spaces: count, pitch: exactLength(line / count) };
  });
  const run: Run = { datum: 'first-hole', length: Math.ceil(from) as Length, marks };
  return { sides, count: marks.length, run, corners };
}

function outlineProblems(outline: Outline): Problem[] {
  const margin = mustNotBeNegative('margin', outline.margin);
  switch (outline.shape) {
    case 'rectangle':
      return [
        ...mustBePositive('wide', outline.wide),
        ...mustBePositive('high', outline.high),
        ...margin,
      ];
    case 'regular':
      return [
        ...mustBeCount('sides', outline.sides, 3, MOST_SIDES),
        ...mustBePositive('side', outline.side),
        ...margin,
      ];
    case 'free':
      return [...margin, ...freeProblems(outline)];
    case 'circle':
      return [...mustBePositive('across', outline.across), ...margin];
  }
}

/** How far apart the ends of an outline may lie, in parts of its way round: corners are measured, too. */
const CLOSES = 0.02;

function freeProblems({ sides, corners }: FreeOutline): Problem[] {
  const wrong = corners.find((angle) => angle < LEAST_CORNER || angle > 360 - LEAST_CORNER);
  const alone: Problem[] = [
    ...mustBeCount('ownSides', sides.length, 3, MOST_SIDES),
    ...sides.flatMap((side) => mustBePositive('ownSides', side)).slice(0, 1),
    ...(corners.length === sides.length
      ? []
      : [
          {
            ...({ kind: 'not-as-many', field: 'ownCorners' } as const),
            ...{ given: corners.length, needed: sides.length },
          },
        ]),
    ...(wrong === undefined
      ? []
      : [
          {
            ...({ kind: 'out-of-range', field: 'ownCorners', given: wrong } as const),
            ...{ least: LEAST_CORNER, most: 360 - LEAST_CORNER },
          },
        ]),
  ];
  if (alone.length > 0) return alone;
  const [x, y] = laidOut({ sides, corners }).at(-1) ?? [0, 0];
  const gap = exactLength(Math.hypot(x, y));
  const round = sides.reduce((sum, side) => sum + side, 0);
  return gap > CLOSES * round ? [{ kind: 'gap', field: 'ownSides', gap }] : [];
}

/** Sharper than this a corner has no room for a hole: common practice, no source. */
const LEAST_CORNER = 10;

function marginProblem(outline: Outline): Problem {
  const room = (): number => {
    if (outline.shape === 'rectangle') return Math.min(outline.wide, outline.high) / 2;
    if (outline.shape === 'circle') return outline.across / 2;
    if (outline.shape === 'free') return freeRoom(outline);
    return outline.side / (2 * cornerTakes(outline.sides));
  };
  return { kind: 'not-under', field: 'margin', under: exactLength(room()), given: outline.margin };
}

/** The margin at which the first of its sides has no line left. */
function freeRoom({ sides, corners }: FreeOutline): number {
  const rooms = sides.flatMap((side, i) => {
    const takes = endsTake(corners, i);
    return takes > 0 ? [side / takes] : [];
  });
  return Math.min(...rooms);
}

function ruleProblems(rule: HoleRule): Problem[] {
  return rule.by === 'pitch'
    ? mustBePositive('pitch', rule.pitch)
    : mustBeCount('count', rule.count, 1, MOST_HOLES);
}

/** Two closed edges with as many holes each, to be laced hole to hole. */
export interface PairHoles {
  count: number;
  one: { pitch: ExactLength; run: Run };
  other: { pitch: ExactLength; run: Run };
  /** How much longer the one is, in parts of the other; less than nothing where it is shorter. */
  longer: number;
}

/**
 * The same number of holes round both: as many as come nearest to the pitch on the one (derived here).
 *
 * Problems: lengths of nothing, no hole, more than 2000.
 */
export function pairHoles(one: Length, other: Length, rule: HoleRule): Outcome<PairHoles> {
  const problems = [
    ...mustBePositive('one', one),
    ...mustBePositive('other', other),
    ...ruleProblems(rule),
  ];
  return answerUnless(problems, () => {
    const spaces = spacesOf([one], rule);
    if (!spaces.ok) return spaces;
    const [count = 1] = spaces.value;
    const edge = (long: Length) => ({
      pitch: exactLength(long / count),
      run: around([long], [count], false).run,
    });
    return {
      ok: true,
      value: { count, one: edge(one), other: edge(other), longer: one / other - 1 },
    };
  });
}
