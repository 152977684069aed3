import { runsOfFirst } from './first-version.ts';
import {
  type Garment,
  type Kept,
  type KeptRun,
  LONGEST_NAME,
  MOST_KEPT,
  STAGES,
} from './garment.ts';

/** A part of a record, by name: what it is called is for `src/words`. */
export type RecordPart =
  | 'id'
  | 'name'
  | 'invented'
  | 'changed'
  | 'edits'
  | 'kept'
  | 'taken-off'
  | 'quantities'
  | 'works'
  | 'facts'
  | 'begun'
  | 'decisions'
  | 'passed'
  | 'notes'
  | 'materials'
  | 'lays';

/** Why something that was read is no garment. */
export type Damage =
  | { kind: 'not-a-garment' }
  /** Written by a newer version of the app. */
  | { kind: 'newer'; version: number }
  /** A part of it is missing or of another kind; of a list, what stands at this place, from 1. */
  | { kind: 'damaged'; part: RecordPart; place?: number };

export type Checked<Value> = { ok: true; value: Value } | { ok: false; damage: Damage };

/** The longest text typed into one field, and the most fields and marks of one calculation. */
const LONGEST_TEXT = 20_000;
const MOST_FIELDS = 100;
const MOST_MARKS = 2000;
const MOST_RUNS = 100;

/** The version of a record that is written; those before it are read. */
const VERSION = 2;

/**
 * Takes only what is a garment in every part, and of it only what is known: what
 * a file or a store holds is anyone's. A record of the first version becomes one of this.
 */
export function checkGarment(read: unknown): Checked<Garment> {
  if (!isRecord(read)) return { ok: false, damage: { kind: 'not-a-garment' } };
  const { version, id, name, invented, changed } = read;
  if (typeof version === 'number' && version > VERSION) {
    return { ok: false, damage: { kind: 'newer', version } };
  }
  if (version !== 1 && version !== VERSION) {
    return { ok: false, damage: { kind: 'not-a-garment' } };
  }
  if (!isName(id)) return damaged('id');
  if (!isName(name)) return damaged('name');
  if (typeof invented !== 'boolean') return damaged('invented');
  if (!isNumber(changed)) return damaged('changed');
  const kept = checkAll(read.kept, version, 'kept');
  if (!kept.ok) return kept;
  if (new Set(kept.value.map((one) => one.id)).size < kept.value.length) return damaged('kept');
  const takenOff = checkAll(version === 1 ? [] : read.takenOff, version, 'taken-off');
  if (!takenOff.ok) return takenOff;
  // The first version did not count: what it holds may be in no backup yet.
  const edits = version === 1 ? Number(!invented) : read.edits;
  if (!isNumber(edits) || edits < 0) return damaged('edits');
  const parts = { id, name, invented, kept: kept.value, takenOff: takenOff.value, changed, edits };
  return { ok: true, value: { version: VERSION, ...parts } };
}

function checkAll(read: unknown, version: number, part: RecordPart): Checked<readonly Kept[]> {
  if (!Array.isArray(read) || read.length > MOST_KEPT) return damaged(part);
  const all: Kept[] = [];
  for (const [i, one] of read.entries()) {
    const checked = checkKept(one, version);
    if (!checked) return damaged(part, i + 1);
    all.push(checked);
  }
  return { ok: true, value: all };
}

function checkKept(read: unknown, version: number): Kept | undefined {
  if (!isRecord(read)) return undefined;
  const { id, name, stage, calculation } = read;
  const knownStage = STAGES.find((known) => known === stage);
  if (!isName(id) || !isName(name) || !isName(calculation) || !knownStage) return undefined;
  const typed = entriesOf(read.draft, MOST_FIELDS, isText);
  if (!typed) return undefined;
  const draft = Object.fromEntries(typed);
  const runs = version === 1 ? firstRuns(draft, read.planned) : checkRuns(read.runs);
  if (!runs) return undefined;
  if (version === 1) delete draft.made; // it is in the runs now
  return { id, name, stage: knownStage, calculation, draft, runs };
}

function firstRuns(
  draft: Readonly<Record<string, string>>,
  read: unknown,
): readonly KeptRun[] | undefined {
  const planned = entriesOf(read, MOST_MARKS, isNumber);
  return planned && runsOfFirst(draft, Object.fromEntries(planned));
}

function checkRuns(read: unknown): readonly KeptRun[] | undefined {
  if (!Array.isArray(read) || read.length > MOST_RUNS) return undefined;
  const runs: KeptRun[] = [];
  for (const run of read) {
    if (!isRecord(run)) return undefined;
    const planned = entriesOf(run.planned, MOST_MARKS, isNumber);
    const made = entriesOf(run.made, MOST_MARKS, isText);
    if (!planned || !made) return undefined;
    runs.push({ planned: Object.fromEntries(planned), made: Object.fromEntries(made) });
  }
  return runs;
}

/** The entries of a record when all are of a kind and not too many. */
function entriesOf<Value>(
  read: unknown,
  most: number,
  isOne: (value: unknown) => value is Value,
): [string, Value][] | undefined {
  if (!isRecord(read)) return undefined;
  const entries = Object.entries(read);
  if (entries.length > most) return undefined;
  const good: [string, Value][] = [];
  for (const [key, value] of entries) {
    if (key === '__proto__' || !isName(key) || !isOne(value)) return undefined;
    good.push([key, value]);
  }
  return good;
}

function isRecord(read: unknown): read is Record<string, unknown> {
  return typeof read === 'object' && read !== null && !Array.isArray(read);
}

/** A name, or an id: not empty, and not too long. */
export function isName(read: unknown): read is string {
  return typeof read === 'string' && read.trim() !== '' && read.length <= LONGEST_NAME;
}

function isText(read: unknown): read is string {
  return typeof read === 'string' && read.length <= LONGEST_TEXT;
}

/** A number that JSON can hold: a place, a time or a count. */
export function isNumber(read: unknown): read is number {
  return Number.isFinite(read);
}

function damaged(part: RecordPart, place?: number): { ok: false; damage: Damage } {
  return { ok: false, damage: { kind: 'damaged', part, ...(place !== undefined && { place }) } };
}
