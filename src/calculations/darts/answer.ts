import { dartsWords as words } from '#words/calculations/darts-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line } from '../../calculation/calculation.ts';
import { onlySaid } from '../../calculation/only-said.ts';
import { numberSaid } from '../../calculation/tape-said.ts';
import { byTape } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength, mm, ZERO } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { levelRun } from '../../sewing/shaping/darts.ts';
import { dartsFigure } from './figure.ts';
import type { Taken } from './taken.ts';
import { dartsWorkings } from './workings.ts';

/** Narrower than this a dart is eased; wider than that it points: common practice, no source. */
const TINY = mm(3);
const POINTED = Math.PI / 6;

/** What seams and darts take, as an answer. */
export function dartsAnswer(found: Taken, bench: Bench): Answer {
  const { takers, plan } = found;
  const darts = takers.findIndex((one, i) => one !== 'sides' && (plan.each[i] ?? 0) > 0);
  const first = darts < 0 ? plan.each.findIndex((one) => one > 0) : darts;
  const taker = takers[first];
  return {
    headline: {
      number: numberSaid(plan.each[first] ?? ZERO, bench),
      after: taker ? words.onEach(words.one[taker]) : words.nothing,
    },
    sentence: words.sentence,
    lines: lines(found, bench),
    offers: [],
    warnings: warnings(found, bench),
    cautions: [words.before],
    runs:
      found.levels.length > 0
        ? [{ name: words.levelMarks, item: words.levelMark, run: levelRun(found.levels) }]
        : [],
    figures: [{ name: words.figure, draw: () => dartsFigure(found) }],
    workings: dartsWorkings(found, bench),
  };
}

/** Between the legs of a dart, in radians; undefined of a seam. */
function angleOf({ input, plan }: Taken, i: number): number | undefined {
  const long = input.kinds[i]?.long;
  return long && 2 * Math.atan((plan.each[i] ?? 0) / 2 / long.length);
}

function lines(found: Taken, bench: Bench): Line[] {
  const { takers, plan, input, levels } = found;
  const show = (x: ExactLength) => byTape(x, bench);
  const each = takers.map((taker, i) => {
    const [one, count] = [plan.each[i] ?? ZERO, input.kinds[i]?.count ?? 0];
    const value = words.eachOf(show(one), count, show(exactLength(count * one)));
    return { label: words.each(words.one[taker]), value };
  });
  const angles = takers.flatMap((taker, i) => {
    const angle = angleOf(found, i);
    if (angle === undefined) return [];
    const degrees = shownNumber((angle * 180) / Math.PI, 1, bench.decimalMark);
    return [{ label: words.angle(words.one[taker]), value: words.degrees(degrees) }];
  });
  const { left } = plan;
  return [
    { label: words.intake, value: show(plan.intake) },
    ...each,
    ...angles,
    ...(left === 0 ? [] : [{ label: words.left, value: words.leftOf(show(size(left)), left < 0) }]),
    ...levels.map(({ level, each }) => ({
      label: words.level(show(level.at)),
      value: words.levelOf(
        takers.map((taker, i) => words.levelOne(words.one[taker], show(each[i] ?? ZERO))),
      ),
    })),
  ];
}

function warnings(found: Taken, bench: Bench): string[] {
  const { takers, plan } = found;
  const { left } = plan;
  return onlySaid([
    ...takers.flatMap((taker, i) => {
      const [angle, width] = [angleOf(found, i), plan.each[i] ?? ZERO];
      return [
        angle !== undefined && width < TINY && width > 0 && words.tiny(words.one[taker]),
        angle !== undefined && angle > POINTED && words.pointed(words.one[taker]),
      ];
    }),
    left !== 0 && words.leftWarning(byTape(size(left), bench), left < 0),
  ]);
}

function size(x: ExactLength): ExactLength {
  return exactLength(Math.abs(x));
}
