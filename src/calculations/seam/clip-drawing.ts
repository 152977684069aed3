import { drawingWords as words } from '#words/common/drawing-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { lengthAt } from '../../calculation/drawing.ts';
import type { Dimension, Dimensioned } from '../../drawing/dimension.ts';
import type { FigureShape, LineStyle, Point } from '../../drawing/figure.ts';
import { lineThrough } from '../../drawing/figure-line.ts';
import { type ExactLength, toMm } from '../../lengths/length.ts';
import { type ClipInput, type Clips, clipCurve } from '../../sewing/seams/seam-clips.ts';
import type { SeamAsked } from './fields.ts';
import { clipInput } from './read.ts';

/** Spaces drawn at most: few enough for clips to be told apart; and where the curve has no length. */
const MOST_SPACES = 12;
const SPACES = 6;
/** Of an arc that goes on round, its chord is measured no further than over a half circle. */
const HALF = Math.PI / 2;

/** A stretch of a curved seam with its raw edge outside, a place by its distance from the middle and its turn. */
interface Arc {
  place(from: number, turn: number): Point;
  radius: number;
  raw: number;
  /** From one clip to the next, and in all, as turns. */
  step: number;
  spaces: number;
}

/** A curved seam with its clips; lengths along it are measured round it. */
export function drawClips(asked: SeamAsked, bench: Bench): Dimensioned | undefined {
  const input = clipInput(asked);
  const found = clipCurve(input);
  if (!found.ok) return undefined;
  const arc = arcOf(input, found.value);
  return {
    name: words.clips,
    toScale: false,
    shapes: shapes(arc, toMm(found.value.deep)),
    dimensions: dimensions(input, found.value, arc, bench),
  };
}

function arcOf({ radius, allowance, along }: ClipInput, { spacing, run }: Clips): Arc {
  const round = toMm(radius);
  const all = run ? run.marks.length + 1 : SPACES;
  const space = along !== undefined && run ? toMm(along) / all : toMm(spacing);
  return {
    place: (from, turn) => ({
      x: from * Math.sin(turn),
      y: -from * Math.cos(turn),
    }),
    radius: round,
    raw: round + toMm(allowance),
    step: space / round,
    spaces: Math.min(all, MOST_SPACES),
  };
}

/** Where the clip so many spaces on lies. */
function turnOf({ step, spaces }: Arc, clip: number): number {
  return (clip - spaces / 2) * step;
}

function shapes(arc: Arc, deep: number): FigureShape[] {
  const { place, radius, raw, spaces } = arc;
  const points = 8 * spaces;
  const round = (style: LineStyle, from: number) =>
    lineThrough(
      style,
      ...Array.from({ length: points + 1 }, (_, i) => place(from, turnOf(arc, i / 8))),
    );
  const clips = Array.from({ length: spaces - 1 }, (_, i) => turnOf(arc, i + 1));
  return [
    round('stitch', radius),
    round('cloth', raw),
    ...clips.map((turn) => lineThrough('cut', place(raw, turn), place(raw - deep, turn))),
  ];
}

function dimensions(
  { radius, allowance, opening, along }: ClipInput,
  { spacing, deep, run }: Clips,
  arc: Arc,
  bench: Bench,
): Dimension[] {
  const { place, raw, spaces } = arc;
  const line = arc.radius;
  const clip = turnOf(arc, Math.floor(spaces / 2));
  const next = turnOf(arc, Math.floor(spaces / 2) + 1);
  const end = Math.min(HALF, turnOf(arc, spaces));
  const ends = (from: number) => [place(from, -end), place(from, end)] as const;
  const opens = toMm(opening) / 2 / raw;
  // As far towards the middle as the stretch is wide.
  const inward = Math.min(line, Math.max(raw - line, 2 * line * Math.sin(end)));
  const given = (
    [from, to]: readonly [Point, Point],
    length: ExactLength,
    key: string,
  ): Dimension => lengthAt([from, to], length, { given: key }, bench);
  return [
    given([place(line, 0), place(raw, 0)], allowance, 'allowance'),
    given([place(line, 0), place(line - inward, 0)], radius, 'radius'),
    given([place(raw, clip - opens), place(raw, clip + opens)], opening, 'opening'),
    lengthAt(
      [place(raw, clip), place(raw - toMm(deep), clip)],
      deep,
      { found: 'clip-deep' },
      bench,
    ),
    lengthAt([place(line, clip), place(line, next)], spacing, { found: 'clip-space' }, bench),
    ...(along === undefined ? [] : [given(ends(line), along, 'along')]),
    ...(run
      ? [
          {
            from: ends(raw)[0],
            to: ends(raw)[1],
            text: words.clipCount(run.marks.length),
            by: { found: 'clip-count' },
          } as const,
        ]
      : []),
  ];
}
