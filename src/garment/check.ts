import { type Garment, type Kept, LONGEST_NAME, MOST_KEPT, STAGES } from './garment.ts';

/** Why something that was read is no garment. */
export type Damage =
  | { kind: 'not-a-garment' }
  /** Written by a newer version of the app. */
  | { kind: 'newer'; version: number }
  /** A part of it is missing or of another kind. */
  | { kind: 'damaged'; part: string };

export type Checked<Value> = { ok: true; value: Value } | { ok: false; damage: Damage };

/** The longest text typed into one field, and the most fields and marks of one calculation. */
const LONGEST_TEXT = 20_000;
const MOST_FIELDS = 100;
const MOST_MARKS = 2000;

/**
 * Takes only what is a garment in every part, and of it only what is known: what
 * a file or a store holds is anyone's.
 */
export function checkGarment(read: unknown): Checked<Garment> {
  if (!isRecord(read)) return { ok: false, damage: { kind: 'not-a-garment' } };
  const { version, id, name, invented, kept, changed } = read;
  if (typeof version === 'number' && version > 1) {
    return { ok: false, damage: { kind: 'newer', version } };
  }
  if (version !== 1) return { ok: false, damage: { kind: 'not-a-garment' } };
  if (!isName(id)) return damaged('id');
  if (!isName(name)) return damaged('name');
  if (typeof invented !== 'boolean') return damaged('invented');
  if (typeof changed !== 'number' || !Number.isFinite(changed)) return damaged('changed');
  if (!Array.isArray(kept) || kept.length > MOST_KEPT) return damaged('kept');
  const all: Kept[] = [];
  for (const [i, one] of kept.entries()) {
    const checked = checkKept(one);
    if (!checked) return damaged(`kept ${i + 1}`);
    all.push(checked);
  }
  if (new Set(all.map((one) => one.id)).size < all.length) return damaged('kept');
  return { ok: true, value: { version: 1, id, name, invented, kept: all, changed } };
}

function checkKept(read: unknown): Kept | undefined {
  if (!isRecord(read)) return undefined;
  const { id, name, stage, calculation, draft, planned } = read;
  const knownStage = STAGES.find((known) => known === stage);
  if (!isName(id) || !isName(name) || !isName(calculation) || !knownStage) return undefined;
  const typed = entriesOf(draft, MOST_FIELDS, isText);
  const marks = entriesOf(planned, MOST_MARKS, isPlace);
  if (!typed || !marks) return undefined;
  return {
    id,
    name,
    stage: knownStage,
    calculation,
    draft: Object.fromEntries(typed),
    planned: Object.fromEntries(marks),
  };
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

function isName(read: unknown): read is string {
  return typeof read === 'string' && read.trim() !== '' && read.length <= LONGEST_NAME;
}

function isText(read: unknown): read is string {
  return typeof read === 'string' && read.length <= LONGEST_TEXT;
}

function isPlace(read: unknown): read is number {
  return typeof read === 'number' && Number.isFinite(read);
}

function damaged(part: string): { ok: false; damage: Damage } {
  return { ok: false, damage: { kind: 'damaged', part } };
}
