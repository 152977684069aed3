import { gathersWords as words } from '#words/calculations/gathers-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Draft, Line, Offer } from '../../calculation/calculation.ts';
import { linesSaid } from '../../calculation/only-said.ts';
import { said } from '../../calculation/tape-said.ts';
import { byTape, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { mm } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { GATHER_APART, GATHER_ROOM, gatherRows } from '../../sewing/fullness/gather-rows.ts';
import { SPAN } from '../../sewing/sources/gathers.ts';
import type { GathersTyped } from './fields.ts';
import { gathersFigure } from './figure.ts';
import { type Fewer, fewerStrips, type Gathered, ruleLess } from './gathered.ts';
import { gathersWorkings } from './workings.ts';

/** Left over of each strip, below which a doubtful width of cloth loses one: common practice, no source. */
const LITTLE_LEFT = mm(5);

/** Under this it is eased in rather than gathered: common practice, no source. */
const EASED = 1.2;

/** A strip gathered to an edge, as an answer. */
export function gathersAnswer(found: Gathered, draft: Draft, bench: Bench): Answer {
  const { asked, plan, strips, input } = found;
  const cut = numberOnTape(plan.cut, bench, upToGraduation);
  const joined = strips ? words.inStrips(strips.count) : '';
  return {
    headline: {
      before: cut.rounded ? words.about : '',
      number: cut,
      after: strips && strips.count > 1 ? words.after : words.afterOpen,
    },
    sentence: words.sentence(timesOf(plan.ratio, bench), joined, input.parts),
    lines: lines(found, bench),
    offers: offers(found, draft, bench),
    warnings: warnings(found, bench),
    cautions: [words.cut, cautionWords.shears],
    listsLast: true,
    runs: [
      { name: words.stripMarks, item: words.mark, run: plan.marks.strip },
      { name: words.edgeMarks, item: words.mark, run: plan.marks.edge },
    ].filter(({ run }) => run.marks.length > 0),
    figures: [{ name: words.figure, draw: () => gathersFigure(asked, plan) }],
    workings: gathersWorkings(found, bench),
  };
}

/** Whether a little less width takes one strip more: not where the strips there are decide the fullness. */
function isTight({ by }: Gathered['asked'], { left, count }: { left: number; count: number }) {
  return by !== 'cloth' && left < count * LITTLE_LEFT;
}

/** How often, to two decimals. */
function timesOf(ratio: number, bench: Bench): string {
  return shownNumber(ratio, 2, bench.decimalMark);
}

function lines({ asked, input, plan, strips, cutDeep }: Gathered, bench: Bench): Line[] {
  const rows = gatherRows(asked.top);
  const found: [string, string | undefined][] = [
    [words.full, words.times(timesOf(plan.ratio, bench))],
    [words.ends, words.endsOf(input.ends === 0 ? '' : byTape(input.ends, bench))],
    [
      words.strips,
      strips && words.stripsOf(strips.count, strips.joins, byTape(strips.left, bench)),
    ],
    [words.deep, cutDeep && onTape(cutDeep, bench, upToGraduation)],
    [words.cloth, strips?.cloth && onTape(strips.cloth, bench, upToGraduation)],
    [
      words.rows,
      asked.top === 0 ? undefined : words.rowsOf(said(rows.first, bench), said(rows.second, bench)),
    ],
  ];
  return linesSaid(found);
}

/** One strip fewer, where that costs little fullness. */
function offers(found: Gathered, draft: Draft, bench: Bench): Offer[] {
  const fewer: Fewer | undefined = fewerStrips(found);
  if (!fewer) return [];
  const take: GathersTyped = { by: 'ratio', ratio: timesOf(fewer.ratio, bench) };
  return [
    { words: words.offer(fewer.count, timesOf(fewer.ratio, bench)), take: { ...draft, ...take } },
  ];
}

/** Where there is no room for both rows as far apart as they should be. */
function thin(bench: Bench): string {
  return words.thin(onTape(GATHER_ROOM, bench), onTape(GATHER_APART, bench));
}

function warnings(found: Gathered, bench: Bench): string[] {
  const { asked, plan, strips } = found;
  const rule = ruleLess(found);
  return [
    ...(plan.ratio === 1 ? [words.none] : plan.ratio < EASED ? [words.ease] : []),
    ...(plan.ratio > SPAN.value[1] ? [words.bulk] : []),
    ...(strips && isTight(asked, strips) ? [words.littleLeft] : []),
    ...(rule ? [words.ruleLess(rule.count, timesOf(rule.ratio, bench))] : []),
    ...(asked.top > 0 && !gatherRows(asked.top).roomy ? [thin(bench)] : []),
  ];
}
