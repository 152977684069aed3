import type { Fault } from '../../calculation/calculation.ts';
import type { Given, Values } from '../../calculation/output.ts';
import type { FieldRead } from '../../calculation/schema.ts';
import type { Problem } from '../../sewing/problem.ts';

export type Value = Values[keyof Values];

/** What a number would be at both ends of a reading; null where it is impossible there. */
export type Pair = readonly [Value | null, Value | null];

/** By reading. */
export type Ends = Readonly<Record<string, Pair>>;

type ReadingFault = Exclude<Extract<FieldRead, { ok: false }>['fault'], 'unknown option'>;

/** Why a link leads to nothing. */
export type Gone =
  | { why: 'gone' | 'taken off' | 'newer' | 'no such side' | 'awaited' | 'missing' }
  /** An option took it away: the field it is chosen in. */
  | { why: 'absent'; by: string };

/** Why there is no number. Fields are those of the number's own work; parts count from 0. */
export type Trouble =
  | { kind: 'not given'; field: string }
  | { kind: 'damaged'; field: string }
  | { kind: 'reading'; field: string; part: number; fault: ReadingFault }
  /** A count where a length belongs, a run within a sum, a total of what doesn't add up. */
  | { kind: 'kinds'; field: string; part: number }
  | { kind: 'too many links'; field: string }
  /** Taken away by the number in this field of its own work, as a turn of nothing does its press. */
  | { kind: 'absent'; field: string }
  /** Read further where it is worked out, as the steps of a lacing are, and not understood. */
  | { kind: 'unread'; faults: readonly Fault[] }
  | { kind: 'impossible'; problems: readonly Problem[] }
  /** Larger than a fact can hold. */
  | { kind: 'too large' }
  /** More marks than a row may have. */
  | { kind: 'too many marks' }
  | { kind: 'sides differ'; field: string; part: number }
  /** For the number with this key; the root is what keeps that one waiting. */
  | { kind: 'waits'; field: string; for: string; root: string; gone?: Gone }
  /** The shortest way round through itself, by keys. */
  | { kind: 'circle'; path: readonly string[] }
  | { kind: 'undecided' }
  /** A mistake in the calculation itself. */
  | { kind: 'broken'; message: string };

/** Made before the app knew: it is made, and its number is the plan's. */
export type State = 'planned' | 'partly made' | 'made' | 'made before';

export interface Here {
  ok: true;
  value: Value;
  ends: Ends;
  state: State;
  /** A decision is open somewhere behind it. */
  undecided?: true;
  /** Of a row: the fact of each mark that is made, by rank. */
  made?: readonly (string | undefined)[];
  /** Of a row that is asked for: what its calculation was given. */
  given?: Given;
}

export interface Nothing {
  ok: false;
  trouble: Trouble;
}

/** What a row says of itself, beside its result. */
export interface RowSaid {
  conflict: readonly string[];
  fewer: boolean;
}

export type Result = (Here | Nothing) & { row?: RowSaid };

export function nothing(trouble: Trouble): Nothing {
  return { ok: false, trouble };
}
