import { UNITS_PER_MM } from '../lengths/length.ts';
import { readLength } from '../lengths/read-length.ts';
import type { KeptRun } from './garment.ts';

/** A run nothing is kept of. */
export const NO_RUN: KeptRun = { planned: {}, made: {} };

/** What was said of a mark: empty when made as planned, undefined when not made. */
export function madeOf(run: KeptRun | undefined, label: string): string | undefined {
  return run && Object.hasOwn(run.made, label) ? run.made[label] : undefined;
}

/** Where a mark was planned, in 1/8000 mm; undefined when that was not kept. */
export function plannedOf(run: KeptRun, label: string): number | undefined {
  return Object.hasOwn(run.planned, label) ? run.planned[label] : undefined;
}

/** Marks that are made, and not asked for any more: the plan has others. */
export function extraOf(run: KeptRun): string[] {
  const hasPlan = Object.keys(run.planned).length > 0;
  return hasPlan ? Object.keys(run.made).filter((label) => !Object.hasOwn(run.planned, label)) : [];
}

/**
 * How many marks a run asks for, how many of them are made, how many are made elsewhere
 * than planned, and how many are made that are not asked for any more.
 */
export function progressOf(runs: readonly KeptRun[]): {
  marks: number;
  made: number;
  elsewhere: number;
  extra: number;
} {
  const made = runs.flatMap((run) => Object.values(run.made));
  const all = runs.reduce(
    (sum, run) => sum + Object.keys({ ...run.planned, ...run.made }).length,
    0,
  );
  const extra = runs.reduce((sum, run) => sum + extraOf(run).length, 0);
  return {
    marks: all - extra,
    made: made.length - extra,
    elsewhere: made.filter((typed) => typed !== '').length,
    extra,
  };
}

/** The run with one mark made; undefined takes what was said of it away again. */
export function withMade(run: KeptRun, label: string, typed: string | undefined): KeptRun {
  const rest = Object.entries(run.made).filter(([made]) => made !== label);
  const made = typed === undefined ? rest : [...rest, [label, typed] as const];
  return { ...run, made: Object.fromEntries(made) };
}

/** Where a measure lies, in 1/8000 mm: only when it says its unit itself. */
export function placeOf(typed: string): number | undefined {
  const [one, other] = [readLength(typed, 'mm'), readLength(typed, 'in')];
  return one.ok && other.ok && one.value === other.value ? one.value : undefined;
}

/** A place as text with its unit, exact to 1/8000 mm. */
export function inMm(units: number): string {
  return `${Math.round(units) / UNITS_PER_MM} mm`;
}

/**
 * A measure with its unit written, so that a bench set to another one never reads
 * another place. What can't be read, or whose unit is not known, stays as it is.
 */
export function withItsUnit(typed: string, unit: 'mm' | 'cm' | 'in' | undefined): string {
  if (placeOf(typed) !== undefined || unit === undefined) return typed;
  const reading = readLength(typed, unit);
  if (!reading.ok) return typed;
  const written = `${typed.trim()} ${unit}`;
  return placeOf(written) === reading.value ? written : inMm(reading.value);
}
