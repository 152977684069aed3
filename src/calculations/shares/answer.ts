import { sharesWords as words } from '#words/calculations/shares-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line, Working } from '../../calculation/calculation.ts';
import { numberSaid } from '../../calculation/tape-said.ts';
import { byTape, exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength, inches, ZERO } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { HIP_TO_WAIST } from '../../sewing/sources/shares.ts';
import { sharesShapes } from './figure.ts';
import type { Changed, PlaceOf } from './read.ts';

/** More than this at one seam, both its edges together, spoils its line: common practice, no source. */
const MUCH = inches(1);

/** A shared change as an answer. */
export function sharesAnswer(found: Changed, bench: Bench): Answer {
  const { asked, places, plan } = found;
  const first = plan.each.findIndex((one) => one > 0);
  const place = places[first];
  return {
    headline: place
      ? {
          number: numberSaid(plan.each[first] ?? ZERO, bench),
          after: words.onEach(words.places[place.field].one),
        }
      : { number: numberSaid(ZERO, bench), after: words.nothing },
    sentence: words.sentence[asked.what][asked.way],
    lines: lines(found, bench),
    offers: [],
    warnings: warnings(found, bench),
    cautions: [words.before],
    runs: [],
    figures: [{ name: words.figure, draw: () => sharesShapes(found) }],
    workings: workings(found, bench),
  };
}

function lines({ places, plan }: Changed, bench: Bench): Line[] {
  const show = (x: ExactLength) => byTape(x, bench);
  const { left } = plan;
  return [
    ...places.map(({ field, count }, i) => {
      const each = plan.each[i] ?? ZERO;
      const all = show(exactLength(count * each));
      return {
        label: words.each(words.places[field].one),
        value: words.eachOf(show(each), count, all),
      };
    }),
    ...(left === 0 ? [] : [{ label: words.left, value: words.leftOf(show(size(left)), left < 0) }]),
  ];
}

/** Edges that meet in a seam; darts and lines are by themselves. */
const EDGES: readonly PlaceOf[] = ['sides', 'frontEdges', 'backEdges', 'panelEdges'];

function warnings({ asked, places, plan }: Changed, bench: Bench): string[] {
  const show = (x: ExactLength) => byTape(x, bench);
  const { left } = plan;
  const edges = places.flatMap(({ field }, i) => {
    const each = plan.each[i] ?? ZERO;
    return EDGES.includes(field) ? [{ one: words.places[field].one, each }] : [];
  });
  const { allowance } = asked;
  return [
    ...(allowance === undefined
      ? []
      : edges
          .filter(({ each }) => each > allowance)
          .map(({ one, each }) => words.lacks(one, show(each), show(allowance)))),
    ...edges
      .filter(({ each }) => 2 * each > MUCH)
      .map(({ one, each }) => words.much(one, show(exactLength(2 * each)))),
    ...(left === 0 ? [] : [words.leftWarning(show(size(left)), left < 0)]),
  ];
}

function workings({ asked, places, plan }: Changed, bench: Bench): Working[] {
  const show = (x: ExactLength) => exactly(x, bench);
  const shared = places.map(({ share }, i) =>
    words.formula.share(
      show(asked.change),
      shownNumber(share, 6, bench.decimalMark),
      show(plan.exact[i] ?? ZERO),
    ),
  );
  const terms = places.map(({ count }, i) =>
    words.formula.times(count, show(plan.each[i] ?? ZERO)),
  );
  const sum = words.formula.all(terms, show(exactLength(asked.change - plan.left)));
  return [
    { formula: [...shared, sum].join(' '), source: words.derived },
    ...(asked.what === 'girth' ? [{ formula: words.published(HIP_TO_WAIST), source: '' }] : []),
  ];
}

function size(x: ExactLength): ExactLength {
  return exactLength(Math.abs(x));
}
