import { garmentOrderWords as words } from '#words/garment/garment-order-words.ts';
import type { Action } from '../../../garment/actions/act.ts';
import { movedPast } from '../../../garment/actions/move.ts';
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

/** Every way to move a step, with the steps of its stage, among those of other works. */
export function movesOf(state: State, { home, step: { stage } }: GarmentStep): StepMove[] {
  const work = readHome(home).id;
  const named = (id: string, its: typeof stage) =>
    words.groupOf(workName({ answer: state.answer }, id), words.stages[its]);
  const own = named(work, stage);
  const past = (by: -1 | 1): StepMove[] => {
    const found = movedPast(state, { work, stage }, by);
    if (!found) return [];
    const { past, ...moving } = found;
    const other = named(past.work, past.stage);
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
  const moved = state.answer.sound.works.get(work)?.moved?.[stage] !== undefined;
  const action: Action = { do: 'move', work, stage, to: undefined, now: Date.now() };
  return [
    ...past(-1),
    ...past(1),
    ...(moved
      ? [{ key: 'back' as const, face: words.stepBack, said: words.isBack(own), action }]
      : []),
  ];
}
