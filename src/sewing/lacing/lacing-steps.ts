import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { readNumber } from '../../lengths/read-number.ts';
import { type Face, isPass, type LacePoint, type Repeat } from './lacing-repeat.ts';

/** Farther than this from the first hole or the edge, in pitches or margins, is a slip of typing. */
const FARTHEST = 20;
/** More than anyone keeps in their fingers. */
export const MOST_STEPS = 40;

/**
 * Why typed steps are no repeat. Steps are counted from 1.
 *
 * - `one-step`: a repeat has at least a step and the first one again.
 * - `nowhere`: the same place and face as the step before.
 * - `both`: place and face change at once, so that it is not said where it passes.
 * - `not-again`: the last step is not the first one again.
 * - `no-advance`: the last step is not a whole number of pitches on from the first.
 * - `no-pass`: the lace never goes from face to face.
 */
export type StepFault =
  | { kind: 'empty' }
  | { kind: 'one-step' }
  | { kind: 'too-many-steps'; steps: number; most: number }
  | { kind: 'unreadable'; step: number; text: string }
  | { kind: 'too-far'; step: number; most: number }
  | { kind: 'nowhere'; step: number }
  | { kind: 'both'; step: number }
  | { kind: 'not-in-hole' }
  | { kind: 'not-again'; step: number }
  | { kind: 'no-advance'; step: number }
  | { kind: 'no-pass' };

/**
 * `before`: the first step is before the lace passes the hole, so that the repeat starts
 * at the second. `offHoles`: the steps that pass through the strip where the row has no hole.
 */
export type StepsRead =
  | { ok: true; repeat: Repeat; before: boolean; offHoles: readonly number[] }
  | { ok: false; faults: readonly StepFault[] };

/**
 * Reads a lacing written step by step, steps parted by semicolons or lines:
 * `along across face`, along in pitches from the first hole, across in margins from the
 * edge (1 is the row of holes, 0 the edge, less is outside), face `front` or `back` (or
 * `f`, `b`), and `turn` where it goes once round lace that lies there. The first step is
 * in a hole; the last is the first again, further on.
 *
 * @param margin edge to hole, more than nothing
 */
export function readSteps(typed: string, margin: ExactLength): StepsRead {
  const texts = typed
    .split(/[;\n]/)
    .map((text) => text.trim())
    .filter((text) => text !== '');
  if (texts.length === 0) return refused([{ kind: 'empty' }]);
  if (texts.length > MOST_STEPS) {
    return refused([{ kind: 'too-many-steps', steps: texts.length, most: MOST_STEPS }]);
  }
  const points: LacePoint[] = [];
  const faults: StepFault[] = [];
  texts.forEach((text, i) => {
    const point = readStep(text);
    if (point) points.push(point);
    else faults.push({ kind: 'unreadable', step: i + 1, text });
  });
  if (faults.length > 0) return refused(faults);
  const wrong = faultsOf(points);
  if (wrong.length > 0) return refused(wrong);
  const before = passesTo(points[0], points[1]);
  return { ok: true, repeat: repeatOf(points, margin), before, offHoles: stepsOffHoles(points) };
}

function refused(faults: readonly StepFault[]): StepsRead {
  return { ok: false, faults };
}

/** Here, across is still in margins. */
function readStep(text: string): LacePoint | undefined {
  const [one = '', two = '', side = '', turn, ...more] = text.toLowerCase().split(/[\s\u00a0]+/);
  const along = readNumber(one);
  const across = readNumber(two);
  const face = faceOf(side);
  if (!along.ok || !across.ok || !face || more.length > 0) return undefined;
  if (turn !== undefined && turn !== 'turn') return undefined;
  const place = { along: along.value, across: exactLength(across.value), face };
  return { ...place, turns: turn === undefined ? 0 : 1 };
}

function faceOf(text: string): Face | undefined {
  if (text === 'front' || text === 'f') return 'front';
  return text === 'back' || text === 'b' ? 'back' : undefined;
}

function faultsOf(points: readonly LacePoint[]): StepFault[] {
  const [first] = points;
  const last = points.at(-1);
  if (!first || !last || points.length < 2) return [{ kind: 'one-step' }];
  const step = points.length;
  const faults = points.flatMap((point, i) => stepFaults(points[i - 1], point, i + 1));
  if (!isHole(first)) faults.push({ kind: 'not-in-hole' });
  const advance = last.along - first.along;
  if (last.across !== first.across || last.face !== first.face) {
    faults.push({ kind: 'not-again', step });
  } else if (advance < 1 || !Number.isInteger(advance)) faults.push({ kind: 'no-advance', step });
  if (faults.length === 0 && !points.some((point, i) => passesTo(points[i - 1], point))) {
    faults.push({ kind: 'no-pass' });
  }
  return faults;
}

function passesTo(before: LacePoint | undefined, point: LacePoint | undefined): boolean {
  return before !== undefined && point !== undefined && isPass(before, point);
}

function stepFaults(before: LacePoint | undefined, point: LacePoint, step: number): StepFault[] {
  const { along, across, face } = point;
  if (Math.max(Math.abs(along), Math.abs(across)) > FARTHEST) {
    return [{ kind: 'too-far', step, most: FARTHEST }];
  }
  if (!before || isPass(before, point)) return [];
  if (before.face !== face) return [{ kind: 'both', step }];
  return before.along === along && before.across === across ? [{ kind: 'nowhere', step }] : [];
}

function isHole({ along, across }: LacePoint): boolean {
  return across === 1 && Number.isInteger(along);
}

/** Written from before the lace passes the first hole or from after: it starts after it. */
function repeatOf(typed: readonly LacePoint[], margin: ExactLength): Repeat {
  const [begin, next] = typed;
  const end = typed.at(-1);
  if (!begin || !next || !end) throw new RangeError(`a repeat of ${typed.length} steps`);
  const advance = end.along - begin.along;
  const placed = typed.map((point) => ({
    ...point,
    along: point.along - begin.along,
    across: exactLength(point.across * margin),
  }));
  if (isPass(begin, next)) return { points: placed.slice(1), advance };
  // What is gone round at the end of one repeat is gone round at the start of the next.
  const turns = end.turns ?? 0;
  return {
    points: placed.slice(0, -1).map((one, i) => (i === 0 ? { ...one, turns } : one)),
    advance,
  };
}

/** The steps that pass through the strip where the row has no hole, counted from 1. */
function stepsOffHoles(points: readonly LacePoint[]): number[] {
  return points.flatMap((point, i) =>
    passesTo(points[i - 1], point) && point.across > 0 && !isHole(point) ? [i + 1] : [],
  );
}
