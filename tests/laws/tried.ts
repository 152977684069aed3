import { linesIn } from '../line-file.mjs';

/** How `npm run laws` wants it: `seed`, `cases`, `minutes` for one law at most, `report` file. */
export interface LawsRun {
  seed: number;
  cases: number;
  minutes?: number;
  /** What each law came to, a line for each: one that is in it already is not tried again. */
  report: string;
}

/** What one law came to. */
export interface LawTried {
  law: string;
  cases: number;
  seconds: number;
  /** Stopped by the time limit before it had all its cases. */
  short: boolean;
}

/** Reads a report: of a law that was tried twice, as it came out at last. */
export function readTried(report: string): LawTried[] {
  const tried = linesIn(report) as LawTried[];
  return [...new Map(tried.map((one) => [one.law, one])).values()];
}
