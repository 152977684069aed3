import { levelWords as words } from '#words/calculations/level-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line, Offer, Working } from '../../calculation/calculation.ts';
import { linesSaid, onlySaid } from '../../calculation/only-said.ts';
import { said } from '../../calculation/tape-said.ts';
import { byTape, exactly, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { downToGraduation, upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import { type HemLevel, hemPlaces } from '../../sewing/hems/hem-level.ts';
import { PINS_APART } from '../../sewing/sources/hem-level.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import type { LevelAsked } from './fields.ts';
import { levelFigure } from './figure.ts';

/** The most that is trimmed at one place; nothing where nothing is. */
export function mostTrimmed({ trims }: HemLevel): ExactLength {
  return exactLength(Math.max(0, ...trims));
}

/** A hem levelled from the floor, as an answer. */
export function levelAnswer(asked: LevelAsked, plan: HemLevel, bench: Bench): Answer {
  const most = mostTrimmed(plan);
  // What is cut off too much is gone.
  const number = numberOnTape(most, bench, downToGraduation);
  const lacks = plan.trims.some((trim) => trim < 0);
  const lowest = onTape(plan.lowest, bench, upToGraduation);
  const take: Offer = { words: words.offer(lowest), take: { hem: lowest } };
  return {
    headline: {
      before: number.rounded ? words.about : '',
      number,
      after: most > 0 ? words.after : words.after0,
    },
    sentence: words.sentence(plan.trims.length),
    lines: lines(asked, plan, bench),
    offers: lacks ? [take] : [],
    warnings: onlySaid([lacks && words.lacks(lowest)]),
    cautions: [words.hangs, words.before, cautionWords.shears, turned.iron(IRON_ONE_DOT.value)],
    runs: [],
    figures: [{ name: words.figure, draw: () => levelFigure(asked, plan) }],
    workings: workings(asked, plan, bench),
  };
}

function lines({ sweep }: LevelAsked, { trims, lowest }: HemLevel, bench: Bench): Line[] {
  const [least, most] = PINS_APART.value;
  return [
    ...trims.map((trim, i) =>
      trim < 0
        ? { label: words.lacking(i + 1), value: said(exactLength(-trim), bench) }
        : { label: words.place(i + 1), value: onTape(trim, bench, downToGraduation) },
    ),
    ...linesSaid([
      [words.lowest, byTape(lowest, bench)],
      [
        words.places,
        sweep !== undefined &&
          sweep > ZERO &&
          words.placesOf(hemPlaces(sweep, most), hemPlaces(sweep, least)),
      ],
    ]),
  ];
}

function workings(
  { heights, hem, allowance }: LevelAsked,
  plan: HemLevel,
  bench: Bench,
): Working[] {
  const show = (x: ExactLength) => exactly(x, bench);
  const turnedUp = allowance === 0 ? '' : show(allowance);
  const trims = heights.map((height, i) =>
    words.formula.trim(show(hem), turnedUp, show(height), show(plan.trims[i] ?? ZERO)),
  );
  const highest = exactLength(plan.lowest - allowance);
  const lowest = words.formula.lowest(show(highest), turnedUp, show(plan.lowest));
  return [{ formula: trims.join('') + lowest, source: words.source }];
}
