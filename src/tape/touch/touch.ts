import { type RowFrame, rowFrame, toFrame } from '../frame/frame.ts';
import { mmPerUnit, type TapeUnit } from '../graduations/tape-unit.ts';
import type { GreyImage } from '../picture/grey-image.ts';
import { type Point, placeOfPoint } from '../picture/place.ts';
import { alongRow, centred } from '../picture/space.ts';
import { distanceAt } from '../pitch/position.ts';
import { outlineOf, type ReadScale, type ScaleGeometry } from '../scales/scale.ts';
import type { TapeReading } from '../scales/tape-reading.ts';
import type { Placed } from './finger.ts';
import { fingerPx } from './finger.ts';
import { BAND_MM, BEYOND, IN_LINE, SAME_PLACE_PX, SPREAD_STEPS, UNSEEN_LEAN } from './limits.ts';
import { type Along, type SpreadModel, throughTouches } from './touch-fit.ts';
import { followedLines } from './touch-lines.ts';

/** A graduation the maker touched, and the value typed for it. */
export interface Touch extends Point {
  /** As `snapTo` gave it, px of the picture (1 sigma); a finger's on a phone, when not given. */
  readonly spread?: number;
  readonly value: number;
  readonly unit: TapeUnit;
}

export type TouchFault = 'one-only' | 'same-place' | 'same-value' | 'not-in-line' | 'order';

/** Only lines this far apart are long ones with a number, in mm: others look like their neighbours. */
const LONG_LINES: Readonly<Record<TapeUnit, number>> = { cm: 5, mm: 5, inch: mmPerUnit.inch / 8 };

/**
 * A scale from touched graduations: straight through two, projective through more, and bent
 * to the lines between them where these can be followed. Every value within and around the
 * touches can then be read, with an uncertainty that grows away from them.
 */
export function scaleByTouch(
  image: GreyImage,
  touches: readonly Touch[],
): { ok: true; value: TapeReading } | { ok: false; reason: TouchFault } {
  const finger = fingerPx(image);
  const places = touches.map(({ x, y, value, unit, spread = finger }) => {
    const isLong = Number.isInteger(rounded((value * mmPerUnit[unit]) / LONG_LINES[unit]));
    // When the line meant isn't one of the long ones, it may be the one beside it.
    return {
      x,
      y,
      mm: value * mmPerUnit[unit],
      spread: isLong ? spread : Math.max(spread, finger),
    };
  });
  const fault = faultOf(places);
  if (fault) return { ok: false, reason: fault };
  const square = frameThrough(places);
  const along = alongOf(square, places);
  if (!ordered(along)) return { ok: false, reason: 'order' };
  const unit = touches[0]?.unit ?? 'cm';
  const plain = throughTouches(along);
  const follow = (frame: RowFrame<'picture'>) =>
    followedLines(image, frame, alongOf(frame, places), plain.model, unit);
  const followed = follow(square);
  const leaning = followed?.lean && { ...square, ...followed.lean };
  const again = leaning && follow(leaning);
  const scale = scaleOf(
    again ? leaning : square,
    along,
    touches,
    again ?? followed ?? { ...plain, mmPerTick: 1 },
    again ? followed.lean.doubt : UNSEEN_LEAN,
  );
  const { width, height } = image;
  return { ok: true, value: { width, height, outcome: 'read', scales: [scale] } };
}

/** Typed inches are rounded to a thousandth of a line. */
const rounded = (value: number) => Math.round(value * 1000) / 1000;

interface Place extends Placed {
  readonly mm: number;
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
  const span = Math.max(...places.map((place) => toFrame(frame, placeOfPoint(place))[0]));
  const off = places.some(
    (place) => Math.abs(toFrame(frame, placeOfPoint(place))[1]) > IN_LINE * span,
  );
  return off ? 'not-in-line' : undefined;
}

/** From the touch of the least value towards the one of the greatest. */
function frameThrough(places: readonly Place[]): RowFrame<'picture'> {
  const byValue = [...places].sort((one, other) => one.mm - other.mm);
  const first = byValue[0] as Place;
  const last = byValue[byValue.length - 1] as Place;
  return rowFrame(placeOfPoint(first), Math.atan2(last.y - first.y, last.x - first.x));
}

function alongOf(frame: RowFrame<'picture'>, places: readonly Place[]): Along[] {
  return places
    .map((place) => {
      const [u] = toFrame(frame, placeOfPoint(place));
      return { t: centred<'picture'>(u), mm: place.mm, spread: place.spread };
    })
    .sort((one, other) => one.t - other.t);
}

function ordered(along: readonly Along[]): boolean {
  return along.every(({ mm }, i) => i === 0 || mm > (along[i - 1] as Along).mm);
}

function scaleOf(
  frame: RowFrame<'picture'>,
  along: readonly Along[],
  touches: readonly Touch[],
  { model, spreadAt, mmPerTick }: SpreadModel & { readonly mmPerTick: number },
  slantDoubt: number,
): ReadScale {
  const first = along[0] as Along;
  const last = along[along.length - 1] as Along;
  const from = first.mm / mmPerTick;
  const to = last.mm / mmPerTick;
  const more = BEYOND * (to - from);
  const half = BAND_MM / mmPerTick;
  const start = from - more;
  const step = (to + more - start) / SPREAD_STEPS;
  const values = Array.from({ length: SPREAD_STEPS + 1 }, (_, i) =>
    spreadAt(distanceAt(model, start + i * step)),
  );
  const geometry: ScaleGeometry = {
    frame,
    model,
    centre: alongRow(0),
    from: start,
    to: to + more,
    zoneFrom: -half,
    zoneTo: half,
    numbersAcross: 0,
    ink: 1,
    scatter: 0,
    slantDoubt,
    spread: { from: start, step, values: Float32Array.from(values) },
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
