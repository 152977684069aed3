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

/** A garment as the second version kept it: it is read, and never written. */
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
