import { garmentOrderWords as words } from '#words/garment/garment-order-words.ts';
import type { Action } from '../../../garment/actions/act.ts';
import { type Moved, movedPast, movedWith } from '../../../garment/actions/move.ts';
import type { State } from '../../../garment/actions/state.ts';
import { readHome } from '../../../garment/record/home.ts';
import type { GarmentStep } from '../../../garment/work-out/told.ts';
import { workName } from '../said/names.ts';

/** A way to move a step, with those of its stage: what is done, and what is said of it then. */
export interface StepMove {
  key: 'earlier' | 'later' | 'back';
  face: string;
  said: string;
  action: Action;
}

/** The side of a step that stands with other sides of its work, and could be moved by itself. */
export function sideTogether({ answer }: State, step: GarmentStep): string | undefined {
  const { id, side } = readHome(step.home);
  const { sides = [] } = answer.sound.works.get(id) ?? {};
  return sides.length > 1 && movedWith(answer, step).side === undefined ? side : undefined;
}

/**
 * Every way to move a step, with the steps of its stage, among those of other works.
 * @param alone without the other sides of its work, though it stands with them yet
 */
export function movesOf(state: State, step: GarmentStep, alone = false): StepMove[] {
  const { answer } = state;
  const { id, side } = readHome(step.home);
  const moved = alone ? { ...movedWith(answer, step), side } : movedWith(answer, step);
  const { work, stage } = moved;
  const named = (one: Moved) => {
    return words.groupOf(workName({ answer }, one.work, one.side), words.stages[one.stage]);
  };
  const own = named(moved);
  const past = (by: -1 | 1): StepMove[] => {
    const found = movedPast(state, moved, by);
    if (!found) return [];
    const { past, ...moving } = found;
    const other = named(past);
    const action: Action = { do: 'move', ...moving, now: Date.now() };
    return by < 0
      ? [
          {
            key: 'earlier',
            face: words.stepEarlier(other),
            said: words.isBefore(own, other),
            action,
          },
        ]
      : [{ key: 'later', face: words.stepLater(other), said: words.isAfter(own, other), action }];
  };
  const { moved: together, movedSides } = answer.sound.works.get(id) ?? {};
  const isMoved =
    moved.side === undefined
      ? together?.[stage] !== undefined
      : movedSides?.[moved.side]?.[stage] !== undefined;
  const [face, said] =
    moved.side === undefined
      ? [words.stepBack, words.isBack(own)]
      : [words.sideBack, words.isWithOthers(own)];
  const action: Action = {
    do: 'move',
    work,
    stage,
    side: moved.side,
    to: undefined,
    now: Date.now(),
  };
  return [
    ...past(-1),
    ...past(1),
    ...(isMoved ? [{ key: 'back' as const, face, said, action }] : []),
  ];
}
