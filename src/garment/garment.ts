import type { Held } from '../calculation/page.ts';

/** The stages of the work, in order. */
export const STAGES = ['measure', 'cut', 'join', 'turn-up', 'close', 'edge'] as const;

export type Stage = (typeof STAGES)[number];

/** One run of a kept calculation: what was planned, and beside it what was made. */
export interface KeptRun {
  /** Where its marks were planned, by label, in 1/8000 mm from the datum. */
  planned: Readonly<Record<string, number>>;
  /**
   * The marks that are made, by label: where each really is, as typed with its unit;
   * empty when it is as planned.
   */
  made: Readonly<Record<string, string>>;
}

/** A calculation kept on a garment. */
export interface Kept {
  id: string;
  name: string;
  stage: Stage;
  /** Which calculation it is. */
  calculation: string;
  /** What was typed, as typed, with the unit it was typed in and the choices of paper. */
  draft: Held;
  /** Its runs of marks, in the calculation's order. */
  runs: readonly KeptRun[];
}

/** A garment and what is kept on it. */
export interface Garment {
  version: 2;
  id: string;
  name: string;
  /** Made up to show the app with: no one's measures. */
  invented: boolean;
  kept: readonly Kept[];
  /** Taken off it, to be had back; the last one taken off is the last. */
  takenOff: readonly Kept[];
  /** When it was last changed, in ms since 1970. */
  changed: number;
  /** How often it has been changed, so that a backup can tell what it lacks. */
  edits: number;
}

/** The longest name, and the most that is kept on one garment, and taken off it. */
export const LONGEST_NAME = 80;
export const MOST_KEPT = 500;

/** A garment with nothing on it yet. A name of nothing but spaces is the caller's to refuse. */
export function newGarment(id: string, name: string, changed: number): Garment {
  return {
    version: 2,
    id,
    name: shortened(name),
    invented: false,
    kept: [],
    takenOff: [],
    changed,
    edits: 1,
  };
}

/** What is kept, in the order of the work; within a stage as it was kept. */
export function inOrder(garment: Garment): Kept[] {
  return STAGES.flatMap((stage) => garment.kept.filter((kept) => kept.stage === stage));
}

/** A name as it is kept: without spaces around it, and not too long. */
export function shortened(name: string): string {
  return name.trim().slice(0, LONGEST_NAME);
}
