import { type Bench, tapeStep } from '../calculation/bench.ts';
import { exactLength } from '../lengths/length.ts';
import { readLength } from '../lengths/read-length.ts';
import { placeOnTape } from '../sewing/marks.ts';
import { NO_RUN, withMade } from './as-made.ts';
import type { Kept } from './garment.ts';
import { marksOf } from './plan.ts';
import type { Stop } from './stop.ts';

/** With a mark made or not, and the plan of its run beside it where none was kept. */
export function withMark(kept: Kept, stop: Stop, label: string, typed: string | undefined): Kept {
  const runs = Array.from(
    { length: Math.max(kept.runs.length, stop.run + 1) },
    (_, i) => kept.runs[i] ?? NO_RUN,
  );
  const plan = Object.fromEntries(marksOf(stop.plan).map((mark) => [mark.label, mark.at]));
  const changed = runs.map((run, i) => {
    if (i !== stop.run) return run;
    return withMade({ ...run, planned: { ...plan, ...run.planned } }, label, typed);
  });
  return { ...kept, runs: changed };
}

/** A measure only where it differs from the place as the tape in hand shows it. */
export function differing(stop: Stop, label: string, typed: string | undefined, bench: Bench) {
  const mark = stop.plan.run.marks.find((one) => one.label === label);
  if (!typed || !mark) return typed;
  const reading = readLength(typed, bench.unit);
  const planned = stop.kept.runs[stop.run]?.planned[label] ?? mark.at;
  const asShown =
    reading.ok && reading.value === placeOnTape(exactLength(planned), tapeStep(bench), mark.taken);
  return asShown ? '' : typed;
}
