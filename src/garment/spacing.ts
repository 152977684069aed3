import { type Bench, tapeStep } from '../calculation/bench.ts';
import type { Calculation } from '../calculation/calculation.ts';
import { heldOf } from '../calculation/page.ts';
import { onTape } from '../calculation/tape-text.ts';
import { readLength } from '../lengths/read-length.ts';
import { markOut } from '../sewing/marks.ts';
import { madeOf, NO_RUN } from './as-made.ts';
import type { Kept } from './garment.ts';
import { draftFor, marksOf } from './plan.ts';
import { plannedAnew } from './planned-anew.ts';
import type { SpacingFault, Stop } from './stop.ts';

export type Spaced =
  | { ok: true; change: (kept: Kept) => Kept }
  | { ok: false; fault: SpacingFault };

/**
 * The rest of a run spaced anew around the marks that are made, each where it was
 * measured or, when as planned, where the tape in hand showed it.
 */
export function spacedAnew(calculation: Calculation, stop: Stop, bench: Bench): Spaced | undefined {
  const { kept, plan, run } = stop;
  const around = calculation.around;
  if (!around) return undefined;
  const step = tapeStep(bench);
  const { marks } = markOut(plan.run, step);
  const done = marks
    .flatMap(({ label, at }) => {
      const made = madeOf(kept.runs[run], label);
      if (made === undefined) return [];
      const typed = made === '' ? onTape(at, bench) : made;
      const reading = readLength(typed, bench.unit);
      return reading.ok ? [{ label, typed, at: reading.value }] : [];
    })
    .sort((one, other) => one.at - other.at);
  const places = done.map(({ typed }) => typed);
  const state = draftFor(calculation, kept, bench);
  const draft = around(state.draft, places, marks.length);
  const work = calculation.work(draft, bench);
  if (!work.ok) {
    return { ok: false, fault: { faults: work.faults, fields: calculation.fields(draft) } };
  }
  const { made: _, ...page } = state.page;
  const change = (old: Kept): Kept => ({
    ...old,
    draft: heldOf({ draft, page }),
    runs: work.answer.runs.map((now, i) => plannedAnew(old.runs[i] ?? NO_RUN, marksOf(now), step)),
  });
  return { ok: true, change };
}

/** With the spacing it had before; what was made since stays where it was made. */
export function unspaced(now: Kept, before: Kept, bench: Bench): Kept {
  const runs = before.runs.map((run, i) => {
    const planned = Object.entries(run.planned);
    const marks = planned.map(([label, at]) => ({ label, at, sewn: false, alike: true }));
    const spaced = now.runs[i];
    const same = JSON.stringify(spaced?.made) === JSON.stringify(run.made);
    return same || !spaced ? run : plannedAnew(spaced, marks, tapeStep(bench));
  });
  return { ...now, draft: before.draft, runs };
}
