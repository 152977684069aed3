import { type Checked, checkGarment, isName, isNumber, type RecordPart } from '../check.ts';
import { fromSecond } from './from-second.ts';
import type { Garment, Kept } from './record.ts';
import { isObject } from './sound-values.ts';

const MAPS = ['quantities', 'works', 'facts', 'begun', 'decisions'] as const;

/** What a garment may have from a later build on. */
const LATER = ['passed', 'notes', 'materials', 'lays'] as const;

/**
 * Reads a garment of any version from anything. Of version 3 only what holds it together is
 * checked here: all else stays as it was written, known or not, and `soundOf` says what of it
 * can be worked with. A record of an older version becomes one of this; none is changed. One beyond
 * the limits (`overLimit`) is read all the same: what was kept once is never lost, it only can't grow.
 */
export function readRecord(read: unknown): Checked<Garment> {
  if (!isObject(read)) return { ok: false, damage: { kind: 'not-a-garment' } };
  if (read.version === 3) return third(read);
  const older = checkGarment(read);
  return older.ok ? { ok: true, value: fromSecond(older.value) } : older;
}

function third(read: Readonly<Record<string, unknown>>): Checked<Garment> {
  const damaged = (part: RecordPart) => ({ ok: false, damage: { kind: 'damaged', part } }) as const;
  const { id, name, invented, changed, edits } = read;
  if (!isName(id)) return damaged('id');
  if (!isName(name)) return damaged('name');
  if (typeof invented !== 'boolean') return damaged('invented');
  if (!isNumber(changed)) return damaged('changed');
  if (!isNumber(edits) || edits < 0) return damaged('edits');
  const maps: Partial<Record<(typeof MAPS)[number], Kept>> = {};
  for (const part of MAPS) {
    const map = read[part] ?? {};
    if (!isObject(map) || Object.hasOwn(map, '__proto__')) return damaged(part);
    maps[part] = map;
  }
  for (const part of LATER) {
    const map = read[part] ?? {};
    if (!isObject(map) || Object.hasOwn(map, '__proto__')) return damaged(part);
  }
  const known = { version: 3, id, name, invented, changed, edits } as const;
  return { ok: true, value: { ...read, ...known, ...(maps as Required<typeof maps>) } };
}
