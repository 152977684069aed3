import type { Kind } from '../../calculation/output.ts';
import { readHome } from '../record/home.ts';
import type { Value } from '../work-out/result.ts';
import type { GarmentStep } from '../work-out/told.ts';
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

/** The works that are on the garment, as lines, in their order. */
export function workLines(answer: Answer): WorkLine[] {
  const byWork = new Map<string, GarmentStep[]>();
  for (const step of answer.steps) {
    const { id } = readHome(step.home);
    const own = byWork.get(id);
    if (own) own.push(step);
    else byWork.set(id, [step]);
  }
  const conflicts = new Set(answer.conflicts.map(({ home }) => readHome(home).id));
  return [...answer.works].flatMap(([id, { work, outputs, sides }]): WorkLine[] => {
    if (work.off) return [];
    const steps = byWork.get(id) ?? [];
    const made = steps.filter(isMade).length;
    const begun = steps.some((step) => step.made > 0);
    const homes = (outputs?.outputs ?? []).flatMap(({ key }) =>
      sides.map(({ side }) => [id, side, key].join('|')),
    );
    const shows = shownOf(answer, steps, homes);
    const state = steps.length > 0 && made === steps.length ? 'done' : begun ? 'begun' : 'open';
    return [
      {
        ...{ id, name: work.name, steps, state },
        conflict: conflicts.has(id),
        waits: !shows || steps.some(({ home }) => !answer.values.get(home)?.ok),
        shows,
      },
    ];
  });
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
