import { render } from '@testing-library/preact';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Bench } from '../../src/calculation/bench.ts';
import type { Calculation, Draft, Work } from '../../src/calculation/calculation.ts';
import { inUnitOf } from '../../src/calculation/other-unit.ts';
import { FaultList } from '../../src/controls/fault-list.tsx';
import { benchOf } from '../controls/helpers.ts';
import { timesTried } from '../thorough.ts';
import { choicesOf, draftsOf, EVERY } from './any-drafts.ts';

const typed = fc.oneof(
  fc.constantFrom(
    '',
    '0',
    '-1',
    '1/0',
    '5/8',
    '46.3',
    '1 − 2',
    '1e9',
    '999999 m',
    '2001',
    '1; 2; 2',
  ),
  fc.string({ maxLength: 12 }),
  fc.integer({ min: -5, max: 4000 }).map(String),
);
/** Lengths and counts that give an answer often enough. */
const sensible = fc.constantFrom('1', '2', '5', '8', '20', '1/2 in', '3 mm', '46.3');
const unit = fc.constantFrom('cm' as const, 'mm' as const, 'in' as const);

const NONSENSE = /NaN|undefined|Infinity|\[object/;

function saidOf(work: Work, calculation: Calculation, draft: Draft, bench: Bench): string {
  if (work.ok) {
    const { runs, figures, ...said } = work.answer;
    return JSON.stringify([said, figures?.map(({ name, draw }) => [name, draw()])]);
  }
  const fields = calculation.fields(draft);
  const { container, unmount } = render(
    <FaultList faults={work.faults} fields={fields} bench={bench} />,
  );
  const said = container.textContent ?? '';
  unmount();
  return said;
}

test.each(EVERY)(
  'whatever the address holds, $id answers or says why, in whole sentences',
  (calculation) => {
    fc.assert(
      fc.property(draftsOf(calculation, typed, sensible), unit, (set, benchUnit) => {
        const bench = benchOf({ unit: benchUnit });
        const draft = { ...calculation.start(bench), ...(set as Draft) };
        const work = calculation.work(draft, bench);
        const said = saidOf(work, calculation, draft, bench);
        expect(said).not.toMatch(NONSENSE);
        if (work.ok) {
          for (const { run } of work.answer.runs) {
            for (const { at } of run.marks) expect(Number.isFinite(at)).toBe(true);
            expect(Number.isFinite(run.length)).toBe(true);
          }
          return;
        }
        const labels = calculation.fields(draft).map(({ label }) => `${label}: `);
        expect(work.faults.length).toBeGreaterThan(0);
        expect(labels.some((label) => said.includes(label))).toBe(true);
      }),
      { numRuns: timesTried(300) },
    );
  },
);

test.each(EVERY)('$id means the same when the bench is set to another unit', (calculation) => {
  const drafts = fc.tuple(draftsOf(calculation, typed, sensible), unit, unit);
  fc.assert(
    fc.property(drafts, ([set, one, other]) => {
      const here = benchOf({ unit: one });
      const there = benchOf({ unit: other });
      const draft = { ...calculation.start(here), ...(set as Draft) };
      const before = calculation.work(draft, here);
      const moved = inUnitOf(there, calculation, { draft, page: { u: one } });
      const after = calculation.work(moved.draft, there);
      expect(placesOf(after)).toEqual(placesOf(before));
    }),
    { numRuns: timesTried(200) },
  );
});

test.each(EVERY)(
  '$id means the same in another unit also once other choices are made',
  (calculation) => {
    const known = [...choicesOf(calculation)];
    const choices = fc.record(
      Object.fromEntries(known.map(([key, values]) => [key, fc.constantFrom(...values)])),
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(
        draftsOf(calculation, typed, sensible),
        choices,
        unit,
        unit,
        (set, chosen, one, other) => {
          const [here, there] = [benchOf({ unit: one }), benchOf({ unit: other })];
          const draft = { ...calculation.start(here), ...(set as Draft) };
          const before = calculation.work({ ...draft, ...(chosen as Draft) }, here);
          const moved = inUnitOf(there, calculation, { draft, page: { u: one } });
          const after = calculation.work({ ...moved.draft, ...(chosen as Draft) }, there);
          expect(placesOf(after)).toEqual(placesOf(before));
        },
      ),
      { numRuns: timesTried(100) },
    );
  },
);

/** Where the marks are, or which fields are wrong. */
function placesOf(work: Work) {
  if (!work.ok) return work.faults.map(({ field }) => field);
  return work.answer.runs.map(({ run }) => run.marks.map(({ at }) => at));
}
