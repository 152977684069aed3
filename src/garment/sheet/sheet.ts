import type { Kind, Stage } from '../../calculation/output.ts';
import { STAGES } from '../../calculation/output.ts';
import { isMade } from '../next/next.ts';
import { stepsMade } from '../next/work-lines.ts';
import { readHome } from '../record/home.ts';
import type { Garment, Quantity } from '../record/record.ts';
import { plusMinus } from '../work-out/doubt.ts';
import type { Result, Trouble } from '../work-out/result.ts';
import type { GarmentStep, Told } from '../work-out/told.ts';
import type { Answer } from '../work-out/work-out.ts';
import { madeRow, rowOf, type SheetRow } from './row.ts';

/** A number as it may be printed: what isn't sure is never given as one. */
export type SheetNumber =
  | {
      is: 'sure';
      /** A length in 1/8000 mm, or a count. */
      value: number;
      /** How far it may be off. */
      off: number;
    }
  | { is: 'row'; row: SheetRow }
  /** A decision is open behind it; of a row what is made of it is sure. */
  | { is: 'undecided'; row?: SheetRow }
  | { is: 'waits'; trouble: Trouble; row?: SheetRow };

/** One step of the garment, of which a row is one. */
export interface SheetStep {
  step: GarmentStep;
  kind: Kind;
  made: boolean;
  number: SheetNumber;
}

/** A number that no hand makes: what a work comes to. */
export interface SheetGives {
  home: string;
  kind: Kind;
  number: SheetNumber;
}

/** A garment as it is put on paper: what is said of it, in order, without words. */
export interface GarmentSheet extends Pick<Told, 'conflicts' | 'troubles' | 'unsound' | 'earlier'> {
  name: string;
  invented: boolean;
  made: number;
  of: number;
  /** Something is being typed that isn't settled, and so isn't on it. */
  pending: boolean;
  quantities: readonly { id: string; quantity: Quantity; number: SheetNumber }[];
  stages: readonly { stage: Stage; steps: readonly SheetStep[] }[];
  gives: readonly SheetGives[];
  /** Each side of a work that is on it, to be drawn. */
  works: readonly { id: string; side: string }[];
}

/** What stands on the sheet of a garment. @param answer of this record, without what is being typed */
export function sheetOf(record: Garment, answer: Answer): GarmentSheet {
  const { conflicts, troubles, unsound, earlier, sound, values } = answer;
  const quantities = [...sound.quantities].map(([id, quantity]) => ({
    id,
    quantity,
    number: numberOf(values.get([id, '', ''].join('|')), false),
  }));
  const stages = STAGES.flatMap((stage) => {
    const steps = answer.steps.filter((one) => one.stage === stage);
    return steps.length === 0 ? [] : [{ stage, steps: steps.map((one) => stepOf(answer, one)) }];
  });
  return {
    ...{ conflicts, troubles, unsound, earlier, quantities, stages },
    ...stepsMade(answer),
    name: record.name,
    invented: record.invented,
    pending: record.pending !== undefined,
    gives: givesIn(answer),
    works: [...answer.works].flatMap(([id, { work, outputs, sides }]) =>
      work.off || !outputs ? [] : sides.map(({ side }) => ({ id, side })),
    ),
  };
}

function stepOf({ nodes, values, sound }: Answer, step: GarmentStep): SheetStep {
  const made = isMade(step);
  const kind = nodes.get(step.home)?.kind ?? 'length';
  const number = numberOf(values.get(step.home), made);
  // A single number that is made waits for nothing: only of a row something may be made beside it.
  if (number.is !== 'waits') return { step, made, kind, number };
  const row = madeRow(sound.facts.get(step.home) ?? [], step.step.datum);
  return { step, made, kind, number: row ? { ...number, row } : number };
}

/** @param made all of it is, so that no decision behind it can move it */
function numberOf(result: Result | undefined, made: boolean): SheetNumber {
  if (!result) return { is: 'undecided' };
  if (!result.ok) return { is: 'waits', trouble: result.trouble };
  const open = result.undecided === true && !made;
  const { value } = result;
  if (typeof value === 'object') {
    const row = rowOf(value, result.made, open);
    return open ? { is: 'undecided', row } : { is: 'row', row };
  }
  return open ? { is: 'undecided' } : { is: 'sure', value, off: plusMinus(result) };
}

/** What works give that is no step, in their order. */
function givesIn({ nodes, values, works }: Answer): SheetGives[] {
  return [...nodes].flatMap(([home, { output, kind }]): SheetGives[] => {
    const result = values.get(home);
    const off = works.get(readHome(home).id)?.work.off;
    if (!output || output.step || off || !result) return [];
    if (!result.ok && isAbsent(result.trouble)) return [];
    return [{ home, kind, number: numberOf(result, false) }];
  });
}

/** Taken away by what is chosen, here or where it comes from: there is nothing to be had of it. */
function isAbsent(trouble: Trouble): boolean {
  return trouble.kind === 'absent' || (trouble.kind === 'waits' && trouble.gone?.why === 'absent');
}
