import { drawingWords as words } from '#words/common/drawing-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { lengthAlong } from '../../calculation/drawing.ts';
import { needed } from '../../calculation/needed.ts';
import { exactly } from '../../calculation/tape-text.ts';
import type { Dimension, Dimensioned, DimensionOf } from '../../drawing/dimension.ts';
import type { FigureShape, Point } from '../../drawing/figure.ts';
import { lineThrough } from '../../drawing/figure-line.ts';
import { type ExactLength, exactLength, toMm } from '../../lengths/length.ts';
import { changeAllowance } from '../../sewing/seams/seam-change.ts';
import type { SeamAsked } from './fields.ts';
import { type Across, flatEdge, rowsOnFlat } from './flat.ts';
import { girthChange } from './read.ts';

/** The pattern's allowance and the one wanted on one edge; under it what it comes to all round. */
export function drawChange(asked: SeamAsked, bench: Bench): Dimensioned | undefined {
  const { pattern, wanted, seams } = needed({
    pattern: asked.given,
    wanted: asked.wanted,
    seams: asked.seams,
  });
  const found = changeAllowance({ pattern, wanted, seams });
  if (!found.ok) return undefined;
  const { eachEdge, girth } = found.value;
  const widest = Math.max(pattern, wanted);
  const lines: Across[] = [
    ['stitch', 0],
    ['fold', pattern],
    ['cut', wanted],
  ];
  const on = (from: number, to: number, by: DimensionOf) => lengthAlong(0, [from, to], by, bench);
  const changed: DimensionOf = {
    found: eachEdge > 0 ? 'trim-edge' : 'add-edge',
  };
  const [near, far] = [Math.min(pattern, wanted), widest];
  return withGirth(
    { widest, girth, seams, by: { found: 'girth' } },
    flatEdge(0, widest, lines),
    [
      on(0, pattern, { given: 'given' }),
      on(0, wanted, { given: 'wanted' }),
      ...(eachEdge === 0 ? [] : [on(near, far, changed)]),
    ],
    bench,
  );
}

/** One edge that is let out or taken in, with the rows its finish has to keep; under it all seams. */
export function drawGirth(asked: SeamAsked, bench: Bench): Dimensioned | undefined {
  const found = girthChange(asked);
  if (!found.ok) return undefined;
  const { allowance, change, seams } = needed({
    allowance: asked.allowance,
    change: asked.change,
    seams: asked.seams,
  });
  const { eachEdge } = found.value;
  const lines: Across[] = [
    ['fold', 0],
    ['stitch', eachEdge],
    ['cut', allowance],
  ];
  const on = (from: number, to: number, by: DimensionOf) => lengthAlong(0, [from, to], by, bench);
  return withGirth(
    { widest: allowance, girth: change, seams, by: { given: 'change' } },
    flatEdge(0, allowance, lines),
    [
      on(0, allowance, { given: 'allowance' }),
      on(Math.min(0, eachEdge), Math.max(0, eachEdge), { found: 'moved' }),
      on(eachEdge, allowance, { found: 'sewn' }),
      ...rowsOnFlat(asked, [0, eachEdge, allowance], bench),
    ],
    bench,
  );
}

/** What all edges come to together. */
interface AllRound {
  /** Of the edge above, in 1/8000 mm. */
  widest: number;
  girth: ExactLength;
  seams: number;
  by: DimensionOf;
}

/** Longer than so many allowances it would leave the edge too small to be seen: it is cut off. */
const LONGEST = 6;
const BELOW = 0.5;
const MARK = 0.06;

function withGirth(
  { widest, girth, seams, by }: AllRound,
  edge: readonly FigureShape[],
  dimensions: readonly Dimension[],
  bench: Bench,
): Dimensioned {
  const whole = Math.abs(girth);
  const drawn = Math.min(whole, LONGEST * widest);
  const wide = toMm(exactLength(widest));
  const at = (along: number): Point => ({
    x: toMm(exactLength(along)),
    y: BELOW * wide,
  });
  const ticks = Array.from({ length: seams + 1 }, (_, i) => at((i * drawn) / seams));
  const all = { from: at(0), to: at(drawn) };
  return {
    name: words.edgeAndSeams,
    toScale: drawn === whole,
    shapes: [
      ...edge,
      lineThrough('cloth', all.from, all.to),
      ...ticks.map(({ x, y }) =>
        lineThrough('stitch', { x, y: y - MARK * wide }, { x, y: y + MARK * wide }),
      ),
    ],
    dimensions: [
      ...dimensions,
      { ...all, text: exactly(girth, bench), by },
      { ...all, text: words.seams(seams), by: { given: 'seams' } },
    ],
  };
}
