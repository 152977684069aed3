/** The stages of the work, in order. */
export const STAGES = ['measure', 'cut', 'join', 'turn-up', 'close', 'edge'] as const;

export type Stage = (typeof STAGES)[number];

/** A calculation kept on a garment. */
export interface Kept {
  id: string;
  name: string;
  stage: Stage;
  /** Which calculation it is. */
  calculation: string;
  /** What was typed, as typed; what was measured of its marks is in it, too. */
  draft: Readonly<Record<string, string>>;
  /** Where its marks were planned, by label, in 1/8000 mm: kept beside what was made. */
  planned: Readonly<Record<string, number>>;
}

/** A garment and what is kept on it. */
export interface Garment {
  version: 1;
  id: string;
  name: string;
  /** Made up to show the app with: no one's measures. */
  invented: boolean;
  kept: readonly Kept[];
  /** When it was last changed, in ms since 1970. */
  changed: number;
}

/** The longest name, and the most that is kept on one garment. */
export const LONGEST_NAME = 80;
export const MOST_KEPT = 500;

/** A garment with nothing on it yet. A name of nothing but spaces is the caller's to refuse. */
export function newGarment(id: string, name: string, changed: number): Garment {
  return { version: 1, id, name: shortened(name), invented: false, kept: [], changed };
}

export function renamed(garment: Garment, name: string, changed: number): Garment {
  return { ...garment, name: shortened(name), changed };
}

/** The same under another name, as a garment of its own. */
export function copied(garment: Garment, id: string, name: string, changed: number): Garment {
  return { ...garment, id, name: shortened(name), changed };
}

/** With a calculation kept on it: in place of the one with the same id, or as the last. */
export function withKept(garment: Garment, kept: Kept, changed: number): Garment {
  const there = garment.kept.some(({ id }) => id === kept.id);
  const all = there
    ? garment.kept.map((old) => (old.id === kept.id ? kept : old))
    : [...garment.kept, kept];
  if (all.length > MOST_KEPT) {
    throw new RangeError(`a garment keeps at most ${MOST_KEPT} calculations, not ${all.length}`);
  }
  return { ...garment, kept: all, changed };
}

export function withoutKept(garment: Garment, id: string, changed: number): Garment {
  return { ...garment, kept: garment.kept.filter((kept) => kept.id !== id), changed };
}

/** What is kept, in the order of the work; within a stage as it was kept. */
export function inOrder(garment: Garment): Kept[] {
  return STAGES.flatMap((stage) => garment.kept.filter((kept) => kept.stage === stage));
}

function shortened(name: string): string {
  return name.trim().slice(0, LONGEST_NAME);
}
