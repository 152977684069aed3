import type { Bench } from '../../calculation/bench.ts';
import type { Draft, Fault } from '../../calculation/calculation.ts';
import { type Length, ZERO } from '../../lengths/length.ts';
import type { LacingInput } from '../../sewing/lacing/lacing-input.ts';
import type { StepsRead } from '../../sewing/lacing/lacing-steps.ts';
import { type LacingAsked, lacingFields } from './fields.ts';
import { NO_STEPS, type OwnSteps, rowOf, secondOf, stepFaults, stepsOf } from './row.ts';
import { stepsDrawn } from './step-choices.ts';

/** What was typed of a lacing. */
export interface LacingRead {
  input: LacingInput;
  /** The second row, where there is one: the same lacing over holes of its own. */
  second: LacingInput | undefined;
  /** Whether that has a pitch of its own, too. */
  ownPitch: boolean;
  /** Of one's own steps, whether the first is before its hole is passed. */
  before: boolean;
  /** And those that pass through where the row has no hole. */
  offHoles: readonly number[];
  /** How many steps on from the first are drawn; undefined for all. */
  drawn: number | undefined;
}

export type ReadOutcome = { ok: true; value: LacingRead } | { ok: false; faults: readonly Fault[] };

/** Reads only the fields that are shown, and says everything that could not be read. */
export function lacingRead(draft: Draft, bench: Bench): ReadOutcome {
  const read = lacingFields.read(draft, bench);
  const steps = ownSteps(draft, read.ok ? read.value.margin : ZERO);
  if (read.ok && steps.ok) return { ok: true, value: lacingOf(read.value, steps) };
  return { ok: false, faults: [...(read.ok ? [] : read.faults), ...stepFaults(steps)] };
}

function lacingOf(
  { holes2, pitch2, step, ...asked }: LacingAsked,
  { repeat, before, offHoles }: OwnSteps,
): LacingRead {
  const input = rowOf(asked, repeat);
  const second =
    holes2 === undefined ? undefined : secondOf(input, { holes: holes2, pitch: pitch2 });
  const drawn = stepsDrawn(step, before);
  return { input, second, ownPitch: pitch2 !== undefined, before, offHoles, drawn };
}

/** A margin that isn't read, or is none, is a fault of its own: the steps are read all the same. */
function ownSteps(draft: Draft, margin: Length): StepsRead | typeof NO_STEPS {
  const ask = lacingFields.asks(draft);
  const { kind, own } = lacingFields.specs;
  return kind.is('own')(ask) ? stepsOf(ask(own), margin) : NO_STEPS;
}
