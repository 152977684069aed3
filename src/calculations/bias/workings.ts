import { biasAnswerWords as words } from '#words/calculations/bias-answer-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import { alongSelvedge, areaFor, areaGives, joinTakes } from '../../sewing/cloth/bias.ts';
import { BY_AREA, CORNERS, THIRD_MORE } from '../../sewing/sources/bias.ts';
import { type BiasAsked, hasPiece } from './fields.ts';
import { areaOfRound, stripsInput, type Worked } from './worked.ts';

const { formula } = words;

/** How strip and cloth were got, with their numbers in it. */
export function biasWorkings(asked: BiasAsked, worked: Worked, bench: Bench): Working[] {
  if (worked.strips) return stripWorkings(asked, worked, bench);
  const show = (x: ExactLength) => exactly(x, bench);
  const { width, seam = ZERO } = asked;
  const { round, piece, wide, long } = worked;
  if (round) {
    const short = exactLength(Math.min(piece, wide));
    return [
      {
        formula: decimal(formula.apart(show(width), show(alongSelvedge(width))), bench),
        source: '',
      },
      {
        formula: decimal(
          formula.rounds(round.rounds, show(short), seam === 0 ? '' : show(seam), show(long)),
          bench,
        ),
        source: words.derived,
      },
      areaWorking(asked, worked, bench),
    ];
  }
  const said = hasPiece(asked)
    ? formula.single(show(piece), show(width), show(long))
    : formula.singleFor(show(long), show(width), show(piece));
  return [{ formula: decimal(said, bench), source: words.geometry }];
}

/** What the area alone promises, with where that is published. */
function areaWorking(asked: BiasAsked, worked: Worked, bench: Bench): Working {
  const show = (x: ExactLength) => exactly(x, bench);
  const { width, need } = asked;
  const area = show(areaOfRound(asked, worked));
  const said =
    need === undefined
      ? formula.areaRound(show(worked.piece), show(worked.wide), show(width), area)
      : formula.areaSquare(show(need), show(width), area);
  return { formula: said, source: words.published(BY_AREA) };
}

/** √2 as it stands in a formula, with this bench's decimal mark. */
function decimal(said: string, { decimalMark }: Bench): string {
  return said.replace('1.41421', `1${decimalMark}41421`);
}

function stripWorkings(asked: BiasAsked, { strips }: Worked, bench: Bench): Working[] {
  const show = (x: ExactLength) => exactly(x, bench);
  const input = stripsInput(asked);
  const { width, cloth, shortest, seam } = input;
  const { need, long } = asked;
  const said = [
    formula.apart(show(width), show(alongSelvedge(width))),
    formula.first(show(shortest), show(strips?.lines[0] ?? ZERO)),
    ...(seam === 0 ? [] : [formula.join(show(seam), show(joinTakes(seam)))]),
  ];
  const area =
    need === undefined
      ? formula.areaGives(
          show(cloth),
          show(long ?? ZERO),
          show(shortest),
          show(width),
          show(areaGives(input, long ?? ZERO)),
        )
      : formula.area(
          show(need),
          show(width),
          show(shortest),
          show(cloth),
          show(areaFor(input, need)),
        );
  return [
    { formula: said.map((one) => decimal(one, bench)).join(' '), source: words.derived },
    { formula: area, source: words.published(CORNERS) },
    { formula: words.published(THIRD_MORE), source: '' },
    { formula: words.others, source: '' },
  ];
}
