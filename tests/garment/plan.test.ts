import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { NamedRun } from '../../src/calculation/calculation.ts';
import { type Held, heldOf } from '../../src/calculation/page.ts';
import { closures } from '../../src/calculations/closures/closures.ts';
import { edging } from '../../src/calculations/edging/edging.ts';
import { hem } from '../../src/calculations/hem/hem.ts';
import type { Kept } from '../../src/garment/garment.ts';
import { draftFor, marksOf } from '../../src/garment/plan.ts';
import { exactLength, mm } from '../../src/lengths/length.ts';
import type { Mark, MarkKind } from '../../src/sewing/run.ts';
import { benchOf } from '../controls/helpers.ts';

const named = (...marks: Mark[]): NamedRun => ({
  name: 'Front',
  item: 'Hook',
  run: { datum: 'top-edge', length: mm(100), marks },
});
const mark = (label: string, place: number, kind: MarkKind = 'closure'): Mark => ({
  label,
  at: exactLength(mm(place)),
  kind,
});
const keptOf = (calculation: string, draft: Held): Kept => ({
  id: 'k',
  name: 'Kept',
  stage: 'close',
  calculation,
  draft,
  runs: [],
});

test('of a row each mark with its place, and whether it is sewn; one without a label is nothing to make', () => {
  const row = named(mark('1', 10), mark('', 20, 'centre'), mark('2', 30, 'sewn'));
  expect(marksOf(row)).toEqual([
    { label: '1', at: mm(10), sewn: false, alike: true },
    { label: '2', at: mm(30), sewn: true, alike: true },
  ]);
});

test.each([
  ...(['closure', 'level', 'sewn', 'hole', 'corner', 'centre'] as const).map((kind) => [
    kind,
    true,
  ]),
  ...(['measure', 'press', 'stitch', 'mitre'] as const).map((kind) => [kind, false]),
] as [MarkKind, boolean][])('marks of a %s may stand for each other: %s', (kind, alike) => {
  const all = marksOf(named(mark('1', 10), mark('2', 20, kind)));
  expect(all.map((one) => one.alike)).toEqual([alike, alike]);
});

test('marks that lie across a strip, too, are each for itself', () => {
  const across = { ...mark('2', 20, 'hole'), across: exactLength(mm(5)) };
  expect(marksOf(named(mark('1', 10, 'hole'), across)).some(({ alike }) => alike)).toBe(false);
});

test('what is kept in centimetres says so on a bench of inches, and is worked out the same', () => {
  const hooks = keptOf('closures', { u: 'cm', opening: '31', count: '3', ends: 'given', top: '1' });
  const { draft, page } = draftFor(closures, hooks, benchOf({ unit: 'in' }));
  expect(page).toEqual({ u: 'in' });
  expect(draft).toMatchObject({ opening: '31 cm', top: '1 cm', count: '3' });
  // What was left as it starts was left as it starts in centimetres.
  expect(draft.bottom).toBe('2.5 cm');
});

test('on a bench of its own unit it stays as typed, and what was left is as the calculation starts', () => {
  const hooks = keptOf('closures', { u: 'in', opening: '12', note: 'lined' });
  const bench = benchOf({ unit: 'in' });
  const asTyped = { ...closures.start(bench), u: 'in', opening: '12', note: 'lined' };
  expect(heldOf(draftFor(closures, hooks, bench))).toEqual(asTyped);
});

test('what says no unit, or none there is, is in the bench’s', () => {
  for (const u of [{}, { u: 'ell' }]) {
    const { draft } = draftFor(closures, keptOf('closures', { ...u, opening: '12' }), benchOf());
    expect(draft.opening).toBe('12');
    expect(draft.top).toBe(closures.start(benchOf()).top);
  }
});

test('law: what is kept is worked out the same on a bench of any unit', () => {
  const units = fc.constantFrom('mm', 'cm', 'in');
  const typed = fc.record({ opening: fc.integer({ min: 30, max: 60 }).map(String) });
  fc.assert(
    fc.property(
      fc.constantFrom(closures, edging, hem),
      typed,
      units,
      units,
      (one, own, u, unit) => {
        const draft: Held = { u, ...(one === closures && u !== 'mm' ? own : {}) };
        const kept = keptOf(one.id, draft);
        const [home, away] = [benchOf({ unit: u }), benchOf({ unit })].map((bench) => {
          const work = one.work(draftFor(one, kept, bench).draft, bench);
          return work.ok ? work.answer.runs.map((run) => marksOf(run).map(({ at }) => at)) : 'none';
        });
        expect(away).toEqual(home);
      },
    ),
    { numRuns: 60 },
  );
});
