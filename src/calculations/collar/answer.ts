import { collarWords as words } from '#words/calculations/collar-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line } from '../../calculation/calculation.ts';
import { linesSaid, onlySaid } from '../../calculation/only-said.ts';
import { said } from '../../calculation/tape-said.ts';
import { exactly, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, mm } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import type { Collar } from '../../sewing/bands/collar.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import type { CollarAsked } from './fields.ts';
import { collarFigure } from './figure.ts';
import { collarWorkings } from './workings.ts';

/** What a roll takes up to this is held by easing: common practice, no source. */
const LITTLE = mm(1);

/** A collar as an answer. */
export function collarAnswer(asked: CollarAsked, plan: Collar, bench: Bench): Answer {
  const long = numberOnTape(plan.upper.long, bench, upToGraduation);
  const up = (x: ExactLength) => onTape(x, bench, upToGraduation);
  return {
    headline: { before: long.rounded ? words.about : '', number: long, after: words.after },
    sentence: words.sentence(up(plan.upper.wide), up(plan.under.long), up(plan.under.wide)),
    lines: lines(asked, plan, bench),
    offers: [],
    warnings: onlySaid([
      plan.turn > 0 && plan.turn < LITTLE && words.thinRoll,
      asked.outer !== undefined && asked.outer < plan.neck && words.leans,
      asked.stand === asked.deep && words.stands,
    ]),
    cautions: [words.before, words.layers, cautionWords.blades, turned.iron(IRON_ONE_DOT.value)],
    runs: [
      { name: words.upperMarks, item: words.mark, run: plan.upper.run },
      { name: words.underMarks, item: words.mark, run: plan.under.run },
    ],
    figures: [{ name: words.figure, draw: () => collarFigure(asked, plan) }],
    workings: collarWorkings(asked, plan, bench),
  };
}

function lines({ stand }: CollarAsked, plan: Collar, bench: Bench): Line[] {
  const show = (x: ExactLength) => exactly(x, bench);
  const { curve } = plan;
  const inner = curve && show(curve.sector.inner);
  const outer = curve && show(curve.sector.outer);
  const [neck, edge] = curve?.inside === 'outer' ? [outer, inner] : [inner, outer];
  return linesSaid([
    [words.neck, show(plan.neck)],
    [words.turn, plan.turn > 0 && show(plan.turn)],
    [words.around, plan.around > 0 && show(plan.around)],
    [words.roll, stand > 0 && said(stand, bench)],
    [words.neckRadius, neck],
    [words.outerRadius, edge],
    [
      words.angle,
      curve &&
        words.degrees(shownNumber((curve.sector.angle * 180) / Math.PI, 1, bench.decimalMark)),
    ],
  ]);
}
