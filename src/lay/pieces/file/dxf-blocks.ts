import { type DxfRecord, numberOf, textOf } from './dxf-records.ts';
import { type Matrix, SAME, times } from './svg-transform.ts';

/** Where the parts of a block are put. */
export interface BlockPlace {
  matrix: Matrix;
  /** The most a length of the block grows by. */
  grows: number;
  /** Blocks around it. */
  depth: number;
  /** The same for no other place. */
  key: string;
  /** What a part of a layer is called. */
  named(layer: string): string;
}

export const ON_SHEET: BlockPlace = {
  ...{ matrix: SAME, grows: 1, depth: 0, key: '' },
  named: (layer) => layer,
};

interface Block {
  base: readonly [x: number, y: number];
  records: DxfRecord[];
}

/** A part in the plane of the sheet, or on its back (−1); undefined where it is turned in space. */
export function sideOf(record: DxfRecord): 1 | -1 | undefined {
  const [x, y, z] = [numberOf(record, 210), numberOf(record, 220), numberOf(record, 230, 1)];
  if (x !== 0 || y !== 0 || !(z !== 0)) return undefined;
  return z > 0 ? 1 : -1;
}

/** Names of blocks are the same in large and small letters. */
const keyOf = (record: DxfRecord) => textOf(record, 2).toUpperCase();

/** The blocks of a file, by their names: drawings that are put on its sheet by inserts. */
export class DxfBlocks {
  readonly #all = new Map<string, Block>();
  #open: Block | undefined;

  /** Takes the next part of the section of blocks. */
  take(record: DxfRecord): void {
    if (record.type === 'BLOCK') {
      this.#open = { base: [numberOf(record, 10), numberOf(record, 20)], records: [] };
      this.#all.set(keyOf(record), this.#open);
    } else if (record.type === 'ENDBLK') {
      this.#open = undefined;
    } else {
      this.#open?.records.push(record);
    }
  }

  /**
   * What an insert draws, and where; undefined where that isn't known here: a block that isn't in the file,
   * one that is put in rows and columns, or turned in space.
   * @param count makes the key of its place
   */
  put(
    record: DxfRecord,
    around: BlockPlace,
    count: number,
  ): { records: readonly DxfRecord[]; place: BlockPlace } | 'no-number' | undefined {
    const name = textOf(record, 2);
    const block = this.#all.get(keyOf(record));
    const side = sideOf(record);
    const many = numberOf(record, 70, 1) > 1 || numberOf(record, 71, 1) > 1;
    if (!block || !side || many) return undefined;
    const own = placing(record, block, side);
    if (!own.every(Number.isFinite)) return 'no-number';
    const matrix = times(around.matrix, own);
    const [a, b, c, d] = matrix;
    const place: BlockPlace = {
      matrix,
      grows: Math.max(Math.hypot(a, b), Math.hypot(c, d)),
      depth: around.depth + 1,
      key: `${around.key}${name} ${count} `,
      // What lies on layer 0 of a block is of whatever layer the block is on.
      named: (layer) => (layer === '0' || layer === '' ? name : `${name} · ${layer}`),
    };
    return { records: block.records, place };
  }
}

/** First from its base, then larger, then turned, then where it is put. */
function placing(record: DxfRecord, { base }: Block, side: 1 | -1): Matrix {
  const [wide, high] = [numberOf(record, 41, 1), numberOf(record, 42, 1)];
  const turn = (numberOf(record, 50) * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const put: Matrix = [
    ...([cos * wide, sin * wide, -sin * high, cos * high] as const),
    ...([numberOf(record, 10), numberOf(record, 20)] as const),
  ];
  const from: Matrix = [1, 0, 0, 1, -base[0], -base[1]];
  return times([side, 0, 0, 1, 0, 0], times(put, from));
}
