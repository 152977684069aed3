import { leastSquares } from '../numerics/solve.ts';
import { centred, type FromCentre } from '../picture/space.ts';
import { graduationAt, type PositionModel } from '../pitch/position.ts';
import { CROWDING, LENS, MOVED } from './limits.ts';

/** A touched line: px along the row, whose centre is where its frame begins, the mm typed for it, and px by which the touch may miss it (1 sigma). */
export interface Along {
  readonly t: FromCentre<'picture'>;
  readonly mm: number;
  readonly spread: number;
}

/** A scale, and what is uncertain of it at each place, in its own graduations (1 sigma). */
export interface SpreadModel {
  readonly model: PositionModel<'picture'>;
  spreadAt(t: FromCentre<'picture'>): number;
}

/**
 * mm = (a·t + b)/(c·t + 1) nearest to the touches, which stand in order, and c as near to 0 as they
 * allow: two leave it there. What is uncertain is found by moving each touch, and c, by its own
 * spread and fitting again.
 */
export function throughTouches(along: readonly Along[]): SpreadModel {
  const model = scaleThrough(along, 0);
  const others = along.flatMap((_, i) => [moved(along, i, MOVED), moved(along, i, -MOVED)]);
  const ways = [
    ...others.map((one) => scaleThrough(one, 0)),
    scaleThrough(along, MOVED),
    scaleThrough(along, -MOVED),
  ];
  const worse = missed(along, model);
  const spreadAt = (t: FromCentre<'picture'>) => {
    const here = graduationAt(model, t);
    const away = ways.map((way) => Math.abs(graduationAt(way, t) - here));
    const each = away
      .filter((_, i) => i % 2 === 0)
      .map((a, i) => Math.max(a, away[2 * i + 1] ?? 0));
    return Math.hypot((worse * Math.hypot(...each)) / MOVED, lensBow(along, t));
  };
  return { model, spreadAt };
}

/** What a lens may bend between two touches that stand next to each other, or beyond the outer ones. */
function lensBow(along: readonly Along[], t: FromCentre<'picture'>): number {
  const { span, range } = sizeOf(along);
  const after = along.findIndex((one) => one.t > t);
  const right = after < 0 ? along.length - 1 : Math.max(1, after);
  const [one, other] = [along[right - 1] as Along, along[right] as Along];
  const apart = (other.t - one.t) / span;
  const part = (t - one.t) / (other.t - one.t);
  return LENS * range * apart ** 2 * Math.abs(4 * part * (1 - part));
}

function moved(along: readonly Along[], which: number, sigmas: number): Along[] {
  return along.map((one, i) =>
    i === which ? { ...one, t: centred(one.t + sigmas * one.spread) } : one,
  );
}

/** With c expected `crowded` sigmas from 0, in the middle between the outer touches. */
function scaleThrough(along: readonly Along[], crowded: number): PositionModel<'picture'> {
  const { middle, span, from, range } = sizeOf(along);
  const rows = along.map(({ t, mm, spread }) => {
    const part = (t - middle) / span;
    const value = (mm - from) / range;
    return [part, 1, -part * value, value, (span / spread) ** 2];
  });
  rows.push([0, 0, 1, crowded * CROWDING, 1 / CROWDING ** 2]);
  const [slope = 1, start = 0.5, bend = 0] = leastSquares(rows, 3) ?? [];
  // From parts of the span about its middle to px from where t is counted.
  const c = bend / span;
  const a = (range * slope) / span + from * c;
  const b = range * start + from;
  const level = 1 - c * middle;
  return { a: a / level, b: (b - a * middle) / level, c: c / level };
}

function missed(along: readonly Along[], model: PositionModel<'picture'>): number {
  const { span, range } = sizeOf(along);
  const misses = along.map(({ t, mm, spread }) => {
    return ((graduationAt(model, t) - mm) / range) * (span / spread);
  });
  return worseThan([...misses, (model.c * span) / CROWDING], along.length - 2);
}

/**
 * How many times what was expected touches miss their scale by; 1 when no more than that.
 *
 * @param misses each in its own sigmas.
 * @param free how many more there are than the scale needs.
 */
export function worseThan(misses: readonly number[], free: number): number {
  if (free === 0) return 1;
  // From one or two misses a sigma is itself not well known.
  return Math.max(
    1,
    (1 + 1 / free) * Math.sqrt(misses.reduce((sum, one) => sum + one * one, 0) / free),
  );
}

function sizeOf(along: readonly Along[]) {
  const first = along[0] as Along;
  const last = along[along.length - 1] as Along;
  const span = last.t - first.t;
  return { middle: (first.t + last.t) / 2, span, from: first.mm, range: last.mm - first.mm };
}
