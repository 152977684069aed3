import { deflateSync } from 'node:zlib';
import { crc32 } from './crc32.ts';

interface Grey {
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint8Array;
}

/** A picture as a binary portable grey map (netpbm, "P5"). */
export function toPgm({ width, height, pixels }: Grey): Uint8Array {
  return Buffer.concat([Buffer.from(`P5\n${width} ${height}\n255\n`), pixels]);
}

/** A picture as PNG (W3C, Portable Network Graphics), 8-bit grey without filtering. */
export function toPng({ width, height, pixels }: Grey): Uint8Array {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head[8] = 8;
  const rows = Buffer.alloc((width + 1) * height);
  for (let y = 0; y < height; y++) {
    rows.set(pixels.subarray(y * width, (y + 1) * width), y * (width + 1) + 1);
  }
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const body = deflateSync(rows, { level: 3 });
  return Buffer.concat([
    signature,
    chunk('IHDR', head),
    chunk('IDAT', body),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(name: string, data: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(name), data]);
  const whole = Buffer.alloc(named.length + 8);
  whole.writeUInt32BE(data.length, 0);
  whole.set(named, 4);
  whole.writeUInt32BE(crc32(named), named.length + 4);
  return whole;
}
