import { toPng } from '../tapes/picture-files.ts';
import { type SceneKind, scene } from '../tapes/scene.ts';

/** A drawn photo of a tape with what is true of it, as a phone would hand it over. */
export function photoOf(kind: SceneKind, seed: number) {
  const drawn = scene(kind, seed);
  const buffer = Buffer.from(toPng(drawn));
  return { drawn, file: { name: 'photo.png', mimeType: 'image/png', buffer } };
}
