import type { Stage } from '../../calculation/output.ts';
import { readHome } from '../record/home.ts';
import { comparePlaces, type StepPlace, stepPlaces } from '../work-out/step-order.ts';
import type { GarmentStep } from '../work-out/told.ts';
import type { Answer } from '../work-out/work-out.ts';
import { type Respaced, respacedRanks, respacing } from './respace.ts';
import { edit } from './slots.ts';
import { type Done, isThere, refuse, type State, settle } from './state.ts';

/** Steps that are moved together: those of one stage of a work, on all its sides or on one that is made apart. */
export interface Moved {
  work: string;
  stage: Stage;
  /** The one side; without it all that aren't made apart. */
  side?: string | undefined;
}

/** Another place for them; without one, that of their stage and rank, or of the other sides. */
export interface Moving extends Moved {
  to: StepPlace | undefined;
  /** Other ranks of works and of what was moved, in the same order: only where there was no number between two. */
  room?: Respaced | undefined;
}

/** Moves the steps of one stage of a work among those of all works: one change. */
export function move(state: State, { work, stage, side, to, room }: Moving, now: number): Done {
  if (!isThere(state, ['works', work])) return refuse(state, { why: 'not there', what: 'work' });
  const place = side === undefined ? ['moved', stage] : ['movedSides', side, stage];
  const own = edit(state.record, ['works', work, ...place], to);
  const others = respacing(state, room).filter(
    ({ slot }) => !own.slot.every((key, i) => slot[i] === key),
  );
  return settle(state, 'move', [...others, own], { now });
}

/** Steps that are moved together, as they stand. */
export interface StepGroup extends Moved {
  sides: ReadonlySet<string>;
  place: StepPlace;
  /** Where the first and the last of them stand among all steps. */
  from: number;
  till: number;
}

/**
 * The steps of a garment as they are moved: those of one stage of a work together, but for a side that
 * is made apart from the others.
 * @param alone steps of a side that are to be moved by themselves, though they stand with the others yet
 */
export function stepGroups(answer: Answer, alone?: Moved): StepGroup[] {
  const groups = new Map<string, StepGroup & { sides: Set<string> }>();
  const standOf = stands(answer);
  answer.steps.forEach((one, i) => {
    const { id: work, side } = readHome(one.home);
    const { stage } = one.step;
    const { place, isApart } = standOf(one);
    const isAlone = alone?.work === work && alone.stage === stage && alone.side === side;
    const own = isApart || isAlone ? side : undefined;
    const key = JSON.stringify([work, stage, own ?? null]);
    const known = groups.get(key);
    known?.sides.add(side);
    if (known) known.till = i;
    else
      groups.set(key, { work, stage, side: own, sides: new Set([side]), place, from: i, till: i });
  });
  return [...groups.values()];
}

/** What a step is moved with: by its side alone where that is made apart already. */
export function movedWith(answer: Answer, step: GarmentStep): Moved {
  const { id: work, side } = readHome(step.home);
  const { stage } = step.step;
  return { work, stage, side: stands(answer)(step).isApart ? side : undefined };
}

/** A move past the group before, or after. */
export interface MovePast extends Moving {
  /** The one it stands beside then. */
  past: StepGroup;
}

/**
 * What brings steps one place earlier, or later, in the order of all steps, whatever stages they are of.
 * Undefined where they are the first, or the last; and beside steps of the same side of a work, whose
 * order is that in which it can be made.
 */
export function movedPast(
  { answer }: Pick<State, 'answer'>,
  { work, stage, side }: Moved,
  by: -1 | 1,
): MovePast | undefined {
  const groups = stepGroups(answer, { work, stage, side });
  const own = groups.find((one) => one.work === work && one.stage === stage && one.side === side);
  if (!own) return undefined;
  // Of those that stand that way, in part at least, the nearest is passed.
  const ahead = groups
    .filter((one) => one !== own && (by < 0 ? one.from < own.till : one.till > own.from))
    .sort((one, other) => (by < 0 ? other.from - one.from : one.till - other.till));
  const [near] = ahead;
  if (!near) return undefined;
  // Works of one rank, as two tabs add them, leave no place between their steps: then all of those.
  const passed = ahead.filter(({ place }) => comparePlaces(place, near.place) === 0);
  if (passed.some((one) => sharesSide(own, one))) return undefined;
  const past = passed.at(-1) ?? near;
  const far = ahead[passed.length]?.place;
  const to = besidePlace(past.place, far, by);
  if (to) return { work, stage, side, to, past };
  const room = respacedRanks(answer);
  const apart = (place: StepPlace) => ({ ...place, rank: room.get(place.rank) ?? place.rank });
  const between = besidePlace(apart(past.place), far && apart(far), by);
  return between && { work, stage, side, to: between, room: [...room], past };
}

function sharesSide(one: StepGroup, other: StepGroup): boolean {
  return one.work === other.work && [...one.sides].some((side) => other.sides.has(side));
}

/** Where the steps of a step's stage and side stand, and whether that side is made apart from the others. */
function stands({ sound, steps }: Answer): (step: GarmentStep) => Stand {
  const stages = new Map<string, Set<Stage>>();
  for (const { home, step } of steps) {
    const { id } = readHome(home);
    stages.set(id, (stages.get(id) ?? new Set()).add(step.stage));
  }
  return ({ home, step: { stage } }) => {
    const { id, side } = readHome(home);
    const work = sound.works.get(id);
    const placeOf = (its?: string) =>
      (work && stepPlaces(work, stages.get(id) ?? new Set(), its).get(stage)) ?? { stage, rank: 0 };
    const [place, shared] = [placeOf(side), placeOf()];
    const own = work?.movedSides?.[side]?.[stage] !== undefined;
    return { place, isApart: own || comparePlaces(place, shared) !== 0 };
  };
}

interface Stand {
  place: StepPlace;
  isApart: boolean;
}

/** A place on the far side of a near one, and on this side of the one beyond. */
function besidePlace(
  near: StepPlace,
  far: StepPlace | undefined,
  by: -1 | 1,
): StepPlace | undefined {
  const { stage } = near;
  const rank = far?.stage === stage ? (near.rank + far.rank) / 2 : near.rank + by;
  const to = { stage, rank };
  const isPast = comparePlaces(to, near) * by > 0;
  const isBefore = far === undefined || comparePlaces(far, to) * by > 0;
  return isPast && isBefore ? to : undefined;
}
