import type { Change } from '../garment/actions/state.ts';
import { isObject } from '../garment/record/sound-values.ts';

/** Under what the log of a record is kept: this, and the key of the record. */
export const LOG = 'log:';

/** Reads a log from whatever was kept: what is no change of a garment can't be taken back. */
export function readLog(kept: unknown): readonly Change[] {
  return Array.isArray(kept) && kept.every(isChange) ? kept : [];
}

function isChange(read: unknown): read is Change {
  if (!isObject(read)) return false;
  const { id, what, edits, press } = read;
  const named = Number.isInteger(id) && typeof what === 'string' && typeof press === 'boolean';
  return named && Array.isArray(edits) && edits.every(isEdit);
}

function isEdit(read: unknown): boolean {
  if (!isObject(read) || !Array.isArray(read.slot) || read.slot.length < 2) return false;
  return read.slot.every((key) => typeof key === 'string' && key !== '__proto__');
}
