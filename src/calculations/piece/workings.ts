import { pieceWords as words } from '#words/calculations/piece-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import type { Sized } from '../../sewing/pieces/piece.ts';
import { addingTo, beyondOf, type Way } from '../../sewing/pieces/piece-input.ts';
import { FITTING } from '../../sewing/sources/pieces.ts';
import { isSquare, takesNothing } from './lacks.ts';
import type { PieceFound } from './read.ts';
import { farOf, slantsWorking, slantTerms } from './slant-workings.ts';

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
    ...slantsWorking(found, bench),
    ...ways.flatMap(([way, taken, percent]) =>
      way ? worked(way, { taken, percent, found }, bench, shrinking(percent)) : [],
    ),
    ...(takesNothing(found) ? [{ formula: words.published(FITTING), source: '' }] : []),
    ...(plan.along && !input.slants ? [{ formula: words.level, source: words.derived }] : []),
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

function takenAlong({ input }: PieceFound, bench: Bench): string[] {
  if (input.slants) return slantTerms(input, ['top', 'bottom'], bench);
  return takenBy(input, 'length').map((one) => exactly(one, bench));
}

/** Both sides alike are twice one of them. */
function takenAcross({ asked, input }: PieceFound, bench: Bench): string[] {
  if (input.slants) {
    return slantTerms(input, ['side', ...farOf(input)], bench);
  }
  const wide = takenBy(input, 'width').map((one) => exactly(acrossOf(one, input.angle), bench));
  const [own, both] = [input.edges.side, addingTo(input, 'width').includes('other')];
  if (asked.sides !== 'alike' || !both || own === 0) return wide;
  return [...wide.slice(0, -2), `2 × ${wide.at(-1)}`];
}

/** The allowances that add to one way, but those of nothing. */
function takenBy(input: PieceFound['input'], way: Way): Length[] {
  return addingTo(input, way).flatMap((edge) =>
    input.edges[edge] === 0 ? [] : [input.edges[edge]],
  );
}

/** What slanted sides take along the bottom, and their raw corner. */
function slantWorking(found: PieceFound, bench: Bench): Working[] {
  if (isSquare(found)) return [];
  const { angle } = found.input;
  const { bottom, side } = beyondOf(found.input);
  const show = (x: ExactLength) => exactly(x, bench);
  const degrees = shownNumber(angle, 6, bench.decimalMark);
  const sides = [...new Set(takenBy(found.input, 'width'))];
  const { alongBottom, alongSide } = found.plan.corner;
  const corner = (own: ExactLength, other: ExactLength, beyond: ExactLength) =>
    formula.corner(show(own), show(other), degrees, show(beyond));
  return [
    {
      formula: [
        ...sides.map((one) => formula.slant(show(one), degrees, show(acrossOf(one, angle)))),
        corner(bottom, side, alongBottom),
        corner(side, bottom, alongSide),
      ].join(' '),
      source: words.derived,
    },
  ];
}

function acrossOf(edge: ExactLength, angle: number): ExactLength {
  return exactLength(edge / Math.sin((angle * Math.PI) / 180));
}
