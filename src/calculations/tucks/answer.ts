import { tucksWords as words } from '#words/calculations/tucks-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Draft, Line, Offer } from '../../calculation/calculation.ts';
import { linesSaid, onlySaid } from '../../calculation/only-said.ts';
import { percentText } from '../../calculation/tape-said.ts';
import { byTape, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { exactLength } from '../../lengths/length.ts';
import { depthOf, type Tucks } from '../../sewing/fullness/tucks.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import type { TucksTyped } from './fields.ts';
import { tucksFigure } from './figure.ts';
import type { Tucked } from './tucked.ts';
import { tucksWorkings } from './workings.ts';

/** Groups nearer than this many spacings aren't seen as groups: common practice, no source. */
const SEEN_APART = 1.5;

/** Tucks as an answer. */
export function tucksAnswer(found: Tucked, draft: Draft, bench: Bench): Answer {
  const { plan } = found;
  const cut = numberOnTape(plan.cut, bench, upToGraduation);
  const { spacing } = plan;
  return {
    headline: { before: cut.rounded ? words.about : '', number: cut, after: words.after },
    sentence: words.sentence(plan.count, spacing === undefined ? '' : byTape(spacing, bench)),
    lines: lines(found, bench),
    offers: offers(plan, draft, bench),
    warnings: warnings(found),
    cautions: [words.trim, cautionWords.pins, turned.iron(IRON_ONE_DOT.value)],
    listsLast: true,
    runs: [{ name: words.lines, item: words.line, run: plan.run }],
    figures: [{ name: words.figure, draw: () => tucksFigure(found) }],
    workings: tucksWorkings(found, bench),
  };
}

function lines({ asked, input, plan }: Tucked, bench: Bench): Line[] {
  const { gap, between, count } = plan;
  const gain = (i: number) => byTape(exactLength(2 * depthOf(input, i)), bench);
  return linesSaid([
    [words.gap, gap !== undefined && gap > 0 && byTape(gap, bench)],
    [words.between, between !== undefined && byTape(between, bench)],
    [words.taken, byTape(plan.taken, bench)],
    [words.gain, words.gainOf(gain(0), gain(count - 1))],
    [
      words.curve,
      asked.radius !== undefined && `${percentText((2 * input.depth) / asked.radius, bench)} %`,
    ],
  ]);
}

/** One tuck fewer and one more, with what each would take. */
function offers({ beside }: Tucks, draft: Draft, bench: Bench): Offer[] {
  return beside.flatMap(({ count, spacing, cut }) => {
    if (spacing === undefined) return [];
    const take: TucksTyped = { by: 'count', count: String(count) };
    const said = words.offer(count, byTape(spacing, bench), onTape(cut, bench, upToGraduation));
    return [{ words: said, take: { ...draft, ...take } }];
  });
}

function warnings({ plan }: Tucked): string[] {
  const { gap, between, spacing, count } = plan;
  return onlySaid([
    gap === 0 && words.blind,
    gap !== undefined && gap < 0 && words.covers,
    between !== undefined &&
      spacing !== undefined &&
      between < SEEN_APART * spacing &&
      words.noGroups,
    count > 2 && words.card,
  ]);
}
