import { pleatsWords as words } from '#words/calculations/pleats-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Draft, Line, Offer } from '../../calculation/calculation.ts';
import { linesSaid } from '../../calculation/only-said.ts';
import { byTape, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { exactLength, mm, ZERO } from '../../lengths/length.ts';
import type { Pleats } from '../../sewing/fullness/pleats.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import type { PleatsTyped } from './fields.ts';
import { pleatsFigure } from './figure.ts';
import { levelLines, levelRuns, levelWarnings } from './level-answer.ts';
import type { Pleated } from './pleated.ts';
import { pleatsWorkings } from './workings.ts';

/** Left over of each strip, below which a doubtful width of cloth loses one: common practice, no source. */
const LITTLE_LEFT = mm(5);

/** Drawn of a row: two show how one follows the other. */
const DRAWN = 2;

/** Pleats as an answer. */
export function pleatsAnswer(pleated: Pleated, draft: Draft, bench: Bench): Answer {
  const { input, plan } = pleated;
  // Folds that run under the next pleat are drawn by themselves.
  const drawn = plan.overlap && input.kind !== 'knife' ? 1 : Math.min(plan.count, DRAWN);
  return {
    headline: headline(pleated, bench),
    sentence: sentence(pleated, bench),
    lines: lines(pleated, bench),
    offers: pleated.asked.by === 'strip' ? [] : offers(plan, draft, bench),
    warnings: warnings(pleated, bench),
    cautions: [words.cut, turned.iron(IRON_ONE_DOT.value)],
    listsLast: true,
    runs: [{ name: words.lines, item: words.line, run: plan.run }, ...levelRuns(pleated)],
    figures: [{ name: words.figure(drawn), draw: () => pleatsFigure(input, plan, drawn) }],
    workings: pleatsWorkings(pleated, bench),
  };
}

/** The strip to cut, or what the one that is there comes to. */
function headline({ asked, input, plan }: Pleated, bench: Bench): Answer['headline'] {
  const isThere = asked.by === 'strip';
  const number = isThere
    ? numberOnTape(input.finished, bench)
    : numberOnTape(plan.cut, bench, upToGraduation);
  const after = isThere ? words.afterFolded : words.after;
  return { before: number.rounded ? words.about : '', number, after };
}

function sentence({ input, plan }: Pleated, bench: Bench): string {
  const { kind, ends, flat } = input;
  const half = kind === 'knife' && ends === 'half';
  return words.sentence(
    plan.count,
    kind,
    byTape(plan.width, bench),
    half ? byTape(exactLength(plan.width / 2), bench) : '',
    flat === 0 ? '' : byTape(flat, bench),
  );
}

function lines(pleated: Pleated, bench: Bench): Line[] {
  const { asked, input, plan, strips } = pleated;
  const { seam } = input;
  const width = byTape(plan.width, bench);
  const wanted = asked.width;
  const found: [string, string | undefined][] = [
    [
      words.one,
      wanted === undefined || wanted === plan.width
        ? width
        : width + words.corrected(byTape(wanted, bench)),
    ],
    [words.away, byTape(exactLength(plan.count * plan.takeUp), bench)],
    [words.seams, words.seamsOf(seam === 0 ? '' : byTape(seam, bench))],
    [words.between, plan.box && betweenOf(plan.box.between, bench)],
    [
      words.strips,
      strips && words.stripsOf(strips.count, strips.joins, byTape(strips.left, bench)),
    ],
    [words.cloth, strips?.cloth && onTape(strips.cloth, bench, upToGraduation)],
  ];
  return [...linesSaid(found), ...levelLines(pleated, bench)];
}

function betweenOf(between: NonNullable<Pleats['box']>['between'], bench: Bench): string {
  return between === ZERO ? words.touching : byTape(between, bench);
}

/** One pleat fewer and one more, with what each would take. */
function offers({ beside }: Pleats, draft: Draft, bench: Bench): Offer[] {
  return beside.map(({ count, width, cut }) => {
    const take: PleatsTyped = { by: 'count', count: String(count) };
    const strip = onTape(cut, bench, upToGraduation);
    return { words: words.offer(count, byTape(width, bench), strip), take: { ...draft, ...take } };
  });
}

function warnings(pleated: Pleated, bench: Bench): string[] {
  const { plan, strips } = pleated;
  const { count, overlap, layers, past } = plan;
  const bulk = layers === undefined ? words.overlap : words.layers(layers);
  return [
    ...(overlap ? [bulk] : []),
    ...(past === undefined ? [] : [words.past(byTape(past, bench))]),
    ...levelWarnings(pleated),
    ...(count === 1 ? [words.alone] : []),
    ...(strips && strips.left < strips.count * LITTLE_LEFT ? [words.littleLeft] : []),
  ];
}
