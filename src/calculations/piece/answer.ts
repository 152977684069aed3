import { pieceWords as words } from '#words/calculations/piece-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Draft, Line, Offer } from '../../calculation/calculation.ts';
import { linesSaid } from '../../calculation/only-said.ts';
import { byTape, exactly, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { downToGraduation, upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { isLevel, type Sized } from '../../sewing/pieces/piece.ts';
import { isUpright } from '../../sewing/pieces/piece-input.ts';
import { FITTING } from '../../sewing/sources/pieces.ts';
import { rawCorners } from './corners.ts';
import type { PieceTyped } from './fields.ts';
import { pieceFigure } from './figure.ts';
import { isSquare, type Lack, lacks, takesNothing } from './lacks.ts';
import type { PieceFound } from './read.ts';
import { pieceWorkings } from './workings.ts';

/** A piece as an answer. */
export function pieceAnswer(found: PieceFound, draft: Draft, bench: Bench): Answer {
  const short = lacks(found);
  return {
    headline: headline(found, short[0], bench),
    sentence: sentence(found, short[0], bench),
    lines: lines(found, bench),
    offers: takesNothing(found) ? offers(draft, bench) : [],
    warnings: warnings(found, short, bench),
    cautions: found.input.given === 'cut' ? [] : [words.before, cautionWords.shears],
    runs: [],
    figures: [{ name: words.figure, draw: () => pieceFigure(found) }],
    workings: pieceWorkings(found, bench),
  };
}

/** What is cut, on the next graduation; of what was cut what it gives, or what that lacks. */
function headline({ input, plan }: PieceFound, short: Lack | undefined, bench: Bench) {
  if (short) return { number: byTape(short.by, bench), after: words.lacks[short.way] };
  const cut = input.given === 'finished';
  const round = cut ? upToGraduation : downToGraduation;
  const size = (way: Sized) => (cut ? way.cut : way.gives);
  const ways = [plan.across, plan.along].flatMap((way) => (way ? [size(way)] : []));
  const shown = ways.map((one) => numberOnTape(one, bench, round));
  const rounded = shown.some((one) => one.rounded);
  const [first = '', second] = ways.map((one) => onTape(one, bench, round));
  const which = second !== undefined ? 'both' : plan.across ? 'width' : 'length';
  return {
    before: rounded ? words.about : '',
    // The unit is said once, after both.
    number:
      second === undefined ? first : words.both(first.slice(0, -bench.unit.length - 1), second),
    after: (cut ? words.after : words.gives)[which],
  };
}

function sentence({ input, plan }: PieceFound, short: Lack | undefined, bench: Bench): string {
  if (input.given === 'cut') {
    const text = (way: Sized | undefined) => way && byTape(way.gives, bench);
    const gives = words.wasCut(text(plan.across), text(plan.along));
    if (!short) return gives;
    const wanted = byTape(short.wanted, bench);
    return `${gives} ${words.wasLess(wanted, byTape(short.takes, bench))}`;
  }
  if (!input.fold) return words.flat;
  const half = plan.across?.cut;
  const opened = half && exactLength(2 * half);
  const text = (x: ExactLength | undefined) => x && onTape(x, bench, upToGraduation);
  return words.onFold(text(half), text(opened));
}

function lines(found: PieceFound, bench: Bench): Line[] {
  const { asked, input, plan } = found;
  const { across, along, corner, widest, longest } = plan;
  const show = (x: ExactLength) => byTape(x, bench);
  const takes = (x: ExactLength) => onTape(x, bench, upToGraduation);
  const list: [string, string | undefined][] = [
    [
      words.across[asked.adds],
      across && words.widthTake[input.fold ? 'fold' : 'flat'](show(across.takes)),
    ],
    [words.along[asked.adds], along && show(along.takes)],
    [words.opened, across && input.fold ? takes(exactLength(2 * across.cut)) : undefined],
    [words.widest, isUpright(input) ? undefined : widest && takes(widest)],
    [words.longest, isLevel(input) ? undefined : longest && takes(longest)],
    [
      words.corner,
      isSquare(found)
        ? undefined
        : words.cornerOf(show(corner.alongBottom), show(corner.alongSide)),
    ],
    [words.pieces, words.piecesOf(asked.count, asked.pairs === 'pairs')],
  ];
  return [...linesSaid(list), ...rawCorners(found, bench)];
}

function warnings(found: PieceFound, short: readonly Lack[], bench: Bench): string[] {
  const { asked, input, plan } = found;
  const over =
    asked.cloth === undefined || plan.widest === undefined ? 0 : plan.widest - asked.cloth;
  return [
    // The first of them is the headline.
    ...short.slice(1).map(({ by, way }) => `${byTape(by, bench)} ${words.lacks[way]}.`),
    ...(over > 0 ? [words.tooWide(byTape(exactLength(over), bench))] : []),
    ...(takesNothing(found) ? [words.noEdge] : []),
    ...(isSquare(found) ? [] : [words.slanted]),
    ...(input.slants && !isUpright(input) ? [words.slantedOwn(input.fold)] : []),
  ];
}

/** What is published for drafted pieces, where nothing is typed yet. */
function offers(draft: Draft, bench: Bench): Offer[] {
  return (['skirt', 'bodice', 'sleeve'] as const).map((what) => {
    const { top, bottom, side } = FITTING.value[what];
    const [high, wide] = [exactly(top, bench), exactly(side, bench)];
    const take: PieceTyped = {
      top: high,
      side: wide,
      ...(bottom !== undefined && { bottom: exactly(bottom, bench) }),
    };
    return { words: words.offerOf(words.offer[what], high, wide), take: { ...draft, ...take } };
  });
}
