import type { Claim } from './claim.ts';
import type { FollowedRow } from './followed-row.ts';
import type { Field } from './reading.ts';
import type { Stretch } from './scale.ts';
import { makeSheet, type TickRange } from './sheet.ts';

const PER_TICK = 10;
/** A line stands out by at least this share of the usual one. */
const LEAST_CONTRAST = 0.35;
/** Looked at beyond the followed stretch, where the last lines are. */
const BEYOND = 3;

/** For each graduation from range[0] − 3 to range[1] + 3 whether its line is there. */
export interface LinesSeen {
  readonly first: number;
  readonly there: readonly boolean[];
}

/** Looks for every line of a row by itself, in the zone that all lines cross. */
export function linesSeen(work: Field, row: FollowedRow): LinesSeen {
  const { frame, pitch, range, pattern } = row;
  const first = range[0] - BEYOND;
  const last = range[1] + BEYOND;
  const low = pattern.zoneFrom;
  const high = Math.max(pattern.zoneTo, low + 2 / PER_TICK);
  const sheet = makeSheet(work, frame, pitch, first - 0.5, last + 0.5, PER_TICK, low, high);
  const there: boolean[] = [];
  for (let tick = first; tick <= last; tick++) {
    const x = Math.round((tick - first) * PER_TICK + PER_TICK / 2);
    there.push(contrastAt(sheet, x) > LEAST_CONTRAST * pattern.contrast);
  }
  return { first, there };
}

/** Ground at both sides less the line, in log-grey, averaged over the zone; −1 outside the picture. */
function contrastAt({ width, height, values }: Field, x: number): number {
  let [sum, count] = [0, 0];
  for (let y = 0; y < height; y++) {
    const at = (offset: number) =>
      values[y * width + Math.max(0, Math.min(width - 1, x + offset))] as number;
    const line = (at(-1) + 2 * at(0) + at(1)) / 4;
    const ground = (at(-4) + at(-3) + at(3) + at(4)) / 4;
    if (Number.isNaN(line + ground)) continue;
    sum += ground - line;
    count++;
  }
  return count > 0 ? sum / count : -1;
}

/** So many hidden lines in a row can't make the following slip. */
const SAFE_GAP = 5;
/** Lines apart from any agreeing number by more than so many printed numbers aren't vouched for. */
const VOUCHED_NUMBERS = 1;
/** One line in a row may be missed; where two are missing the tape may end. */
const MISSED = 1;

/** The first and the last line of the run of them that a graduation stands in; null where none was seen. */
export function runAround({ first, there }: LinesSeen, tick: number): TickRange | null {
  const runs = unbroken(there, first, MISSED);
  return runs.find(([from, to]) => tick >= from - 1 && tick <= to + 1) ?? null;
}

/** Half a line's width and a little beyond the last one seen. */
const LAST_LINE = 0.4;

/**
 * The stretches of a claimed row that may be read: lines seen without a gap that could hide a
 * slip, with numbers that agree on them or at both their sides, and none that contradict.
 */
export function readableStretches(claim: Claim, { first, there }: LinesSeen): Stretch[] {
  const agreeing = claim.agreeing.map(({ tick }) => tick);
  const contrary = claim.contrary.map(({ tick }) => tick);
  const reach = VOUCHED_NUMBERS * claim.ticksPerNumber;
  return unbroken(there, first, SAFE_GAP).flatMap(([from, to]) => {
    const margin = claim.ticksPerNumber * 0.75;
    const inside = agreeing.filter((tick) => tick >= from - margin && tick <= to + margin);
    if (inside.length === 0) return [];
    const low = Math.max(
      from,
      Math.min(...inside) - reach,
      ...wall(contrary, Math.min(...inside), -1),
    );
    const high = Math.min(
      to,
      Math.max(...inside) + reach,
      ...wall(contrary, Math.max(...inside), 1),
    );
    return high > low ? [{ from: low - LAST_LINE, to: high + LAST_LINE }] : [];
  });
}

/** A number beyond the agreeing ones that says something else: another scale may begin right after them. */
function wall(contrary: readonly number[], edge: number, direction: 1 | -1): number[] {
  return contrary.some((tick) => direction * (tick - edge) > 0) ? [edge] : [];
}

/** Across hidden lines the course of the others may bend by this many graduations; more may be a slip. */
const MOST_BEND = 0.35;

/**
 * The stretches of which none can be a line off: from the longest outwards, those over whose gap
 * the followed lines went on as smoothly as the model. `bendAt` is how far they were off it.
 */
export function withoutSlips(
  stretches: readonly Stretch[],
  bendAt: (tick: number) => number,
): Stretch[] {
  const length = ({ from, to }: Stretch) => to - from;
  const longest = stretches.reduce((most, one) => Math.max(most, length(one)), 0);
  const main = stretches.findIndex((one) => length(one) === longest);
  const kept = stretches.slice(main, main + 1);
  const goOn = (index: number, step: 1 | -1): void => {
    const [before, next] = [stretches[index], stretches[index + step]];
    if (!before || !next) return;
    const [left, right] = step > 0 ? [before.to, next.from] : [before.from, next.to];
    if (Math.abs(bendAt(left) - bendAt(right)) > MOST_BEND) return;
    kept.push(next);
    goOn(index + step, step);
  };
  goOn(main, 1);
  goOn(main, -1);
  return kept.sort((one, other) => one.from - other.from);
}

function unbroken(there: readonly boolean[], first: number, gap: number): TickRange[] {
  const runs: [number, number][] = [];
  let last: [number, number] | undefined;
  there.forEach((seen, index) => {
    if (!seen) return;
    const tick = first + index;
    if (last && tick - last[1] <= gap + 1) last[1] = tick;
    else {
      last = [tick, tick];
      runs.push(last);
    }
  });
  return runs.filter(([from, to]) => to - from >= 4);
}
