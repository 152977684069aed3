import type { Stage } from '../../calculation/output.ts';
import { readHome } from '../record/home.ts';
import { comparePlaces, type StepPlace, stepPlaces } from '../work-out/step-order.ts';
import type { GarmentStep } from '../work-out/told.ts';
import type { Answer } from '../work-out/work-out.ts';
import { edit } from './slots.ts';
import { type Done, isThere, refuse, type State, settle } from './state.ts';

/** Another place for the steps of one stage of a work; without one, that of their stage and its rank. */
export interface Moving {
  work: string;
  stage: Stage;
  to: StepPlace | undefined;
}

/** Moves the steps of one stage of a work, on all its sides, among those of all works: one change. */
export function move(state: State, { work, stage, to }: Moving, now: number): Done {
  if (!isThere(state, ['works', work])) return refuse(state, { why: 'not there', what: 'work' });
  const edits = [edit(state.record, ['works', work, 'moved', stage], to)];
  return settle(state, 'move', edits, { now });
}

/** Steps of one stage of a work that are made one after another. */
export interface StepGroup {
  work: string;
  /** Their own, whatever stage they are made in. */
  stage: Stage;
  first: GarmentStep;
}

/** The steps of a garment as they are moved: those of one stage of a work together. */
export function stepGroups({ steps }: Answer): StepGroup[] {
  const groups: StepGroup[] = [];
  for (const first of steps) {
    const { id: work } = readHome(first.home);
    const { stage } = first.step;
    const last = groups.at(-1);
    if (last?.work !== work || last.stage !== stage) groups.push({ work, stage, first });
  }
  return groups;
}

/** A move past the group before, or after. */
export interface MovePast extends Moving {
  past: StepGroup;
}

/**
 * What brings the steps of one stage of a work one place earlier, or later, in the order of all steps,
 * whatever stages they are of. Undefined where they are the first, or the last; and beside steps of the
 * same work, whose order is that in which it can be made.
 */
export function movedPast(
  { answer }: Pick<State, 'answer'>,
  { work, stage }: Pick<StepGroup, 'work' | 'stage'>,
  by: -1 | 1,
): MovePast | undefined {
  const groups = stepGroups(answer);
  const at = groups.findIndex((one) => one.work === work && one.stage === stage);
  const past = groups[at + by];
  if (at < 0 || !past || past.work === work) return undefined;
  const near = placeOf(answer, past);
  const beyond = groups[at + 2 * by];
  const far = beyond && placeOf(answer, beyond);
  const to = besidePlace(near, far, by);
  return to && { work, stage, to, past };
}

function placeOf({ sound, steps }: Answer, { work, stage }: StepGroup): StepPlace | undefined {
  const known = sound.works.get(work);
  const own = steps.filter(({ home }) => readHome(home).id === work);
  return known && stepPlaces(known, new Set(own.map(({ step }) => step.stage))).get(stage);
}

/** A place on the far side of a near one, and on this side of the one beyond. */
function besidePlace(
  near: StepPlace | undefined,
  far: StepPlace | undefined,
  by: -1 | 1,
): StepPlace | undefined {
  if (!near) return undefined;
  const { stage } = near;
  const rank = far?.stage === stage ? (near.rank + far.rank) / 2 : near.rank + by;
  const to = { stage, rank };
  const isPast = comparePlaces(to, near) * by > 0;
  const isBefore = far === undefined || comparePlaces(far, to) * by > 0;
  return isPast && isBefore ? to : undefined;
}
