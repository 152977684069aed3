import { CELL_HEIGHT, CELL_WIDTH } from '../../../src/tape/digits/limits.ts';
import type { LabelledCell } from './cells.ts';

/** Samples are kept as bytes, this many to 1: a million cells fit into memory. */
const PARTS = 90;
const SIZE = CELL_WIDTH * CELL_HEIGHT;

/** Room for many cells with their labels, which threads share. */
export interface Shelf {
  readonly count: number;
  /** In parts, cell after cell. */
  readonly samples: Int8Array<SharedArrayBuffer>;
  readonly labels: Uint8Array<SharedArrayBuffer>;
}

export function emptyShelf(count: number): Shelf {
  return {
    count,
    samples: new Int8Array(new SharedArrayBuffer(count * SIZE)),
    labels: new Uint8Array(new SharedArrayBuffer(count)),
  };
}

export function putCell({ samples, labels }: Shelf, at: number, one: Omit<LabelledCell, 'view'>) {
  for (let i = 0; i < SIZE; i++)
    samples[at * SIZE + i] = Math.round((one.cell[i] as number) * PARTS);
  labels[at] = one.label;
}

/** A cell of the shelf, into `cell`; gives its label. */
export function fetchCell({ samples, labels }: Shelf, at: number, cell: Float32Array): number {
  for (let i = 0; i < SIZE; i++) cell[i] = (samples[at * SIZE + i] as number) / PARTS;
  return labels[at] as number;
}
