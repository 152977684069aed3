import { mmPerUnit, type TapeUnit } from '../tape/graduations/tape-unit.ts';
import type { Point } from '../tape/picture/place.ts';
import type { TouchedScale } from '../tape/protocol.ts';
import { isOneEdge } from '../tape/scales/one-edge.ts';
import { answered, questionFor } from '../tape/scales/question.ts';
import { readingAt } from '../tape/scales/read-at.ts';
import {
  outlineOf,
  placeOn,
  pointOn,
  type ReadScale,
  tickOfValue,
  valueAtTick,
} from '../tape/scales/scale.ts';
import type { PointReason, TapeQuestion, TapeReading } from '../tape/scales/tape-reading.ts';
import type { Touch } from '../tape/touch/touch.ts';

export { printable } from '../tape/scales/question.ts';

/** What a screen needs to know of a reading. */
export type Reading = TapeReading;
export type Place = Point;
/** A hairline. One that waits was put where it stands by no one: it reads nothing until it is moved. */
export type Hair = Place & { readonly waits?: true };
export type Question = TapeQuestion;
export type Touched = Touch;
export type TouchFault = Extract<TouchedScale, { ok: false }>['reason'];

/** What the hairlines tell, in mm; `uncertaintyMm` is the half width of the 95 % interval. */
export type Told =
  | { ok: true; mm: number; uncertaintyMm: number }
  | { ok: false; reason: PointReason | 'two-scales' | 'not-aimed' };

/**
 * What one hairline reads from its scale's zero, or how far two are apart.
 *
 * The doubts of two lines are taken as independent, so they add up as squares do (derived here).
 */
export function told(reading: TapeReading, lines: readonly Hair[]): Told {
  const [first, second] = lines;
  if (lines.some(({ waits }) => waits)) return { ok: false, reason: 'not-aimed' };
  if (!first) {
    return { ok: false, reason: reading.outcome === 'ask' ? 'not-sure-yet' : 'nothing-read' };
  }
  const one = readingAt(reading, first);
  if (!one.ok || !second) return one;
  const other = readingAt(reading, second);
  if (!other.ok) return other;
  const [scale, otherScale] = [reading.scales[one.scale], reading.scales[other.scale]];
  if (!scale || !otherScale || !isOneEdge(scale, otherScale))
    return { ok: false, reason: 'two-scales' };
  return {
    ok: true,
    mm: Math.abs(one.mm - other.mm),
    uncertaintyMm: Math.hypot(one.uncertaintyMm, other.uncertaintyMm),
  };
}

/** Where hairlines first wait: inside the surest scale, `part` of the way along what can be read. */
export function firstPlace(reading: TapeReading, part: number): Hair | undefined {
  const scale = reading.scales.find(({ sure }) => sure);
  if (!scale) return undefined;
  const [from, to] = rangeOf(scale);
  return { ...pointOn(scale.geometry, from + (to - from) * part, middleOf(scale)), waits: true };
}

/** Where a second hairline first waits: a quarter of the edge away from the first, towards the longer end. */
export function secondPlace(reading: TapeReading, first: Point): Hair | undefined {
  const scale = nearest(reading, first);
  if (!scale?.sure) return firstPlace(reading, 0.75);
  const parts = partsOf(reading, scale);
  const length =
    Math.max(...parts.map(({ high }) => high)) - Math.min(...parts.map(({ low }) => low));
  const by = (partOf(reading, first) < 0.6 ? 0.25 : -0.25) * length;
  return { ...movedBy(reading, first, by), waits: true };
}

/**
 * A place moved along its edge by some mm of it, towards larger values, over what hides a part
 * of it; it stays where it can be read.
 */
export function movedBy(reading: TapeReading, at: Point, mm: number): Point {
  const scale = nearest(reading, at);
  if (!scale) return at;
  const { tick, across } = placeOn(scale.geometry, at);
  const wanted = mmAt(scale, tick) + mm;
  const parts = partsOf(reading, scale);
  const ahead = parts.filter(({ low, high }) => (mm < 0 ? low <= wanted : high >= wanted));
  const part =
    (mm < 0 ? ahead[ahead.length - 1] : ahead[0]) ?? parts[mm < 0 ? 0 : parts.length - 1];
  if (!part) return at;
  const placeOf = (mmThere: number) => {
    const tick = tickOfValue(part.scale, mmThere / mmPerUnit[part.scale.unit]);
    return pointOn(part.scale.geometry, tick, across);
  };
  if (wanted >= part.low && wanted <= part.high) return placeOf(wanted);
  return readableFrom(
    reading,
    placeOf,
    wanted < part.low ? [part.low, part.high] : [part.high, part.low],
  );
}

/** More than a few outlines point at nothing. */
const MOST_ROWS_SHOWN = 3;

/** Mm from an end of what can be read to where it surely is, and from there on. */
const INSIDE = 0.02;
const INWARDS = 0.5;

/** The first place from one end towards the other that is in the picture and is read. */
function readableFrom(
  reading: TapeReading,
  placeOf: (mm: number) => Point,
  [end, far]: readonly [number, number],
): Point {
  const step = Math.sign(far - end) * INWARDS;
  const start = end + Math.sign(step) * INSIDE;
  for (let i = 0; Math.abs(i * step) < Math.abs(far - end); i++) {
    const place = placeOf(start + i * step);
    if (isInside(reading, place) && readingAt(reading, place).ok) return place;
  }
  return placeOf(end);
}

function isInside({ width, height }: TapeReading, { x, y }: Point): boolean {
  return x >= 0 && y >= 0 && x <= width - 1 && y <= height - 1;
}

/** How far along what can be read a place is, from 0 to 1, in the direction of larger values. */
export function partOf(reading: TapeReading, at: Point): number {
  const scale = nearest(reading, at);
  if (!scale) return 0;
  const parts = partsOf(reading, scale);
  const low = Math.min(...parts.map((part) => part.low));
  const high = Math.max(...parts.map((part) => part.high));
  const mm = mmAt(scale, placeOn(scale.geometry, at).tick);
  return Math.min(1, Math.max(0, (mm - low) / (high - low || 1)));
}

/** The parts of a scale's edge that can be read, in mm from its zero, the lowest first. */
function partsOf({ scales }: TapeReading, edge: ReadScale) {
  return scales
    .filter((scale) => scale.sure === edge.sure && isOneEdge(edge, scale))
    .map((scale) => {
      const ends = rangeOf(scale).map((tick) => mmAt(scale, tick));
      return { scale, low: Math.min(...ends), high: Math.max(...ends) };
    })
    .sort((one, other) => one.low - other.low);
}

function mmAt(scale: ReadScale, tick: number): number {
  return valueAtTick(scale, tick) * mmPerUnit[scale.unit];
}

/** How far a hairline is drawn beyond the scale, so that it meets the cloth beside it. */
const BEYOND_MM = 25;

/** Both ends of a hairline: across its scale, well beyond the lines and through the place itself. */
export function hairline(reading: TapeReading, at: Point): readonly [Point, Point] | undefined {
  const scale = nearest(reading, at);
  if (!scale) return undefined;
  const { geometry } = scale;
  const { tick, across } = placeOn(geometry, at);
  const beyond = BEYOND_MM / scale.mmPerTick;
  const edges = [geometry.zoneFrom, geometry.zoneTo, geometry.numbersAcross, across];
  const low = Math.min(...edges) - beyond;
  const high = Math.max(...edges) + beyond;
  return [pointOn(geometry, tick, low), pointOn(geometry, tick, high)];
}

/** How far beyond the printed numbers the numbers read are shown, so that they cover nothing. */
const BESIDE_MM = 5;

/** Where a number that was read is shown: beside its print, on the side away from the lines. */
export function beside({ geometry, mmPerTick }: ReadScale, number: Point): Point {
  const { zoneFrom, zoneTo, numbersAcross } = geometry;
  const outwards = Math.sign(numbersAcross - (zoneFrom + zoneTo) / 2) || 1;
  const { tick } = placeOn(geometry, number);
  return pointOn(geometry, tick, numbersAcross + (outwards * BESIDE_MM) / mmPerTick);
}

/** The scale whose lines are nearest, those past its end being farther off. */
function nearest(reading: TapeReading, at: Point): ReadScale | undefined {
  const away = (scale: ReadScale) => {
    const { tick, away: beside, pitch } = placeOn(scale.geometry, at);
    const [from, to] = rangeOf(scale);
    return Math.hypot(beside, Math.max(from - tick, tick - to, 0) * Math.abs(pitch));
  };
  return [...reading.scales]
    .filter((scale) => Number.isFinite(away(scale)))
    .sort((one, other) => away(one) - away(other))[0];
}

/** First and last graduation that can be read. */
function rangeOf({ stretches, geometry }: ReadScale): readonly [number, number] {
  if (stretches.length === 0) return [geometry.from, geometry.to];
  return [
    Math.min(...stretches.map(({ from }) => from)),
    Math.max(...stretches.map(({ to }) => to)),
  ];
}

function middleOf({ geometry: { zoneFrom, zoneTo } }: ReadScale): number {
  return (zoneFrom + zoneTo) / 2;
}

/** Outlines of the rows of graduations whose numbers could not be read, the clearest first. */
export function rowsSeen({ unread = [] }: TapeReading): Point[][] {
  return unread.slice(0, MOST_ROWS_SHOWN).map((geometry) => {
    const { from, to, zoneFrom, zoneTo } = geometry;
    return outlineOf(geometry, from, to, zoneFrom, zoneTo);
  });
}

/** What is asked before a number is told: of the scale a line stands on, or of the whole picture. */
export function questionAt(
  reading: TapeReading,
  lines: readonly Point[],
): TapeQuestion | undefined {
  for (const { x, y } of lines) {
    const at = readingAt(reading, { x, y });
    if (!at.ok && at.scale !== undefined) return questionFor(reading.scales, at.scale);
  }
  return reading.outcome === 'ask' ? reading.question : undefined;
}

/** The reading once the maker has answered a question about it. */
export function answerTo(
  reading: TapeReading,
  question: TapeQuestion,
  answer: { kind: 'line'; value: number } | { kind: 'unit'; unit: TapeUnit },
): TapeReading {
  return answered({ ...reading, question }, answer);
}
