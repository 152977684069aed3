import { fieldOf, logOf } from './field.ts';
import { type RowFrame, rowFrame, toFrame } from './frame.ts';
import { type PhasePoint, phaseTrack } from './phase.ts';
import { fitProjective, graduationAt, type PositionModel } from './position.ts';
import type { TapeReading } from './read-at.ts';
import { type GreyImage, mmPerUnit, type Point, type TapeUnit } from './reading.ts';
import { outlineOf, type ReadScale, type ScaleGeometry } from './scale.ts';
import { leastSquares } from './solve.ts';
import { bandSignal, strip } from './strip.ts';

/** A graduation the maker touched, and the value typed for it. */
export interface Touch extends Point {
  readonly value: number;
  readonly unit: TapeUnit;
}

export type TouchFault = 'one-only' | 'same-place' | 'same-value' | 'not-in-line' | 'order';

/** Fingers nearer than this touch the same line. */
const SAME_PLACE_PX = 6;
/** A touch farther from the line through the outer two than this share of their distance isn't on their row. */
const IN_LINE = 0.08;
/** How well a touched line is placed, in picture px. */
const TOUCH_PX = 1;
/**
 * What perspective may bend in the middle between two touches, as a share of their distance: at a
 * tilt of 30° from as far as the tape is long S·sin 30°/4D, an eighth, at the most. Derived here.
 */
const UNSEEN_TILT = 0.06;

/**
 * A scale from touched graduations: straight through two, projective through more, and bent
 * to the lines between them where these can be followed. Every value within and around the
 * touches can then be read, with an uncertainty that grows away from them.
 */
export function scaleByTouch(
  image: GreyImage,
  touches: readonly Touch[],
): { ok: true; value: TapeReading } | { ok: false; reason: TouchFault } {
  const places = touches.map(({ x, y, value, unit }) => ({ x, y, mm: value * mmPerUnit[unit] }));
  const fault = faultOf(places);
  if (fault) return { ok: false, reason: fault };
  const frame = frameThrough(places);
  const along = places
    .map(({ x, y, mm }) => ({ t: toFrame(frame, x, y)[0], mm }))
    .sort((one, other) => one.t - other.t);
  if (!ordered(along)) return { ok: false, reason: 'order' };
  const unit = touches[0]?.unit ?? 'cm';
  const plain = throughTouches(along);
  const followed = followedLines(image, frame, along, plain, unit);
  const scale = scaleOf(frame, along, touches, followed ?? { ...plain, mmPerTick: 1 });
  const { width, height } = image;
  return { ok: true, value: { width, height, outcome: 'read', scales: [scale] } };
}

interface Place extends Point {
  readonly mm: number;
}

interface Along {
  readonly t: number;
  readonly mm: number;
}

interface Fit {
  readonly model: PositionModel;
  /** 1 sigma, in mm; and of what may be bent in the middle between the outer touches. */
  readonly scatterMm: number;
  readonly bendMm?: number;
  readonly mmPerTick: number;
}

function faultOf(places: readonly Place[]): TouchFault | undefined {
  if (places.length < 2) return 'one-only';
  for (const [i, one] of places.entries()) {
    for (const other of places.slice(i + 1)) {
      if (Math.hypot(one.x - other.x, one.y - other.y) < SAME_PLACE_PX) return 'same-place';
      if (one.mm === other.mm) return 'same-value';
    }
  }
  const frame = frameThrough(places);
  const span = Math.max(...places.map(({ x, y }) => toFrame(frame, x, y)[0]));
  const off = places.some(({ x, y }) => Math.abs(toFrame(frame, x, y)[1]) > IN_LINE * span);
  return off ? 'not-in-line' : undefined;
}

/** From the touch of the least value towards the one of the greatest. */
function frameThrough(places: readonly Place[]): RowFrame {
  const byValue = [...places].sort((one, other) => one.mm - other.mm);
  const first = byValue[0] as Place;
  const last = byValue[byValue.length - 1] as Place;
  return rowFrame([first.x, first.y], Math.atan2(last.y - first.y, last.x - first.x));
}

function ordered(along: readonly Along[]): boolean {
  return along.every(({ mm }, i) => i === 0 || mm > (along[i - 1] as Along).mm);
}

/** mm = (a·t + b)/(c·t + 1) through the touches; c stays 0 for two. */
function throughTouches(along: readonly Along[]): Omit<Fit, 'mmPerTick'> {
  const first = along[0] as Along;
  const last = along[along.length - 1] as Along;
  const span = last.t - first.t;
  const slope = (last.mm - first.mm) / span;
  const straight = { a: slope, b: first.mm - slope * first.t, c: 0 };
  const touch = TOUCH_PX * slope;
  if (along.length < 3) {
    return { model: straight, scatterMm: touch, bendMm: UNSEEN_TILT * (last.mm - first.mm) };
  }
  const rows = along.map(({ t, mm }) => [t / span, 1, (-t / span) * mm, mm, 1]);
  // Three touches fit any projective scale: a weak pull to the straight one keeps a shaky finger from bending it.
  rows.push([0, 0, 1, 0, 0.01 * (last.mm - first.mm) ** 2]);
  const [a, b, c] = leastSquares(rows, 3) ?? [];
  if (a === undefined || b === undefined || c === undefined)
    return { model: straight, scatterMm: touch };
  const model = { a: a / span, b, c: c / span };
  const off = along.map(({ t, mm }) => graduationAt(model, t) - mm);
  return { model, scatterMm: Math.hypot(touch, ...off) };
}

/** Distances between lines of printed scales, in mm. */
const LINE_STEPS: Readonly<Record<TapeUnit, readonly number[]>> = {
  cm: [1, 0.5, 5],
  mm: [1, 0.5, 5],
  inch: [25.4 / 16, 25.4 / 8, 25.4 / 32, 25.4 / 10, 25.4 / 4],
};
/** Lines that beat as steadily as this are those of the scale. */
const FOLLOWED_QUALITY = 0.5;
/** A followed line that a touch says is another one: the touch is right, the following wrong. */
const TOUCH_AGREES_TICKS = 0.35;
/** Where lines run beside the touched places, in mm: a finger touches their ends as well as their middles. */
const BANDS_MM = [
  [-3.5, -1],
  [-1.2, 1.2],
  [1, 3.5],
] as const;
/** Px: a band is never thinner or farther than this, whatever the picture's size. */
const LEAST_BAND_PX = 3;
const FARTHEST_BAND_PX = 90;

function followedLines(
  image: GreyImage,
  frame: RowFrame,
  along: readonly Along[],
  plain: Omit<Fit, 'mmPerTick'>,
  unit: TapeUnit,
): Fit | undefined {
  const bands = BANDS_MM.map(([low, high]) => bandPx(low / plain.model.a, high / plain.model.a));
  const reach = Math.max(...bands.flat().map(Math.abs)) + 1;
  const band = strip(logOf(fieldOf(image)), frame, reach);
  let best: { fit: Fit; quality: number } | undefined;
  for (const [low, high] of bands) {
    const dark = bandSignal(band, low, high);
    for (const ink of [1, -1]) {
      const signal = ink === 1 ? dark : dark.map((value) => -value);
      for (const mmPerTick of LINE_STEPS[unit]) {
        const found = followAt(signal, band.from, along, plain.model, mmPerTick);
        if (found && found.quality > (best?.quality ?? FOLLOWED_QUALITY)) best = found;
      }
    }
  }
  return best?.fit;
}

function bandPx(low: number, high: number): [number, number] {
  const limited = (px: number) => Math.max(-FARTHEST_BAND_PX, Math.min(FARTHEST_BAND_PX, px));
  const from = Math.round(limited(low));
  return [from, Math.max(from + LEAST_BAND_PX, Math.round(limited(high)))];
}

function followAt(
  signal: Float32Array,
  from: number,
  along: readonly Along[],
  plain: PositionModel,
  mmPerTick: number,
): { fit: Fit; quality: number } | undefined {
  const first = along[0] as Along;
  const last = along[along.length - 1] as Along;
  const pitch = mmPerTick / plain.a;
  if (pitch < 3 || (last.t - first.t) / pitch < 6) return undefined;
  let model: PositionModel = { a: plain.a / mmPerTick, b: plain.b / mmPerTick, c: plain.c };
  let track: PhasePoint[] = [];
  for (let pass = 0; pass < 3; pass++) {
    track = phaseTrack(signal, from, 0, model, 2.5).filter(
      ({ t }) => t > first.t - pitch && t < last.t + pitch,
    );
    const bent = fitProjective(track, model);
    if (!bent) return undefined;
    model = bent;
  }
  const away = along.map(({ t, mm }) => graduationAt(model, t) - mm / mmPerTick);
  // The phase tells a line only from its neighbours, and beside the touched places lines may
  // slant: which line it is, and where on it, the touches tell.
  const shift = away.reduce((sum, ticks) => sum + ticks, 0) / away.length;
  model = { a: model.a - shift * model.c, b: model.b - shift, c: model.c };
  const off = away.map((ticks) => ticks - shift);
  if (off.some((ticks) => Math.abs(ticks) > TOUCH_AGREES_TICKS)) return undefined;
  const quality = track.reduce((sum, point) => sum + point.quality, 0) / track.length;
  const scatter = Math.sqrt(
    track.reduce((sum, { phase }) => sum + phase * phase, 0) / track.length,
  );
  const touch = Math.hypot(TOUCH_PX / pitch, ...off);
  return { fit: { model, scatterMm: Math.hypot(scatter, touch) * mmPerTick, mmPerTick }, quality };
}

/** Beyond the touches a reading holds for this share of their distance. */
const BEYOND = 0.35;

function scaleOf(
  frame: RowFrame,
  along: readonly Along[],
  touches: readonly Touch[],
  { model, scatterMm, bendMm, mmPerTick }: Fit,
): ReadScale {
  const first = along[0] as Along;
  const last = along[along.length - 1] as Along;
  const from = first.mm / mmPerTick;
  const to = last.mm / mmPerTick;
  const more = BEYOND * (to - from);
  const half = 4 / mmPerTick;
  const geometry: ScaleGeometry = {
    frame,
    model,
    centre: 0,
    from: from - more,
    to: to + more,
    zoneFrom: -half,
    zoneTo: half,
    numbersAcross: 0,
    ink: 1,
    scatter: scatterMm / mmPerTick,
    slantDoubt: 0.01,
    ...(bendMm === undefined ? {} : { bend: { from, to, sigma: bendMm / mmPerTick } }),
  };
  const unit = touches[0]?.unit ?? 'cm';
  return {
    unit,
    mmPerTick,
    anchorTick: from,
    anchorValue: first.mm / mmPerUnit[unit],
    direction: 1,
    sure: true,
    doubts: [],
    numbers: touches.map(({ x, y, value, unit: own }) => {
      return { x, y, value: (value * mmPerUnit[own]) / mmPerUnit[unit] };
    }),
    outline: outlineOf(geometry, from, to, -half, half),
    stretches: [{ from: geometry.from, to: geometry.to }],
    geometry,
  };
}
