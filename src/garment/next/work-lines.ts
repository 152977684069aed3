import type { Kind } from '../../calculation/output.ts';
import { homeOf } from '../record/home.ts';
import type { Block } from '../work-out/blocks.ts';
import type { Value } from '../work-out/result.ts';
import type { SeenWork } from '../work-out/seen-work.ts';
import { type GarmentStep, inTurn } from '../work-out/told.ts';
import type { Answer } from '../work-out/work-out.ts';
import { isMade } from './next.ts';

/** A work as one line: how far it is, and its one number or row. */
export interface WorkLine {
  id: string;
  name: string;
  /** Its steps, of all its sides, in the order they are made in. */
  steps: readonly GarmentStep[];
  /** `done` where all of it is made. */
  state: 'open' | 'begun' | 'done';
  /** Made otherwise than asked, and not answered yet. */
  conflict: boolean;
  /** It gives nothing yet, or a step of it has no number. */
  waits: boolean;
  /** The number, or the row, it is known by; undefined where it gives none yet. */
  shows: { home: string; kind: Kind; value: Value; made: readonly boolean[] } | undefined;
}

/** Lines are as before where nothing of their work is otherwise: a garment of hundreds changes by one. */
const linesBefore = new WeakMap<Block, WorkLine>();

/** The works that are on the garment, as lines, in their order; the same object for what is the same. */
export function workLines(answer: Answer): WorkLine[] {
  return [...answer.works].flatMap(([id, seen]): WorkLine[] => {
    const block = answer.memory.blocks.get(id);
    if (seen.work.off || !block) return [];
    const before = linesBefore.get(block);
    if (before) return [before];
    const line = lineOf(answer, id, seen, block.says);
    linesBefore.set(block, line);
    return [line];
  });
}

function lineOf(answer: Answer, id: string, seen: SeenWork, says: Block['says']): WorkLine {
  const { work, outputs, sides } = seen;
  const steps = inTurn(says.steps, new Map([[id, seen]]));
  const made = steps.filter(isMade).length;
  const begun = steps.some((step) => step.made > 0);
  const homes = (outputs?.outputs ?? []).flatMap(({ key }) =>
    sides.map(({ side }) => homeOf(id, side, key)),
  );
  const shows = shownOf(answer, steps, homes);
  return {
    ...{ id, name: work.name, steps },
    state: steps.length > 0 && made === steps.length ? 'done' : begun ? 'begun' : 'open',
    conflict: says.conflicts.length > 0,
    waits: !shows || steps.some(({ home }) => !answer.values.get(home)?.ok),
    shows,
  };
}

/** How many steps of a garment are made, of how many; a row is one. */
export function stepsMade({ steps }: Answer): { made: number; of: number } {
  return { made: steps.filter(isMade).length, of: steps.length };
}

/** Its row, else the number of its first step still to be made, else the first number it gives. */
function shownOf(answer: Answer, steps: readonly GarmentStep[], homes: readonly string[]) {
  const rows = steps.filter(({ home }) => answer.nodes.get(home)?.kind === 'run');
  const next = steps.filter((step) => !isMade(step));
  const order = [...rows, ...next, ...steps].map(({ home }) => home);
  for (const home of [...order, ...homes]) {
    const result = answer.values.get(home);
    const kind = answer.nodes.get(home)?.kind;
    if (!result?.ok || !kind) continue;
    const { value } = result;
    const marks = typeof value === 'object' ? value.marks : [];
    return { home, kind, value, made: marks.map((_, i) => result.made?.[i] !== undefined) };
  }
  return undefined;
}
