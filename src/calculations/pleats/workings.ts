import { pleatsWords as words } from '#words/calculations/pleats-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { needed } from '../../calculation/needed.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { depthsTaken } from '../../sewing/fullness/pleat-input.ts';
import type { Pleated } from './pleated.ts';

const { formula } = words;

/** How pleats were got, with their numbers in it. */
export function pleatsWorkings(pleated: Pleated, bench: Bench): Working[] {
  const { finished, rule, kind, depth, flat, seam } = pleated.input;
  const { count, width, cut } = pleated.plan;
  const show = (x: ExactLength) => exactly(x, bench);
  const takes = depthsTaken(kind);
  const over = formula.over(show(finished), flat === 0 ? '' : show(flat));
  const counted =
    rule.by === 'count'
      ? ''
      : formula.count(
          over,
          show(rule.width),
          shownNumber(exactLength(finished - flat) / rule.width, 2, bench.decimalMark),
          count,
        );
  const folds = [count, takes.value, show(depth), seam === 0 ? '' : show(seam)] as const;
  if (pleated.asked.by === 'strip') return stripThere(pleated, bench, folds);
  const strip = formula.strip(show(finished), ...folds, show(cut));
  return [
    {
      formula: counted + formula.width(over, count, show(width)) + strip,
      source: words.published(takes),
    },
    ...levelWorkings(pleated, bench),
    ...stripsWorking(pleated, bench),
  ];
}

/** How many a strip that is there gives, and what it comes to. */
function stripThere(
  pleated: Pleated,
  bench: Bench,
  folds: readonly [number, number, string, string],
): Working[] {
  const { asked, input, plan } = pleated;
  const { there, width } = needed({ there: asked.there, width: asked.width });
  const { finished, depth, flat, seam, kind } = input;
  const show = (x: ExactLength) => exactly(x, bench);
  const ends = [...(seam === 0 ? [] : [`2 × ${show(seam)}`]), ...(flat === 0 ? [] : [show(flat)])];
  const takes = depthsTaken(kind);
  const each = width + takes.value * depth;
  const exact = shownNumber((there - 2 * seam - flat) / each, 2, bench.decimalMark);
  const over = formula.over(show(finished), flat === 0 ? '' : show(flat));
  const strip = formula.over(show(there), ends.join(' − '));
  return [
    {
      formula:
        formula.inStrip(strip, show(width), takes.value, show(depth), exact, plan.count) +
        formula.comesTo(show(there), ...folds, show(finished)) +
        formula.width(over, plan.count, show(plan.width)),
      source: words.published(takes),
    },
    ...levelWorkings(pleated, bench),
  ];
}

function levelWorkings({ input, plan, levels }: Pleated, bench: Bench): Working[] {
  if (levels.length === 0) return [];
  const show = (x: ExactLength) => exactly(x, bench);
  const takes = depthsTaken(input.kind).value;
  const each = levels.map(({ across, plan: { depth } }) =>
    formula.level(show(plan.strip), show(across), plan.count, takes, show(depth)),
  );
  return [{ formula: each.join(' '), source: words.levelSource }];
}

function stripsWorking({ asked, plan, strips }: Pleated, bench: Bench): Working[] {
  const { cloth, seam, deep } = asked;
  if (!strips || cloth === undefined) return [];
  const show = (x: ExactLength) => exactly(x, bench);
  const each = formula.each(show(cloth), seam === 0 ? '' : show(seam));
  const exact = plan.strip / exactLength(cloth - 2 * seam);
  return [
    {
      formula: [
        formula.strips(
          show(plan.strip),
          each,
          shownNumber(exact, 2, bench.decimalMark),
          strips.count,
        ),
        formula.left(strips.count, each, show(plan.strip), show(strips.left)),
        ...(deep === undefined || strips.cloth === undefined
          ? []
          : [formula.cloth(strips.count, show(deep), show(strips.cloth))]),
      ].join(''),
      source: words.stripsSource,
    },
  ];
}
