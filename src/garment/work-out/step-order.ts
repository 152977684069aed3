import { STAGES, type Stage } from '../../calculation/output.ts';
import { readHome } from '../record/home.ts';
import type { Work } from '../record/record.ts';
import { isObject, isPlace } from '../record/sound-values.ts';

/** Where steps stand in the order of the work: among those of a stage, and there by rank. */
export interface StepPlace {
  stage: Stage;
  rank: number;
}

/**
 * Where the steps of each stage of a work stand: at its own rank, or where the maker has moved them;
 * never before an earlier stage of the same work, whose order is that in which it can be made.
 * @param stages those it has steps of @param side of a side that may be made apart from the others
 */
export function stepPlaces(
  { rank, moved, movedSides }: Work,
  stages: ReadonlySet<Stage>,
  side = '',
): ReadonlyMap<Stage, StepPlace> {
  const apart = movedSides && Object.hasOwn(movedSides, side) ? movedSides[side] : undefined;
  const places = new Map<Stage, StepPlace>();
  let last: StepPlace | undefined;
  for (const stage of STAGES.filter((one) => stages.has(one))) {
    const own = movedIn(apart, stage) ?? movedIn(moved, stage) ?? { stage, rank };
    last = last && comparePlaces(own, last) < 0 ? last : own;
    places.set(stage, last);
  }
  return places;
}

/** Less than nothing where the first is earlier. */
export function comparePlaces(one: StepPlace, other: StepPlace): number {
  return STAGES.indexOf(one.stage) - STAGES.indexOf(other.stage) || one.rank - other.rank;
}

/** What a record holds may be anyone's: what is no place leaves the steps where they are. */
function movedIn(moved: unknown, stage: Stage): StepPlace | undefined {
  const at = isObject(moved) && Object.hasOwn(moved, stage) ? moved[stage] : undefined;
  if (!isObject(at) || !isPlace(at.rank)) return undefined;
  const known = STAGES.find((one) => one === at.stage);
  return known && { stage: known, rank: at.rank };
}

/** What is put in order: steps of works by their rank, as they are declared. */
interface Ordered {
  home: string;
  stage: Stage;
}

/**
 * Steps in the order of the work, each with the stage it is made in: by stage, then by rank, unless moved;
 * of one place those of one work together, as their own stages follow each other, and else as declared.
 */
export function inWorkOrder<Step extends Ordered>(
  steps: readonly Step[],
  works: ReadonlyMap<string, { work: Work }>,
): Step[] {
  const stages = new Map([...works.keys()].map((id) => [id, new Set<Stage>()]));
  for (const { home, stage } of steps) stages.get(readHome(home).id)?.add(stage);
  const places = new Map(
    [...works].map(([id, { work }], turn) => {
      const of = (side: string) => stepPlaces(work, stages.get(id) ?? new Set(), side);
      return [
        id,
        { turn, sides: new Map(['', ...(work.sides ?? [])].map((one) => [one, of(one)])) },
      ];
    }),
  );
  const placed = steps.map((step) => {
    const own = step.stage;
    const { id, side } = readHome(step.home);
    const at = places.get(id);
    const { stage, rank } = at?.sides.get(side)?.get(own) ?? { stage: own, rank: 0 };
    return { step: { ...step, stage }, stage, rank, turn: at?.turn ?? 0, own };
  });
  placed.sort(
    (a, b) =>
      comparePlaces(a, b) || a.turn - b.turn || STAGES.indexOf(a.own) - STAGES.indexOf(b.own),
  );
  return placed.map(({ step }) => step);
}
