import type { Garment, Work } from '../../src/garment/record/record.ts';
import type { Logged } from '../../src/storage/garments.ts';

/** A row of closures as it is kept, with what a test is about. */
export function hooks(set: Partial<Work> = {}): Work {
  const parts = (text: string) => [{ text, unit: 'cm' as const }];
  const fields = { opening: parts('46.3'), count: parts('7') };
  return { name: 'Hooks', calculation: 'closures', rank: 1, fields, ...set };
}

/** A garment with a work put on it, as a change of its own. */
export function withWork(garment: Garment, id: string, changed: number, work = hooks()): Garment {
  const rank = Object.keys(garment.works).length + 1;
  const works = { ...garment.works, [id]: { ...work, rank } };
  return { ...garment, works, changed, edits: garment.edits + 1 };
}

/** A change of a garment that leaves its log as it is. */
export function recording(by: (garment: Garment) => Garment): (now: Logged) => Logged {
  return ({ record, log }) => ({ record: by(record), log });
}
