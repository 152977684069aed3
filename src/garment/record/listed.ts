import type { Garment, Work } from './record.ts';

/** What a list shows of a garment. */
export interface Listed extends Pick<Garment, 'id' | 'name' | 'changed' | 'edits'> {
  /** How many works are on it. */
  works: number;
  /** How much of it is made. */
  facts: number;
}

export function listedOf({ id, name, changed, edits, works, facts }: Garment): Listed {
  const on = Object.values(works).filter((work) => !(work as Partial<Work> | null)?.off);
  return { id, name, changed, edits, works: on.length, facts: Object.keys(facts).length };
}
