import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Held, heldOf } from '../../../src/calculation/page.ts';
import { stateOf } from '../../../src/calculation/parted.ts';
import { closures } from '../../../src/calculations/closures/closures.ts';
import { edging } from '../../../src/calculations/edging/edging.ts';
import { inMm, placeOf, withMade } from '../../../src/garment/as-made.ts';
import type { Kept } from '../../../src/garment/garment.ts';
import { keptOf } from '../../../src/garment/kept.ts';
import { benchOf } from '../../controls/helpers.ts';

const bench = benchOf();
const UNIT_MM = 8000;

const strips = fc.record({
  rows: fc.constantFrom('one', 'level', 'staggered'),
  pitch: fc.constantFrom('0.8', '0.9', '1'),
  length: fc.constantFrom('12', '13.5'),
  fit: fc.constantFrom('split', 'loop', 'fill'),
});
const openings = fc.record({
  count: fc.integer({ min: 1, max: 9 }).map(String),
  opening: fc.constantFrom('46.3', '50'),
  level: fc.constantFrom('', '20'),
});
/** Which mark of which run is made next, and where: null as planned, else so many mm off. */
const deed = fc.tuple(fc.nat(1), fc.nat(11), fc.option(fc.integer({ min: -3, max: 3 })));
const changes = (drafts: fc.Arbitrary<Held>) =>
  fc.array(fc.tuple(drafts, fc.array(deed, { maxLength: 4 })), { minLength: 1, maxLength: 5 });

/** Where everything made is, run by run, to the nearest 1/8000 mm. */
const madeIn = (runs: Kept['runs']) =>
  runs.map(({ planned, made }) =>
    Object.entries(made)
      .map(([label, typed]) => Math.round((typed === '' ? planned[label] : placeOf(typed)) ?? -1))
      .sort((a, b) => a - b),
  );

/** Marks that are still to be made just where something is made already. */
const ghostsIn = (runs: Kept['runs']) =>
  runs.flatMap((run, i) => {
    const places = new Set(madeIn(runs)[i]);
    const left = Object.entries(run.planned).filter(([label]) => !(label in run.made));
    return left.filter(([, at]) => places.has(Math.round(at)));
  });

function afterDeeds(kept: Kept, deeds: readonly [number, number, number | null][]): Kept {
  const runs = [...kept.runs];
  for (const [i, at, off] of deeds) {
    const run = runs[i];
    const label = Object.keys(run?.planned ?? {})[at];
    if (!run || label === undefined || label in run.made) continue;
    const typed = off === null ? '' : inMm(Math.max(0, (run.planned[label] ?? 0) + off * UNIT_MM));
    runs[i] = withMade(run, label, typed);
  }
  return { ...kept, runs };
}

// 1,000 garments each, of rows as a maker changes them: count, length, level, pitch, one row or two.
test.each([
  ['closures', closures, changes(openings)],
  ['strips', edging, changes(strips)],
] as const)(
  'law: of %s kept again, changed anyhow, what is made stays where it is, without ghosts',
  (_, one, all) => {
    fc.assert(
      fc.property(all, (steps) => {
        let kept: Kept | undefined;
        for (const [typed, deeds] of steps) {
          const state = stateOf({ ...one.start(bench), u: 'cm', ...typed });
          const { runs } = keptOf(one, state, bench, kept);
          const before = madeIn(kept?.runs ?? []);
          const now = madeIn(runs);
          before.forEach((places, i) => {
            expect(now[i] ?? [], `run ${i + 1}`).toEqual(places);
          });
          expect(ghostsIn(runs)).toEqual([]);
          const base = {
            id: 'k',
            name: 'K',
            stage: 'close',
            calculation: one.id,
            draft: heldOf(state),
          } as const;
          kept = afterDeeds({ ...base, runs }, deeds);
        }
      }),
      { seed: 12, numRuns: 1000 },
    );
  },
);
