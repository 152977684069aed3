import type { Bench } from '../../calculation/bench.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { isOfPlan, type Made, readMade, recordOf, wasKey } from '../../calculation/made.ts';
import type { Page, PageState } from '../../calculation/page.ts';
import { withItsUnit } from '../../garment/as-made.ts';
import type { Typed } from '../../garment/record/from-second.ts';
import { benchUnit } from '../../lengths/unit.ts';

/** A mark that was measured: its label, and what was typed. */
type Measured = readonly (readonly [label: string, typed: string])[];

/** What is typed and measured on a page, with every field, for keeping: what was measured when it was kept last is kept already. */
export function typedOn(
  calculation: Calculation,
  { draft, page }: PageState,
  bench: Bench,
): Omit<Typed, 'name'> {
  const unit = benchUnit(page.u) ?? bench.unit;
  const fields = { ...calculation.start({ ...bench, unit }), ...draft };
  const work = calculation.work(draft, bench);
  const runs = work.ok ? work.answer.runs : [];
  return {
    calculation: calculation.id,
    draft: { ...fields, u: unit },
    runs: runs.map(({ run }, i) => {
      const labelled = run.marks.filter(({ label }) => label !== '');
      const made = isOfPlan(page, i, run) ? recordOf(page, i, run).made : new Map();
      return {
        planned: Object.fromEntries(labelled.map(({ label, at }) => [label, at])),
        made: Object.fromEntries(measuredSince(made, readMade(page[wasKey(i)] ?? ''), unit)),
      };
    }),
  };
}

/** What differs from what was measured at first; a measure taken away is as planned. */
function measuredSince(made: Made, was: Made, unit: Parameters<typeof withItsUnit>[1]): Measured {
  const labels = [...new Set([...made.keys(), ...was.keys()])];
  return labels.flatMap((label) => {
    const typed = made.get(label);
    if (typed === was.get(label)) return [];
    return [[label, typed === undefined ? '' : withItsUnit(typed, unit)] as const];
  });
}

/** What a page saw measured when it was kept, or opened, as typed. */
export function measuredAtFirst(page: Page): string[] {
  return Object.entries(page)
    .filter(([key]) => /^was(-\d+)?$/.test(key))
    .flatMap(([, typed]) => [...readMade(typed ?? '').values()]);
}

/** A page as it is once it is kept: what is measured now is what it was at first. */
export function asKept(page: Page): Page {
  const measured = Object.entries(page).flatMap(([key, text]) =>
    /^made(-\d+)?$/.test(key) ? [[key.replace('made', 'was'), text]] : [],
  );
  return { ...page, ...Object.fromEntries(measured) };
}
