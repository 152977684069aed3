import { LONGEST_NAME } from '../garment.ts';
import { plainText } from './plain-text.ts';
import type { Garment } from './record.ts';

/** A garment with nothing on it yet. A name of nothing but spaces is the caller's to refuse. */
export function newGarment(id: string, name: string, changed: number): Garment {
  const maps = { quantities: {}, works: {}, facts: {}, begun: {}, decisions: {} };
  return {
    ...{ version: 3, id, name: shortened(name), invented: false, changed, edits: 1 },
    ...maps,
  };
}

/** The same under another name, which is a change like others but can't be taken back. */
export function renamed(garment: Garment, name: string, changed: number): Garment {
  return { ...garment, name: shortened(name), changed, edits: garment.edits + 1 };
}

/** A name as it is kept: without spaces around it or what turns texts round, and not too long. */
export function shortened(name: string): string {
  return plainText(name).trim().slice(0, LONGEST_NAME);
}
