import { inMm, NO_RUN, placeOf, plannedOf, withMade } from './as-made.ts';
import type { KeptRun } from './garment.ts';
import {
  byLabels,
  byPlaces,
  type Fact,
  factsOf,
  isAsBefore,
  type PlannedMark,
} from './which-mark.ts';

/**
 * What was measured since a calculation was opened, put onto what is kept by now.
 *
 * Only what differs from the opening is taken over, so that an old address, or
 * another tab, never takes a later measure away. A mark whose measure was taken
 * away is made as planned.
 *
 * @param opened what was measured when it was opened, by label
 * @param now the same at present
 */
export function withMeasures(
  run: KeptRun | undefined,
  opened: ReadonlyMap<string, string>,
  now: ReadonlyMap<string, string>,
): KeptRun {
  let next = run ?? NO_RUN;
  for (const label of new Set([...opened.keys(), ...now.keys()])) {
    if (opened.get(label) !== now.get(label)) next = withMade(next, label, now.get(label) ?? '');
  }
  return next;
}

/**
 * A run worked out anew, with what was made of it before. What is made stays where it was
 * made, and is of the mark that is there now: in a row of like marks the nearest one, so
 * that nothing made has a mark still to make beside it. Marks that differ from each other,
 * such as the lines of a hem, are known by their label, as is every mark of a plan that
 * is as it was.
 *
 * A mark that is sewn keeps the place it was first planned at beside where it was
 * measured. One that was made as planned and is now planned elsewhere was made where it
 * was planned then. What is made and no longer asked for follows after the plan's marks,
 * without a plan.
 *
 * @param step the graduation it was made with: within half of it a mark is as planned
 */
export function plannedAnew(old: KeptRun, marks: readonly PlannedMark[], step: number): KeptRun {
  const facts = factsOf(old);
  const byPlace = marks.every(({ alike }) => alike) && !isAsBefore(old, marks, step);
  const { of, left } = byPlace ? byPlaces(facts, marks) : byLabels(facts, marks);
  const planned = new Map<string, number>();
  const made = new Map<string, string>();
  for (const mark of marks) {
    const { label, at, sewn } = mark;
    const fact = of.get(label);
    const before = fact ? fact.planned : sewn ? plannedOf(old, label) : undefined;
    planned.set(label, sewn ? (before ?? at) : at);
    if (sewn) made.set(label, saidOfSewn(fact?.typed, before, at, step));
    else if (fact) made.set(label, saidAnew(fact, at));
  }
  let next = marks.length;
  for (const { typed, at } of left) {
    do next++;
    while (planned.has(String(next)));
    made.set(String(next), typed === '' && at !== undefined ? inMm(at) : typed);
  }
  return { planned: Object.fromEntries(planned), made: Object.fromEntries(made) };
}

/** What is said of a mark made before that is planned at `at` now; moved there and back it is as planned. */
function saidAnew({ typed, at: made }: Fact, at: number): string {
  if (typed !== '') return typed === inMm(at) ? '' : typed;
  return made === undefined || Math.abs(made - at) < 1 ? '' : inMm(made);
}

function saidOfSewn(
  said: string | undefined,
  before: number | undefined,
  at: number,
  step: number,
): string {
  if (said !== undefined && said !== '' && placeOf(said) === at) return said;
  const asPlanned = said === '' && before !== undefined && Math.abs(before - at) <= step / 2;
  return asPlanned ? '' : inMm(at);
}
