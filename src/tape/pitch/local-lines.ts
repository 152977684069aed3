import type { Field } from '../picture/field.ts';
import { sample } from '../picture/field.ts';
import type { Place } from '../picture/space.ts';
import {
  LOCAL_HALVES,
  LOCAL_LINED,
  LOCAL_LONG,
  LOCAL_PER_PITCH,
  LOCAL_ROWS,
  LOCAL_ROWS_PER_PITCH,
  LOCAL_SIGMA,
  NO_PRINT,
} from './limits.ts';

/** Where lines are thought to be: a place of their row, which way that runs, and how far apart they stand. */
export interface Aim {
  readonly at: Place<'measuring'>;
  /** Radians, from the x axis towards y. */
  readonly angle: number;
  /** Px along the row for each px across by which the lines lean from square. */
  readonly lean: number;
  /** Px. */
  readonly pitch: number;
}

/** How a few lines about such a place stand against the aim. */
export interface LocalLines {
  /** Px across the row to the middle of the lines. */
  readonly aside: number;
  /** By how much more they lean. */
  readonly lean: number;
  /** Graduations along the row to the nearest line: −½ to ½. */
  readonly phase: number;
  /** Px between them. */
  readonly pitch: number;
  /** 1 for lines and nothing else, 0 for none. */
  readonly quality: number;
}

/** A phase and its strength, as real and imaginary part. */
type Phasor = readonly [real: number, imaginary: number];

/** The tone of one line to a pitch in one row of the window. */
interface Tone {
  /** Px across from the aim. */
  readonly v: number;
  readonly whole: Phasor;
  /** Of the half of the window before its middle. */
  readonly before: Phasor;
  /** In log-grey, and as a share of all that varies there. */
  readonly size: number;
  readonly share: number;
  readonly isOutside?: true;
}

/** Measures the lines in a small window; null where the picture ends or there is no line. */
export function localLines(log: Field<'measuring'>, aim: Aim): LocalLines | null {
  const reach = LOCAL_ROWS * LOCAL_ROWS_PER_PITCH;
  const tones = Array.from({ length: 2 * reach + 1 }, (_, i) =>
    toneAcross(log, aim, ((i - reach) * aim.pitch) / LOCAL_ROWS_PER_PITCH),
  );
  const lined = linedRows(tones, reach);
  if (!lined) return null;
  const weight = lined.reduce((sum, { size }) => sum + size, 0);
  const mean = (of: (tone: Tone) => number) =>
    lined.reduce((sum, tone) => sum + tone.size * of(tone), 0) / weight;
  const whole = sumOf(lined.map((tone) => tone.whole));
  const before = sumOf(lined.map((tone) => tone.before));
  const after: Phasor = [whole[0] - before[0], whole[1] - before[1]];
  return {
    aside: mean(({ v }) => v),
    lean: -LOCAL_ROWS_PER_PITCH * turnsBetween(lined.map((tone) => tone.whole)),
    phase: -Math.atan2(whole[1], whole[0]) / (2 * Math.PI),
    pitch: aim.pitch / (1 + turnsBetween([before, after]) / LOCAL_HALVES),
    quality: mean(({ share }) => share),
  };
}

const OUTSIDE = { whole: [0, 0], before: [0, 0], size: 0, share: 0, isOutside: true } as const;

function toneAcross(log: Field<'measuring'>, { at, angle, lean, pitch }: Aim, v: number): Tone {
  const [alongX, alongY] = [Math.cos(angle), Math.sin(angle)];
  const reach = LOCAL_LONG * LOCAL_PER_PITCH;
  const values = new Float64Array(2 * reach + 1);
  let [total, sum, squares] = [0, 0, 0];
  for (let i = 0; i < values.length; i++) {
    const u = ((i - reach) / LOCAL_PER_PITCH) * pitch + v * lean;
    const value = sample(log, at[0] + u * alongX - v * alongY, at[1] + u * alongY + v * alongX);
    if (Number.isNaN(value)) return { v, ...OUTSIDE };
    values[i] = value;
    total += WINDOW_BELL[i] as number;
    sum += (WINDOW_BELL[i] as number) * value;
    squares += (WINDOW_BELL[i] as number) * value * value;
  }
  const level = sum / total;
  const toneOf = (from: number, to: number): Phasor => {
    let [real, imaginary] = [0, 0];
    for (let i = from; i < to; i++) {
      // Ink is dark: its tone is that of the picture turned over.
      const ink = level - (values[i] as number);
      real += (WINDOW_COSINE[i] as number) * ink;
      imaginary -= (WINDOW_SINE[i] as number) * ink;
    }
    return [real / total, imaginary / total];
  };
  const before = toneOf(0, reach);
  const rest = toneOf(reach, values.length);
  const whole: Phasor = [before[0] + rest[0], before[1] + rest[1]];
  const size = Math.hypot(...whole);
  const deviation = Math.sqrt(Math.max(0, squares / total - level * level));
  return { v, whole, before, size, share: (size * Math.SQRT2) / (deviation + NO_PRINT) };
}

/** The window's bell over its samples, and under it the waves of one line to a pitch. */
const WINDOW_BELL = windowOf(() => 1);
const WINDOW_COSINE = windowOf((turns) => Math.cos(2 * Math.PI * turns));
const WINDOW_SINE = windowOf((turns) => Math.sin(2 * Math.PI * turns));

function windowOf(wave: (turns: number) => number): Float64Array {
  const reach = LOCAL_LONG * LOCAL_PER_PITCH;
  return Float64Array.from({ length: 2 * reach + 1 }, (_, i) => {
    const turns = (i - reach) / LOCAL_PER_PITCH;
    return Math.exp(-0.5 * (turns / LOCAL_SIGMA) ** 2) * wave(turns);
  });
}

/** The rows about the aim that all lines cross. */
function linedRows(tones: readonly Tone[], middle: number): Tone[] | null {
  const size = (i: number) => tones[i]?.size ?? 0;
  let top = middle;
  for (let i = middle - LOCAL_ROWS_PER_PITCH; i <= middle + LOCAL_ROWS_PER_PITCH; i++)
    if (size(i) > size(top)) top = i;
  const least = LOCAL_LINED * size(top);
  if (!(least > 0)) return null;
  let [from, to] = [top, top];
  while (size(from - 1) > least) from--;
  while (size(to + 1) > least) to++;
  // Lines that the picture's edge cuts have their middle elsewhere.
  const isWhole = [from - 1, to + 1].every((i) => tones[i]?.isOutside !== true);
  return isWhole ? tones.slice(from, to + 1) : null;
}

function sumOf(phasors: readonly Phasor[]): Phasor {
  return phasors.reduce((sum, one): Phasor => [sum[0] + one[0], sum[1] + one[1]], [0, 0]);
}

/** Turns from each phasor to the next, on the whole. */
function turnsBetween(phasors: readonly Phasor[]): number {
  let [real, imaginary] = [0, 0];
  for (let i = 1; i < phasors.length; i++) {
    const [before, after] = [phasors[i - 1] as Phasor, phasors[i] as Phasor];
    real += after[0] * before[0] + after[1] * before[1];
    imaginary += after[1] * before[0] - after[0] * before[1];
  }
  return Math.atan2(imaginary, real) / (2 * Math.PI);
}
