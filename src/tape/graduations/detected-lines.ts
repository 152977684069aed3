import type { Field } from '../picture/field.ts';
import type { FollowedRow } from './followed-row.ts';
import {
  BEYOND,
  DETECTED_LINES_LEAST_CONTRAST,
  DETECTED_LINES_PER_TICK,
  MISSED,
  SHORTEST_RUN,
} from './limits.ts';
import { makeSheet, type TickRange } from './sheet.ts';

/** For each graduation from range[0] − 3 to range[1] + 3 whether its line is there. */
export interface LinesSeen {
  readonly first: number;
  readonly there: readonly boolean[];
}

/** Looks for every line of a row by itself, in the zone that all lines cross. */
export function linesSeen(work: Field<'measuring'>, row: FollowedRow): LinesSeen {
  const { frame, pitch, range, pattern } = row;
  const first = range[0] - BEYOND;
  const last = range[1] + BEYOND;
  const low = pattern.zoneFrom;
  const high = Math.max(pattern.zoneTo, low + 2 / DETECTED_LINES_PER_TICK);
  const sheet = makeSheet(
    work,
    frame,
    pitch,
    first - 0.5,
    last + 0.5,
    DETECTED_LINES_PER_TICK,
    low,
    high,
  );
  const there: boolean[] = [];
  for (let tick = first; tick <= last; tick++) {
    const x = Math.round((tick - first) * DETECTED_LINES_PER_TICK + DETECTED_LINES_PER_TICK / 2);
    there.push(contrastAt(sheet, x) > DETECTED_LINES_LEAST_CONTRAST * pattern.contrast);
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

/** The first and the last line of the run of them that a graduation stands in; null where none was seen. */
export function runAround({ first, there }: LinesSeen, tick: number): TickRange | null {
  const runs = unbroken(there, first, MISSED);
  return runs.find(([from, to]) => tick >= from - 1 && tick <= to + 1) ?? null;
}

/** Runs of lines that are there, in graduations, with no more than `gap` missing in a row. */
export function unbroken(there: readonly boolean[], first: number, gap: number): TickRange[] {
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
  return runs.filter(([from, to]) => to - from >= SHORTEST_RUN);
}
