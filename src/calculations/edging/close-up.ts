import { drawingWords as words } from '#words/common/drawing-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { lengthAt } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import type { Figure } from '../../drawing/figure.ts';
import { holesSeen, stripCorner, stripLines } from '../../drawing/strip-figure.ts';
import {
  besideCorner,
  type DrawnStrip,
  type Stretch,
  stretchAt,
  stretchOf,
} from '../../drawing/strip-places.ts';
import { type ExactLength, type Length, toMm } from '../../lengths/length.ts';
import type { StripHoles, StripInput } from '../../sewing/edging/strip.ts';
import { drawnOf } from './drawn.ts';
import type { EdgingAsked } from './fields.ts';
import { MOST_SIDES, widestPitch } from './punched.ts';

/** A part of the strip that is near enough for its holes to be told apart. */
export interface CloseUp {
  strip: DrawnStrip;
  shapes: Figure;
  stretch: Stretch;
  /** The holes of each row that are seen, along the middle line, from where it is measured. */
  rows: readonly (readonly number[])[];
  /** Whether they are in order along the strip, or back from a corner. */
  way: 1 | -1;
  /** Where measures across the strip are clear of the hole. */
  clear: number;
  /** All of the strip is seen, and straight. */
  whole: boolean;
}

/** Pitches seen beyond the first hole, however far in it is. */
const BEYOND_FIRST = 3;

/** A strip near its cut end, or at its first corner. */
export function closeOf(input: StripInput, rows: StripHoles['rows']): CloseUp {
  const strip = drawnOf(
    input,
    rows,
    rows.flatMap(({ runs }) => runs),
  );
  return input.corners.length > 0 ? atCorner(strip, input, rows) : atStart(strip);
}

function atCorner(strip: DrawnStrip, { angle }: StripInput, rows: StripHoles['rows']): CloseUp {
  const corner = toMm(rows[0]?.runs[0]?.length ?? (0 as Length));
  const stretch = besideCorner(strip, corner, angle).first;
  return {
    strip,
    shapes: stripCorner(strip, corner, angle),
    stretch,
    rows: seenIn(strip, stretch).map((row) => row.reverse()),
    way: -1,
    clear: stretch.from,
    whole: false,
  };
}

function atStart(strip: DrawnStrip): CloseUp {
  const { radius, length, pitch } = strip;
  const [row] = strip.rows;
  const first = (row?.sides[0]?.[0] ?? 0) * stretchAt(strip, row?.across ?? 0);
  const stretch = stretchOf(strip, 'start', first + BEYOND_FIRST * pitch);
  const seen = seenIn(strip, stretch);
  return {
    strip,
    shapes: stripLines(strip, stretch),
    stretch,
    // At the top of a bend it lies level.
    rows: radius === undefined ? seen : seen.map((one) => one.slice(Math.floor(one.length / 2))),
    way: 1,
    clear: radius === undefined ? stretch.to : (stretch.from + stretch.to) / 2,
    whole: radius === undefined && stretch.to === length,
  };
}

function seenIn(strip: DrawnStrip, stretch: Stretch): number[][] {
  return strip.rows.map(({ across, sides }) =>
    holesSeen(strip, sides[0] ?? [], across, stretch).map(({ along }) => along),
  );
}

/** What is measured at the holes: across the strip, from hole to hole, and round the bend. */
export function besideHole(
  asked: EdgingAsked,
  { rows }: Pick<StripHoles, 'rows'>,
  close: CloseUp,
  bench: Bench,
): Dimension[] {
  const { strip, stretch, way, clear } = close;
  const { place } = stretch;
  const { width, margin, hole, pitch, end, teeth, radius, corners } = asked;
  const [holes = []] = close.rows;
  const [first = stretch.from] = holes;
  const line = toMm(margin);
  const along = (from: number, to: number) => [place(from, line), place(to, line)] as const;
  const across = (at: number, to: number) => [place(at, 0), place(at, to)] as const;
  const given = (key: string): DimensionOf => ({ given: key });
  const half = toMm(hole) / 2;
  const last = holes[Math.min(teeth ?? 0, holes.length) - 1] ?? first;
  return [
    lengthAt(across(clear, strip.width), width, given('width'), bench),
    lengthAt(across(first, line), margin, given('margin'), bench),
    lengthAt(along(first - half, first + half), hole, given('hole'), bench),
    // Holes that follow others are each so far from the next as there.
    ...(pitch === undefined
      ? []
      : [
          lengthAt(along(first, first + way * strip.pitch), pitch, given('pitch'), bench),
          ...pitchesFound(pitch, rows, close, bench),
        ]),
    ...(end === undefined || corners.length > 0
      ? []
      : [lengthAt(along(0, toMm(end)), end, given('end'), bench)]),
    ...(teeth === undefined
      ? []
      : [toEnds(along(first, last), words.teeth(teeth), given('teeth'))]),
    ...(radius === undefined ? [] : [bend(radius, close, bench)]),
  ];
}

/** How far apart the holes of each row are, where that isn't what was wanted. */
function pitchesFound(
  wanted: Length,
  rows: StripHoles['rows'],
  close: CloseUp,
  bench: Bench,
): Dimension[] {
  const { place } = close.stretch;
  const keys = ['pitch', 'pitch-2'];
  const found: ExactLength[] = [wanted];
  return rows.flatMap(({ runs }, i): Dimension[] => {
    const widest = widestPitch(runs);
    const [from, to] = close.rows[i] ?? [];
    if (runs.length > MOST_SIDES || !widest.ok || from === undefined || to === undefined) return [];
    if (found.includes(widest.value)) return [];
    found.push(widest.value);
    const across = close.strip.rows[i]?.across ?? 0;
    const ends = [place(from, across), place(to, across)] as const;
    return [lengthAt(ends, widest.value, { found: keys[i] ?? '' }, bench)];
  });
}

/** From the middle line towards the middle of the bend: all the way, where it isn't far off. */
function bend(radius: Length, { strip, stretch, clear }: CloseUp, bench: Bench): Dimension {
  const from = stretch.place(clear, strip.width / 2);
  const far = Math.min(toMm(radius), stretch.to - stretch.from);
  return lengthAt([from, { x: from.x, y: from.y + far }], radius, { given: 'radius' }, bench);
}

function toEnds(
  [from, to]: readonly [Dimension['from'], Dimension['to']],
  text: string,
  by: DimensionOf,
): Dimension {
  return { from, to, text, by };
}
