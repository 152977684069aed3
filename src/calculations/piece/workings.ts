import { pieceWords as words } from '#words/calculations/piece-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import type { Sized } from '../../sewing/piece.ts';
import { FITTING } from '../../sewing/sources/pieces.ts';
import { isSquare, takesNothing } from './lacks.ts';
import type { PieceFound } from './read.ts';

const { formula } = words;

/** How a piece was got, with its numbers in it. */
export function pieceWorkings(found: PieceFound, bench: Bench): Working[] {
  const { input, plan } = found;
  const { shrinks } = input;
  const ways = [
    [plan.across, takenAcross(found, bench), shrinks.across],
    [plan.along, takenAlong(found, bench), shrinks.along],
  ] as const;
  const shrinking = (percent: number) => (percent > 0 ? words.shrinkage : words.source);
  return [
    ...slantWorking(found, bench),
    ...ways.flatMap(([way, taken, percent]) =>
      way ? worked(way, { taken, percent, found }, bench, shrinking(percent)) : [],
    ),
    ...(takesNothing(found) ? [{ formula: words.published(FITTING), source: '' }] : []),
  ];
}

interface How {
  /** What the edges take, each as a term. */
  taken: readonly string[];
  percent: number;
  found: PieceFound;
}

/** One way, from its finished size to what is cut or back. */
function worked(
  { cut, gives, takes, times }: Sized,
  { taken, percent, found }: How,
  bench: Bench,
  source: string,
): Working[] {
  const show = (x: ExactLength) => exactly(x, bench);
  const lost = shownNumber(percent, 6, bench.decimalMark);
  const parts: string[] = [];
  if (found.input.given === 'finished') {
    const sum = show(exactLength(gives / times + takes));
    const size = times === 2 ? formula.half(show(gives)) : show(gives);
    if (times === 2 || taken.length > 0) parts.push(formula.cut([size, ...taken].join(' + '), sum));
    if (percent > 0) parts.push(formula.shrinks(sum, lost, show(cut)));
  } else {
    const left = exactLength((cut * (100 - percent)) / 100);
    const half = exactLength(left - takes);
    if (percent > 0) parts.push(formula.shrunk(show(cut), lost, show(left)));
    if (taken.length > 0) parts.push(formula.cut([show(left), ...taken].join(' − '), show(half)));
    if (times === 2) parts.push(formula.twice(show(half), show(gives)));
  }
  return parts.length > 0 ? [{ formula: parts.join(' '), source }] : [];
}

function takenAlong({ input: { edges } }: PieceFound, bench: Bench): string[] {
  return [edges.top, edges.bottom].flatMap((one) => (one === 0 ? [] : [exactly(one, bench)]));
}

/** Both sides alike are twice one of them. */
function takenAcross({ asked, input }: PieceFound, bench: Bench): string[] {
  const { edges, fold, angle } = input;
  const wide = (edge: ExactLength) => exactly(acrossOf(edge, angle), bench);
  if (!fold && asked.sides === 'alike') return edges.side === 0 ? [] : [`2 × ${wide(edges.side)}`];
  const sides = fold ? [edges.side] : [edges.side, edges.other];
  return sides.flatMap((one) => (one === 0 ? [] : [wide(one)]));
}

/** What slanted sides take along the bottom, and their raw corner. */
function slantWorking(found: PieceFound, bench: Bench): Working[] {
  if (isSquare(found)) return [];
  const { edges, angle, fold } = found.input;
  const show = (x: ExactLength) => exactly(x, bench);
  const degrees = shownNumber(angle, 6, bench.decimalMark);
  const sides = [...new Set(fold ? [edges.side] : [edges.side, edges.other])];
  const { alongBottom, alongSide } = found.plan.corner;
  const corner = (own: ExactLength, other: ExactLength, beyond: ExactLength) =>
    formula.corner(show(own), show(other), degrees, show(beyond));
  return [
    {
      formula: [
        ...sides
          .filter((one) => one > 0)
          .map((one) => formula.slant(show(one), degrees, show(acrossOf(one, angle)))),
        corner(edges.bottom, edges.side, alongBottom),
        corner(edges.side, edges.bottom, alongSide),
      ].join(' '),
      source: words.derived,
    },
  ];
}

function acrossOf(edge: ExactLength, angle: number): ExactLength {
  return exactLength(edge / Math.sin((angle * Math.PI) / 180));
}
