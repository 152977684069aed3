import { overLimit, sizeOf } from '../record/limits.ts';
import { plainText } from '../record/plain-text.ts';
import { readRecord } from '../record/read-record.ts';
import type { Garment } from '../record/record.ts';
import { isObject } from '../record/sound-values.ts';
import type { LeftOut } from './shared.ts';

/** A garment that someone handed on, and what was left out of it. */
export interface Handed {
  garment: Garment;
  left: LeftOut;
}

/**
 * Why nothing can be taken from what was handed on.
 * - `newer`: a newer version of the app wrote it.
 * - `damaged`: cut off, or changed on the way.
 * - `too-large`: more than a garment holds.
 * - `cant-unpack`: this browser can't.
 */
export type HandedFault = 'newer' | 'damaged' | 'too-large' | 'cant-unpack';

export type HandedRead = { ok: true; handed: Handed } | { ok: false; fault: HandedFault };

/** Reads what was handed on as a record: anything, and never throws. */
export function readHanded(read: unknown): HandedRead {
  const checked = readRecord(read);
  if (!checked.ok) {
    return { ok: false, fault: checked.damage.kind === 'newer' ? 'newer' : 'damaged' };
  }
  if (overLimit(checked.value, sizeOf(checked.value))) return { ok: false, fault: 'too-large' };
  const { shared, pending: _, ...garment } = checked.value as Garment & { shared?: unknown };
  const name = plainText(garment.name);
  return { ok: true, handed: { garment: { ...garment, name }, left: leftIn(shared) } };
}

/** Whether a record says of itself that it was handed on. */
export function isHanded(garment: Garment): boolean {
  return isObject((garment as { shared?: unknown }).shared);
}

function leftIn(shared: unknown): LeftOut {
  const read: Record<string, unknown> = Object(shared);
  const count = (key: keyof LeftOut) => {
    const value = read[key];
    return Number.isSafeInteger(value) && (value as number) > 0 ? (value as number) : 0;
  };
  return {
    bodies: count('bodies'),
    typed: count('typed'),
    notes: count('notes'),
    photos: count('photos'),
    facts: count('facts'),
  };
}

/** What was handed on as a garment of one's own: under a new id, from now on. */
export function asOwn({ garment }: Handed, id: string, now: number): Garment {
  return { ...garment, id, changed: now, edits: 1 };
}
