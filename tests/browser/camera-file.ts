import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { GreyImage } from '../../src/tape/picture/grey-image.ts';
import type { Scene } from '../tapes/scene.ts';

/** What the camera sees of a scene, in its px. */
const CAMERA = { width: 1280, height: 720 };

/** Every frame tells its number by so many squares of colour along its upper edge, from the left. */
export const CODE = { bits: 8, side: 16 };

interface Place {
  readonly x: number;
  readonly y: number;
}

/**
 * What a camera sees whose middle goes from place to place over a scene, as a file the browser
 * takes for one and plays over and over: YUV4MPEG2, 4:2:0. Grey but for the numbers of its
 * frames, which leave the grey as it is.
 *
 * @param places a frame each, at most 256; scenes count from the corner of their first pixel
 */
export function cameraOver(scene: Scene, places: readonly Place[], perSecond: number): string {
  if (places.length > 2 ** CODE.bits) throw new Error(`too many frames: ${places.length}`);
  const { width, height } = CAMERA;
  const head = `YUV4MPEG2 W${width} H${height} F${perSecond}:1 Ip A1:1 C420jpeg\n`;
  const frames = places.flatMap((place, number) => [
    Buffer.from('FRAME\n'),
    frameAround(scene, place).pixels,
    ...colourOf(number),
  ]);
  const file = join(mkdtempSync(join(tmpdir(), 'thumbrule-camera-')), 'camera.y4m');
  writeFileSync(file, Buffer.concat([Buffer.from(head), ...frames]));
  return file;
}

/** The part of the scene around a place, between its pixels where it lies so. */
export function frameAround({ width, height, pixels }: Scene, at: Place): GreyImage {
  const luma = new Uint8Array(CAMERA.width * CAMERA.height);
  const [left, top] = [at.x - CAMERA.width / 2, at.y - CAMERA.height / 2];
  const [right, down] = [left - Math.floor(left), top - Math.floor(top)];
  // What lies beyond the scene is as its edge.
  const grey = (x: number, y: number) => {
    const row = Math.min(height - 1, Math.max(0, y));
    return pixels[row * width + Math.min(width - 1, Math.max(0, x))] as number;
  };
  for (let y = 0; y < CAMERA.height; y++) {
    for (let x = 0; x < CAMERA.width; x++) {
      const [column, row] = [Math.floor(left) + x, Math.floor(top) + y];
      const upper = (1 - right) * grey(column, row) + right * grey(column + 1, row);
      const lower = (1 - right) * grey(column, row + 1) + right * grey(column + 1, row + 1);
      luma[y * CAMERA.width + x] = Math.round((1 - down) * upper + down * lower);
    }
  }
  return { ...CAMERA, pixels: luma };
}

/** Both planes of colour, of half the size: squares more blue than red are ones. */
function colourOf(number: number): [blue: Buffer, red: Buffer] {
  const [width, side] = [CAMERA.width / 2, CODE.side / 2];
  const planes: [Buffer, Buffer] = [
    Buffer.alloc((width * CAMERA.height) / 2, 128),
    Buffer.alloc((width * CAMERA.height) / 2, 128),
  ];
  for (let bit = 0; bit < CODE.bits; bit++) {
    const tint = (number >> bit) & 1 ? 40 : -40;
    for (let y = 0; y < side; y++) {
      const from = y * width + bit * side;
      planes[0].fill(128 + tint, from, from + side);
      planes[1].fill(128 - tint, from, from + side);
    }
  }
  return planes;
}
