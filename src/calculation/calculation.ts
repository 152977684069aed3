import type { Figure } from '../drawing/figure.ts';
import type { ExactLength, Length } from '../lengths/length.ts';
import type { ReadFault } from '../lengths/read-fault.ts';
import type { Shown } from '../lengths/show-length.ts';
import type { StepFault } from '../sewing/lacing/lacing-steps.ts';
import type { Problem } from '../sewing/problem.ts';
import type { Run } from '../sewing/run.ts';
import type { Measure } from '../sewing/sources/usual.ts';
import type { Bench } from './bench.ts';
import type { PlainKey } from './page-keys.ts';

/** What was typed, by field, exactly as typed; what a page keeps for itself is no part of it. */
export type Draft = Readonly<Record<string, string>> & { readonly [Key in PlainKey]?: never };

interface FieldBase {
  key: string;
  label: string;
  /** Said to a screen reader after the label, and shown when the field is empty. */
  hint?: string;
}

/** One thing the maker gives. */
export type Field =
  | (FieldBase & { kind: 'length' | 'lengths' | 'count' | 'number' | 'text' })
  | (FieldBase & { kind: 'choice'; options: readonly Option[] });

export interface Option {
  value: string;
  label: string;
}

/** Something typed that gives no answer: which field, and why. `fault-words` says it. */
export interface Fault {
  field: string;
  why:
    | { of: 'reading'; fault: ReadFault }
    | { of: 'problem'; problem: Problem }
    | { of: 'steps'; fault: StepFault }
    /** `unknown`: no field there is, which can only be left out. */
    | { of: 'words'; words: string; unknown?: true };
}

/** Still being typed: said softly, not as a mistake. */
export function isUnfinished({ why }: Fault): boolean {
  return why.of === 'reading' && (why.fault.kind === 'empty' || why.fault.kind === 'unfinished');
}

/** A further number of the answer. */
export interface Line {
  label: string;
  value: string;
}

/** How the answer was got: the formula with the numbers in it, and where it is from. */
export interface Working {
  formula: string;
  source: string;
}

/** Another solution the maker may take; taking it types these fields. */
export interface Offer {
  words: string;
  take: Draft;
}

/** A run of marks with its name. */
export interface NamedRun {
  name: string;
  /** What one mark is called: "Hook". */
  item: string;
  run: Run;
  /** Where the run lies on a strip: what a template of several rows is drawn by. */
  strip?: { across: ExactLength; width: Length; hole: Length };
}

/** A drawing to scale, of the plan. */
export interface Drawn {
  name: string;
  /** Asked for only by what shows it: an answer is worked out without drawing. */
  draw(): Figure;
  /** The same of marks where they were made; a drawing without it is then said to be of the plan. */
  made?(runs: readonly NamedRun[]): Figure;
}

export interface Answer {
  headline: { before?: string; number: Shown | string; after: string };
  /** What to do with the number. */
  sentence: string;
  lines: readonly Line[];
  /** The same of marks where they were made, where that changes them. */
  linesMade?(runs: readonly NamedRun[]): readonly Line[];
  offers: readonly Offer[];
  /** What is wrong or doubtful with this answer. */
  warnings: readonly string[];
  /** What can hurt someone at this step, said below the numbers. */
  cautions: readonly string[];
  runs: readonly NamedRun[];
  /** So many marks that their lists come after drawings and lines, which would be out of reach below. */
  listsLast?: true;
  /** Drawings to scale. */
  figures?: readonly Drawn[];
  workings: readonly Working[];
  /** What is asked at the fields, as it is read out. */
  asked?: string;
}

/** An answer, or why there is none; with quiet questions at fields that hold something unusual. */
export type Work = { odd?: Readonly<Record<string, string>> } & (
  | { ok: true; answer: Answer }
  | { ok: false; faults: readonly Fault[] }
);

/** Everything a screen needs to show one calculation. */
export interface Calculation {
  id: string;
  title: string;
  /** What the fields hold the first time, so that there is an answer to look at. */
  start(bench: Bench): Draft;
  /** The fields that matter for what has been chosen so far, in order. */
  fields(draft: Draft): readonly Field[];
  /** The same, and after them those that don’t; left out where all always do. */
  ever?(draft: Draft): readonly Field[];
  /** Which measure of the bench a field holds; undefined for most counts and all choices. */
  measureOf?(key: string, draft: Draft): Measure | undefined;
  work(draft: Draft, bench: Bench): Work;
  /** Has something to count with the thumb. */
  tally?: true;
  /** Calculations of the same kind, one press away, and what of this one they begin with. */
  beside?: readonly {
    id: string;
    label: string;
    /** Undefined where there is nothing to begin with. */
    carry?: (draft: Draft, bench: Bench) => Draft | undefined;
  }[];
  /**
   * The draft with these places already made (as typed, from the datum), the rest
   * around them; `count` marks in all, as many as there were.
   */
  around?(draft: Draft, made: readonly string[], count: number): Draft;
}
