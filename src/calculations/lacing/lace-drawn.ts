import { drawingWords as words } from '#words/common/drawing-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { lengthAt } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import type { Figure } from '../../drawing/figure.ts';
import { lineThrough } from '../../drawing/figure-line.ts';
import type { WholeLine } from '../../drawing/whole-line.ts';
import { type ExactLength, exactLength, toMm } from '../../lengths/length.ts';
import type { Laced } from '../../sewing/lacing/lacing.ts';
import type { LacingInput } from '../../sewing/lacing/lacing-input.ts';

/** More pieces than so many are not told apart. */
const MOST_PIECES = 24;

/** Where the lace of each row begins, when all of it is laid on end. */
function startsOf(rows: readonly Laced[]): number[] {
  const [first] = rows;
  return [0, first?.total ?? 0];
}

/** All of the lace laid straight: its ends, its tails, its pieces. */
export function laceLines(
  rows: readonly Laced[],
  { tail }: LacingInput,
  { at, across }: WholeLine,
): Figure {
  const mm = (along: number) => toMm(exactLength(along));
  return rows.flatMap(({ total, pieces }, i) => {
    const from = startsOf(rows)[i] ?? 0;
    const joins = pieces > MOST_PIECES ? 1 : pieces;
    return [
      lineThrough('stitch', at(mm(from)), at(mm(from + total))),
      ...[0, tail, total - tail].map((along) => across('fold', mm(from + along))),
      ...Array.from({ length: joins }, (_, k) =>
        across('cut', mm(from + (total * (k + 1)) / joins), 2),
      ),
    ];
  });
}

/** What is measured along the lace. */
export function laceOf(
  rows: readonly Laced[],
  { tail, longest }: LacingInput,
  { at }: WholeLine,
  bench: Bench,
): Dimension[] {
  const all = rows.reduce((sum, { total }) => sum + total, 0);
  const between = (from: number, to: number) =>
    [at(toMm(exactLength(from))), at(toMm(exactLength(to)))] as const;
  const on = (from: number, length: ExactLength, by: DimensionOf) =>
    lengthAt(between(from, Math.min(all, from + length)), length, by, bench);
  return [
    on(0, tail, { given: 'tail' }),
    // As far as there is lace.
    on(0, longest, { given: 'longest' }),
    ...rows.flatMap((laced, i) => ofLace(laced, startsOf(rows)[i] ?? 0, i === 0 ? '' : '-2', on)),
    ...(rows.length > 1 ? [on(0, exactLength(all), { found: 'lace-all' })] : []),
  ];
}

function ofLace(
  { total, pieces, each, middle }: Laced,
  from: number,
  row: string,
  on: (from: number, length: ExactLength, by: DimensionOf) => Dimension,
): Dimension[] {
  const [toFirst, toLast] = middle?.halves ?? [];
  const whole = on(from, total, { found: `lace${row}` });
  return [
    whole,
    ...(pieces > 1
      ? [
          on(from, each, { found: `piece${row}` }),
          { ...whole, text: words.pieces(pieces), by: { found: `pieces${row}` } },
        ]
      : []),
    ...(toFirst === undefined || toLast === undefined
      ? []
      : [
          on(from, toFirst, { found: `to-first${row}` }),
          on(from + toFirst, toLast, { found: `to-last${row}` }),
        ]),
  ];
}
