import { gathersWords as words } from '#words/calculations/gathers-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { needed } from '../../calculation/needed.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { countOfCloth, type Gathered } from './gathered.ts';

const { formula } = words;

/** How gathers were got, with their numbers in it. */
export function gathersWorkings(found: Gathered, bench: Bench): Working[] {
  const { asked, plan, input } = found;
  const cut = formula.cut(
    shown(plan.strip, bench),
    orNone(input.ends, bench),
    shown(plan.cut, bench),
  );
  const asCloth = asked.by === 'cloth' ? ofCloth(found, bench) : '';
  const adds = asked.by === 'cloth' || asked.by === 'strip' ? '' : cut;
  return [
    { formula: asCloth + ofFullness(found, bench) + adds, source: words.source[asked.by] },
    ...stripsWorking(found, bench),
    ...(asked.top > 0 ? [{ formula: '', source: words.rowsSource }] : []),
  ];
}

const shown = (x: ExactLength, bench: Bench) => exactly(x, bench);
const orNone = (x: ExactLength, bench: Bench) => (x === 0 ? '' : exactly(x, bench));

function ofFullness({ asked, input, plan }: Gathered, bench: Bench): string {
  const { full, edge } = input;
  const flat = orNone(input.flat, bench);
  const [over, more] = [formula.over(shown(edge, bench), flat), formula.more(flat)];
  const strip = shown(plan.strip, bench);
  switch (full.by) {
    case 'ratio':
      return formula.ratio(number(full.ratio, bench), over, more, strip);
    case 'part':
      return formula.part(number(full.part, bench), over, more, strip);
    case 'sample':
      return formula.sample(
        over,
        shown(full.flat, bench),
        shown(full.gathered, bench),
        more,
        strip,
      );
    case 'strip': {
      const ends = orNone(input.ends, bench);
      const ratio = shownNumber(plan.ratio, 2, bench.decimalMark);
      const there = asked.by === 'cloth' ? plan.cut : full.strip;
      return formula.strip(shown(there, bench), ends, flat, over, ratio);
    }
  }
}

/** Finer than it is said elsewhere: it stands in a formula. */
function number(x: number, bench: Bench): string {
  return shownNumber(x, 4, bench.decimalMark);
}

/** What the cloth that is there gives. */
function ofCloth({ asked, cutDeep, plan }: Gathered, bench: Bench): string {
  const { have, cloth, deep } = needed({ have: asked.have, cloth: asked.cloth, deep: cutDeep });
  const count = countOfCloth(have, deep);
  const exact = shownNumber(have / deep, 2, bench.decimalMark);
  const seam = orNone(asked.seam, bench);
  const each = formula.each(shown(cloth, bench), seam);
  return (
    formula.have(shown(have, bench), shown(deep, bench), exact, count) +
    formula.joined(count, each, seam, shown(plan.cut, bench))
  );
}

function stripsWorking({ asked, plan, strips, cutDeep }: Gathered, bench: Bench): Working[] {
  const { cloth, seam, deep, top, hem } = asked;
  if (!strips || cloth === undefined) return [];
  const none = orNone(seam, bench);
  const each = formula.each(shown(cloth, bench), none);
  const exact = (plan.cut - 2 * seam) / exactLength(cloth - 2 * seam);
  const needs = formula.needs(shown(plan.cut, bench), none);
  const depth =
    deep === undefined || cutDeep === undefined
      ? ''
      : formula.deep(
          shown(deep, bench),
          shown(top, bench),
          shown(hem, bench),
          shown(cutDeep, bench),
        );
  const counted = formula.strips(
    needs,
    each,
    shownNumber(exact, 2, bench.decimalMark),
    strips.count,
  );
  const cloths =
    cutDeep === undefined || strips.cloth === undefined
      ? ''
      : formula.cloth(strips.count, shown(cutDeep, bench), shown(strips.cloth, bench));
  return [{ formula: counted + depth + cloths, source: words.stripsSource }];
}
