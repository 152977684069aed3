import type { Bench } from '../../calculation/bench.ts';
import type { Calculation, Draft } from '../../calculation/calculation.ts';
import { isOfPlan, type Made, madeKey, readMade, recordOf } from '../../calculation/made.ts';
import { isPageKey } from '../../calculation/page-keys.ts';
import { withItsUnit } from '../../garment/as-made.ts';
import type { Typed } from '../../garment/record/from-second.ts';
import { benchUnit } from '../../lengths/unit.ts';

/** A mark that was measured: its label, and what was typed. */
type Measured = readonly (readonly [label: string, typed: string])[];

/** What is typed and measured on a page, with every field, for keeping: what was measured when it was kept last is kept already. */
export function typedOn(calculation: Calculation, draft: Draft, bench: Bench): Omit<Typed, 'name'> {
  const unit = benchUnit(draft.u) ?? bench.unit;
  const typed = { ...calculation.start({ ...bench, unit }), ...draft };
  const fields = Object.entries(typed).filter(([key]) => !isPageKey(key));
  const work = calculation.work(draft, bench);
  const runs = work.ok ? work.answer.runs : [];
  return {
    calculation: calculation.id,
    draft: { ...Object.fromEntries(fields), u: unit },
    runs: runs.map(({ run }, i) => {
      const labelled = run.marks.filter(({ label }) => label !== '');
      const made = isOfPlan(draft, i, run) ? recordOf(draft, i, run).made : new Map();
      return {
        planned: Object.fromEntries(labelled.map(({ label, at }) => [label, at])),
        made: Object.fromEntries(measuredSince(made, readMade(draft[wasKey(i)] ?? ''), unit)),
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
export function measuredAtFirst(draft: Draft): string[] {
  return Object.keys(draft)
    .filter((key) => /^was(-\d+)?$/.test(key))
    .flatMap((key) => [...readMade(draft[key] ?? '').values()]);
}

/** A page as it is once it is kept: what is measured now is what it was at first. */
export function asKept(draft: Draft): Draft {
  const measured = Object.entries(draft).flatMap(([key, text]) =>
    /^made(-\d+)?$/.test(key) ? [[key.replace('made', 'was'), text]] : [],
  );
  return { ...draft, ...Object.fromEntries(measured) };
}

/** Beside what is measured now, a page says what was when it was kept. */
function wasKey(run: number): string {
  return madeKey(run).replace('made', 'was');
}
