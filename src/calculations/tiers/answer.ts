import { tiersWords as words } from '#words/calculations/tiers-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line, NamedRun } from '../../calculation/calculation.ts';
import { linesSaid, onlySaid } from '../../calculation/only-said.ts';
import { exactly, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength, mm } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { type Tier, type Tiers, tierMarks } from '../../sewing/fullness/tiers.ts';
import { SPAN } from '../../sewing/sources/gathers.ts';
import { type TiersAsked, tiersInput } from './fields.ts';
import { tiersFigure } from './figure.ts';
import { tiersWorkings } from './workings.ts';

/** Left over of each strip, below which a doubtful width of cloth loses one: common practice, no source. */
const LITTLE_LEFT = mm(5);

/** Under this it is eased in rather than gathered; all tiers together over that are heavy: common practice, no source. */
const EASED = 1.2;
const HEAVY = 6;

/** Tiers, as an answer. */
export function tiersAnswer(asked: TiersAsked, plan: Tiers, bench: Bench): Answer {
  const cloth = numberOnTape(plan.cloth, bench, upToGraduation);
  return {
    headline: {
      before: cloth.rounded ? words.about : '',
      number: cloth,
      after: words.after(plan.tiers.length),
    },
    sentence: words.sentence(asked.parts),
    lines: lines(asked, plan, bench),
    offers: [],
    warnings: warnings(plan, bench),
    cautions: [words.cut, cautionWords.shears, cautionWords.pins],
    listsLast: true,
    runs: plan.tiers.flatMap((tier, i) => runsOf(asked, tier, i)),
    figures: [{ name: words.figure, draw: () => tiersFigure(asked, plan) }],
    workings: tiersWorkings(asked, plan, bench),
  };
}

function lines(asked: TiersAsked, plan: Tiers, bench: Bench): Line[] {
  const up = (x: ExactLength) => onTape(x, bench, upToGraduation);
  const last = plan.tiers.at(-1);
  return [
    ...plan.tiers.flatMap(({ cut, cutDeep, strips, ratio }, i) => [
      {
        label: words.tier(i + 1, words.times(timesOf(ratio, bench))),
        value: words.tierOf(up(cutDeep), up(cut), strips.count, strips.joins),
      },
    ]),
    ...linesSaid([
      [words.round, last && words.roundOf(exactly(last.strip, bench), timesOf(plan.full, bench))],
      [words.long, exactly(plan.long, bench)],
      [words.left, leftOf(asked, plan, bench)],
    ]),
  ];
}

/** What of the length is left, or is over; nothing where it comes out. */
function leftOf({ by }: TiersAsked, { left }: Tiers, bench: Bench): string | undefined {
  if (by !== 'own' || left === undefined) return undefined;
  if (left === 0) return words.comesOut;
  const size = exactly(exactLength(Math.abs(left)), bench);
  return left > 0 ? size : words.over(size);
}

function timesOf(ratio: number, bench: Bench): string {
  return shownNumber(ratio, 2, bench.decimalMark);
}

function warnings({ tiers, full }: Tiers, bench: Bench): string[] {
  const each = (fits: (tier: Tier) => boolean) =>
    tiers.flatMap((tier, i) => (fits(tier) ? [i + 1] : []));
  const said = (list: readonly number[], say: (list: readonly number[]) => string) =>
    list.length > 0 && say(list);
  return onlySaid([
    said(
      each(({ ratio }) => ratio > 1 && ratio < EASED),
      words.ease,
    ),
    said(
      each(({ ratio }) => ratio === 1),
      words.flat,
    ),
    said(
      each(({ ratio }) => ratio > SPAN.value[1]),
      words.bulk,
    ),
    full > HEAVY && words.heavy(timesOf(full, bench)),
    said(
      each(({ strips }) => strips.left < strips.count * LITTLE_LEFT),
      words.littleLeft,
    ),
  ]);
}

function runsOf(asked: TiersAsked, tier: Tier, i: number): NamedRun[] {
  const marks = tierMarks(tiersInput(asked), tier);
  return [
    { name: words.stripMarks(i + 1), item: words.mark, run: marks.strip },
    { name: words.edgeMarks(i + 1), item: words.mark, run: marks.edge },
  ].filter(({ run }) => run.marks.length > 0);
}
