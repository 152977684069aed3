import type { Field } from '../picture/field.ts';
import type { FollowedRow } from './followed-row.ts';
import {
  OWN_LEAN_FEWEST_ROWS,
  OWN_LEAN_LINED,
  OWN_LEAN_PER_TICK,
  OWN_LEAN_REACH,
} from './limits.ts';
import { makeSheet, type Sheet } from './sheet.ts';

/**
 * By how much the lines of a row lean from its frame on one side of it, in graduations along for
 * each across: 0 on a row of one tape. Where the lines of two lengths of tape meet, the frame has
 * the lean from the one to the other, and neither's own. 0, too, where they are too short to tell.
 */
export function ownLean(work: Field<'measuring'>, row: FollowedRow, side: 1 | -1): number {
  const { frame, pitch, range, pattern } = row;
  const middle = (pattern.zoneFrom + pattern.zoneTo) / 2;
  const outer = side > 0 ? pattern.zoneTo + OWN_LEAN_REACH : pattern.zoneFrom - OWN_LEAN_REACH;
  const [low, high] = [Math.min(middle, outer), Math.max(middle, outer)];
  const sheet = makeSheet(work, frame, pitch, range[0], range[1], OWN_LEAN_PER_TICK, low, high);
  const outwards = Array.from({ length: sheet.height }, (_, i) =>
    toneOf(sheet, side > 0 ? i : sheet.height - 1 - i),
  );
  const least = OWN_LEAN_LINED * Math.max(...outwards.map(({ size }) => size));
  const end = outwards.findIndex(({ size }) => !(size >= least));
  const lined = end < 0 ? outwards : outwards.slice(0, end);
  return lined.length < OWN_LEAN_FEWEST_ROWS ? 0 : side * OWN_LEAN_PER_TICK * slopeOf(lined);
}

/** How strong the tone of one line to a graduation is in a row of the sheet, and its phase. */
interface Tone {
  readonly real: number;
  readonly imaginary: number;
  readonly size: number;
}

function toneOf({ width, values, perTick }: Sheet, y: number): Tone {
  let [real, imaginary, count] = [0, 0, 0];
  for (let x = 1; x < width; x++) {
    // Differences: the ground's light and shade have no tone.
    const edge = (values[y * width + x] as number) - (values[y * width + x - 1] as number);
    if (Number.isNaN(edge)) continue;
    const angle = (2 * Math.PI * x) / perTick;
    real += edge * Math.cos(angle);
    imaginary -= edge * Math.sin(angle);
    count++;
  }
  return { real, imaginary, size: Math.hypot(real, imaginary) / Math.max(1, count) };
}

/** Graduations by which the lines move on from one row to the next, by least squares. */
function slopeOf(tones: readonly Tone[]): number {
  let [before, at] = [tones[0] as Tone, 0];
  const places = tones.map((tone) => {
    const real = tone.real * before.real + tone.imaginary * before.imaginary;
    const imaginary = tone.imaginary * before.real - tone.real * before.imaginary;
    at -= Math.atan2(imaginary, real) / (2 * Math.PI);
    before = tone;
    return at;
  });
  const middle = (places.length - 1) / 2;
  let [sum, spread] = [0, 0];
  places.forEach((place, i) => {
    sum += place * (i - middle);
    spread += (i - middle) ** 2;
  });
  return sum / spread;
}
