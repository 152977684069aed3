import { UNITS_PER_INCH, UNITS_PER_MM } from '../lengths/length.ts';
import { type BenchUnit, UNITS_PER } from '../lengths/unit.ts';
import { px, type TapeLayout, textWidth } from './tape-layout.ts';
import type { TapeShape } from './tape-shape.ts';

/** Steps between ticks and between numbers, in 1/8000 mm, finest first. */
interface Graduated {
  /** Each divides the next, so that thinned ticks stay evenly spaced. */
  ticks: readonly number[];
  numbers: readonly number[];
}

const METRIC: Graduated = {
  ticks: decades(UNITS_PER_MM, [1, 5]),
  numbers: [5 * UNITS_PER_MM, ...decades(10 * UNITS_PER_MM, [1, 2, 5])],
};

// Above a foot the tape is counted in feet by decades, still numbered in inches.
const INCH: Graduated = {
  ticks: [
    ...[1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 3, 6].map((n) => n * UNITS_PER_INCH),
    ...decades(12 * UNITS_PER_INCH, [1, 5]),
  ],
  numbers: [
    ...[1, 2, 3, 6].map((n) => n * UNITS_PER_INCH),
    ...decades(12 * UNITS_PER_INCH, [1, 2, 5]),
  ],
};

function decades(first: number, within: readonly number[]): number[] {
  return [1, 10, 100, 1e3, 1e4, 1e5].flatMap((ten) => within.map((n) => first * ten * n));
}

/**
 * The ticks and numbers along one edge. There are none before zero: that is
 * where the tape begins.
 * @param lower 0 for the upper edge, 1 for the lower
 * @param longest the run's length, so that panning along it keeps one step of numbers
 */
export function tapeEdge(layout: TapeLayout, lower: 0 | 1, longest: number): TapeShape[] {
  const unit = layout.edges[lower];
  const graduated = unit === 'in' ? INCH : METRIC;
  const step = graduated.ticks.find((each) => each * layout.scale >= layout.tickGap);
  if (step === undefined) return [];
  const last = Math.max(layout.end, longest, 0);
  const numbered = graduated.numbers.find(
    (each) => each % step === 0 && each * layout.scale >= room(layout, unit, last, each),
  );
  // Past the coarsest numbers there is nothing to read, but the ticks still tell the scale.
  const numberStep = numbered ?? Infinity;
  const ranks = graduated.ticks.filter((each) => each >= step && each < numberStep);
  return [
    { shape: 'path', role: 'ticks', d: ticks(layout, lower, step, ranks, numberStep) },
    ...numbers(layout, lower, numberStep),
  ];
}

/** The longest ticks are those with a number; the rest are shorter by rank. */
function ticks(
  layout: TapeLayout,
  lower: 0 | 1,
  step: number,
  ranks: readonly number[],
  numberStep: number,
): string {
  const edge = lower ? layout.height : 0;
  const way = lower ? -1 : 1;
  let d = '';
  for (const at of multiples(layout, step)) {
    const rank = ranks.filter((each) => at % each === 0).length - 1;
    const part = at % numberStep === 0 ? 1 : 0.3 + (0.4 * rank) / (ranks.length - 1 || 1);
    d += `M${layout.x(at)} ${edge}v${px(way * part * layout.tick)}`;
  }
  return d;
}

/** Numbers that are wholly on the strip: half of 12 would read as 1. */
function numbers(layout: TapeLayout, lower: 0 | 1, step: number): TapeShape[] {
  const { labelSize, tick, height, width } = layout;
  const y = px(lower ? height - tick - labelSize * 0.25 : tick + labelSize);
  const shapes: TapeShape[] = [];
  for (const at of multiples(layout, step)) {
    const text = numberText(layout, layout.edges[lower], at);
    const x = layout.x(at);
    const half = textWidth(text, labelSize) / 2;
    if (x >= half && x <= width - half) shapes.push({ shape: 'text', role: 'number', x, y, text });
  }
  return shapes;
}

/** The multiples of `step` on the strip, from zero on. */
function* multiples({ start, end }: TapeLayout, step: number): Generator<number> {
  if (step === Infinity) return;
  for (let n = Math.ceil(Math.max(0, start) / step); n * step <= end; n++) yield n * step;
}

/** px that the widest number up to `last` takes, with the space to the next. */
function room(layout: TapeLayout, unit: BenchUnit, last: number, step: number): number {
  const most = Math.floor(last / step) * step;
  const texts = [most, Math.max(0, most - step)].map((at) => numberText(layout, unit, at));
  return Math.max(...texts.map((text) => textWidth(text, layout.labelSize))) + layout.labelSize / 2;
}

function numberText(layout: TapeLayout, unit: BenchUnit, at: number): string {
  return String(at / UNITS_PER[unit]).replace('.', layout.decimalMark);
}
