import type { Garment } from './garment.ts';

/** What a list shows of a garment. */
export interface Listed extends Pick<Garment, 'id' | 'name' | 'changed' | 'edits'> {
  /** How many calculations are kept on it. */
  count: number;
}

export function listedOf({ id, name, changed, edits, kept }: Garment): Listed {
  return { id, name, changed, edits, count: kept.length };
}
