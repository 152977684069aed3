import { inMm, madeOf, NO_RUN, placeOf, plannedOf, withMade } from './as-made.ts';
import type { KeptRun } from './garment.ts';

/** A mark of a run as it is worked out now. */
export interface PlannedMark {
  label: string;
  /** Its place from the datum, in 1/8000 mm. */
  at: number;
  /** It is where it was measured, and never moves. */
  sewn: boolean;
}

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
 * A run worked out anew, with what was made of it before.
 *
 * A mark that is sewn keeps the place it was first planned at beside where it
 * was measured. One that was made as planned and is now planned elsewhere was
 * made where it was planned then. Nothing that was made is dropped, even when
 * the run has no such mark any more.
 *
 * @param was the label a sewn mark had before
 * @param step the graduation it was made with: within half of it a mark is as planned
 */
export function plannedAnew(
  old: KeptRun,
  marks: readonly PlannedMark[],
  was: (mark: PlannedMark) => string | undefined,
  step: number,
): KeptRun {
  const planned = new Map<string, number>();
  const made = new Map<string, string>();
  const taken = new Set(marks.flatMap((mark) => (mark.sewn ? (was(mark) ?? []) : [])));
  for (const mark of marks) {
    const { label, at, sewn } = mark;
    const from = sewn ? was(mark) : taken.has(label) ? undefined : label;
    const before = from === undefined ? undefined : plannedOf(old, from);
    const said = from === undefined ? undefined : madeOf(old, from);
    planned.set(label, sewn ? (before ?? at) : at);
    if (sewn) made.set(label, saidOfSewn(said, before, at, step));
    else if (said === '' && before !== undefined && Math.abs(before - at) >= 1) {
      made.set(label, inMm(before));
    } else if (said !== undefined) made.set(label, said);
  }
  for (const [label, typed] of Object.entries(old.made)) {
    if (planned.has(label) || taken.has(label)) continue;
    made.set(label, typed);
    const place = plannedOf(old, label);
    if (place !== undefined) planned.set(label, place);
  }
  return { planned: Object.fromEntries(planned), made: Object.fromEntries(made) };
}

/** The label of the mark that was measured just there, else of the one with the same label. */
export function measuredAt(run: KeptRun): (mark: PlannedMark) => string | undefined {
  const places = new Map(
    Object.entries(run.made).map(([label, typed]) => [placeOf(typed), label] as const),
  );
  return ({ at, label }) =>
    places.get(at) ?? (Object.hasOwn(run.planned, label) ? label : undefined);
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
