import type { Kind, Stage } from '../../calculation/output.ts';
import type { BenchUnit } from '../../lengths/unit.ts';
import type { Run } from '../../sewing/run.ts';

/**
 * A garment as it is kept, version 3. What is in its maps is anyone's until `soundOf` has looked
 * at it: a file, another tab or a newer build may have written it, and it is kept unchanged.
 */
export interface Garment {
  version: 3;
  id: string;
  name: string;
  /** Made up to show the app with: no one's measures. */
  invented: boolean;
  /** When it was last changed, in ms since 1970. */
  changed: number;
  /** How often it has been changed, so that a backup can tell what it lacks. */
  edits: number;
  quantities: Kept;
  works: Kept;
  facts: Kept;
  /** By home, what a row kept at its first made mark. */
  begun: Kept;
  /** By home, one a row. */
  decisions: Kept;
  /** By home, steps that were passed over. */
  passed?: Kept;
  /** By home of a step, or of a work, what the maker wants remembered there. */
  notes?: Kept;
  /** What is said of the things to have at hand. */
  materials?: Kept;
  /** By material, what is said of laying its pieces, and the lay that was found. */
  lays?: Kept;
  /** What is being typed and isn't settled. */
  pending?: unknown;
}

/** Things by id, or by home. */
export type Kept = Readonly<Record<string, unknown>>;

/** What was typed, with the unit it was read in and the mark that was chosen for decimals. */
export interface TextPart {
  text: string;
  unit: BenchUnit;
  mark?: '.' | ',';
  /** The link it stands for, where nothing could be put in that one's place. */
  was?: Link;
}

/** A number of the garment, or what a work gives: of the same side, of one, or the total of all. */
export type Link = { quantity: string } | { work: string; output: string; of?: string };

export interface LinkPart {
  link: Link;
}

/** A number that was put in a link's place: its value then, and how sure it was. Lengths are in 1/8000 mm. */
export interface PutPart {
  put: number | Run;
  kind: Kind;
  plusMinus?: number;
  was: Link;
}

export type Part = TextPart | LinkPart | PutPart;
export type Parts = readonly Part[];
export type Fields = Readonly<Record<string, Parts>>;

/** A named number of the garment itself: typed, read, a sum, or measured (then its fact is the number). */
export interface Quantity {
  name: string;
  kind: Kind;
  rank: number;
  parts: Parts;
  /** How sure what was read is, in 1/8000 mm. */
  plusMinus?: number;
  /** Said to be final: nothing is asked of it before a cut. */
  final?: true;
  /** A measure of someone's body: never shared unless asked to. */
  body?: true;
  /** Which measure of a body: an id of `sewing/sources/body-measures.ts`, or one of a newer build. */
  measure?: string;
  /** The material whose lay it is the length of: it is given anew with each lay that is kept. */
  lay?: string;
}

/** One kept calculation. */
export interface Work {
  name: string;
  calculation: string;
  /** Its place among all works; all different, ties by id. */
  rank: number;
  /** By stage, its steps that are made at another place than their stage and its rank say. */
  moved?: Readonly<Partial<Record<Stage, { stage: Stage; rank: number }>>>;
  /** The same of sides that are made apart from the others. */
  movedSides?: Readonly<Record<string, Work['moved']>>;
  fields: Fields;
  /** Where it is done several times: left, right, 1…n. Fields are shared but for `own`. */
  sides?: readonly string[];
  own?: Readonly<Record<string, Fields>>;
  /** Taken off the garment, to be had back. */
  off?: true;
  final?: true;
  /** Of the second version, and its calculation hasn't been known since (`withKeys`). */
  older?: 2;
}

/** Which mark of how many a fact is of, and where that mark was asked when it was made. */
export interface FactMark {
  rank: number;
  of: number;
  asked: number;
}

/** What was made, measured or ticked. Only its maker changes it. */
export interface Fact {
  /** The one thing it is of: see `homeOf`. */
  home: string;
  /** The number that stood on the key, rounded to the tape; a length in 1/8000 mm. */
  shown: number;
  /** The same before it was rounded. */
  plan: number;
  /** The graduation of the tape it was made with, in 1/8000 mm; 0 of a count. */
  tape: number;
  /** The number of the calculation's rules then. */
  rule: number;
  /** What the calculation read then, in a few letters; empty where it isn't known. */
  read: string;
  /** In ms since 1970. */
  when: number;
  /** Where it is measured otherwise than shown. */
  measured?: number;
  mark?: FactMark;
}

/**
 * Among the facts, a step that was made before the app knew: that it is made is known, its number
 * isn't. Whoever needs that takes the plan.
 */
export interface MadeBefore {
  home: string;
  before: true;
  /** When it was said, in ms since 1970. */
  when: number;
}

/** What the maker wants remembered; at least one of the two. */
export interface Note {
  text?: string;
  /** Under which the store has it, beside the garment. */
  photo?: string;
}

/** A row of marks as points, each a rank and a place in 1/8000 mm, with even marks between them. */
export interface Points {
  count: number;
  points: readonly (readonly [rank: number, place: number])[];
}

/** What a row keeps from its first made mark on, as long as the fields that decide its count hold these. */
export interface Begun extends Points {
  by: Readonly<Record<string, unknown>>;
}

/** What the maker said about a row or a number that is made otherwise than asked. */
export interface Decision {
  /** `as-begun`, `spread`, `asked`, `count:n` or `noted`; another is a newer one, and decides nothing. */
  way: string;
  /** The facts it answered. */
  facts: readonly string[];
  /** What was asked when it was taken. */
  asked: number | Points;
  /** How far what is asked may go from that. */
  tolerance: number;
  /** How far off the maker lets what is made be. */
  allow?: number;
}
