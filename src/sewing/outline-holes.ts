import { type ExactLength, exactLength, type Length } from '../lengths/length.ts';
import { mustBeCount, mustBePositive, mustNotBeNegative } from './length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from './problem.ts';
import type { Mark, Run } from './run.ts';

const MOST_HOLES = 2000;
const MOST_SIDES = 24;

/** How holes are shared out: as near to a pitch as goes, or just so many. */
export type HoleRule = { by: 'pitch'; pitch: Length } | { by: 'count'; count: number };

/** A closed outline; holes run so far inside it as the margin says. Lengths in 1/8000 mm. */
export type Outline =
  | { shape: 'rectangle'; wide: Length; high: Length; margin: Length }
  | { shape: 'regular'; sides: number; side: Length; margin: Length }
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
    case 'circle':
      return [exactLength(Math.PI * (outline.across - 2 * outline.margin))];
  }
}

/** What each corner takes of a side's line, in margins: cot(φ ÷ 2) = tan(180° ÷ sides). */
export function cornerTakes(sides: number): number {
  return Math.tan(Math.PI / sides);
}

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
    case 'circle':
      return [...mustBePositive('across', outline.across), ...margin];
  }
}

function marginProblem(outline: Outline): Problem {
  const room = (): number => {
    if (outline.shape === 'rectangle') return Math.min(outline.wide, outline.high) / 2;
    if (outline.shape === 'circle') return outline.across / 2;
    return outline.side / (2 * cornerTakes(outline.sides));
  };
  return { kind: 'not-under', field: 'margin', under: exactLength(room()), given: outline.margin };
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
