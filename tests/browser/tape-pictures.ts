import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { toPng } from '../tapes/picture-files.ts';
import { type Scene, type SceneKind, scene } from '../tapes/scene.ts';

/** A drawn photo of a tape with what is true of it, as a phone would hand it over. */
export function photoOf(kind: SceneKind, seed: number) {
  const drawn = scene(kind, seed);
  const buffer = Buffer.from(toPng(drawn));
  return { drawn, file: { name: 'photo.png', mimeType: 'image/png', buffer } };
}

const CAMERA = { width: 1280, height: 720 };

/**
 * What a camera sees that is held still over a place of a scene, as a file the browser takes for
 * one: YUV4MPEG2, three frames of 4:2:0 without colour.
 */
export function cameraAt({ width, height, pixels }: Scene, at: { x: number; y: number }): string {
  const luma = Buffer.alloc(CAMERA.width * CAMERA.height, 128);
  const left = Math.round(at.x - (CAMERA.width - 1) / 2);
  const top = Math.round(at.y - (CAMERA.height - 1) / 2);
  for (let y = 0; y < CAMERA.height; y++) {
    for (let x = 0; x < CAMERA.width; x++) {
      // What lies beyond the scene is as its edge.
      const row = Math.min(height - 1, Math.max(0, top + y));
      const column = Math.min(width - 1, Math.max(0, left + x));
      luma[y * CAMERA.width + x] = pixels[row * width + column] ?? 128;
    }
  }
  const colour = Buffer.alloc(luma.length / 2, 128);
  const frame = [Buffer.from('FRAME\n'), luma, colour];
  const head = `YUV4MPEG2 W${CAMERA.width} H${CAMERA.height} F10:1 Ip A1:1 C420jpeg\n`;
  const file = join(mkdtempSync(join(tmpdir(), 'thumbrule-camera-')), 'camera.y4m');
  writeFileSync(file, Buffer.concat([Buffer.from(head), ...frame, ...frame, ...frame]));
  return file;
}
