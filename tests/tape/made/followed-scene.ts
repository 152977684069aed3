import type { RowFrame } from '../../../src/tape/frame/frame.ts';
import { centred } from '../../../src/tape/picture/space.ts';
import type { RowPitch } from '../../../src/tape/pitch/pitch-spectrum.ts';
import { densityAt, graduationAt } from '../../../src/tape/pitch/position.ts';
import { rowFrame, toFrame } from './plain-places.ts';
import { placeOf, type Scene } from './stroke-scene.ts';

/** A frame along the middle of the drawn strokes, with square ones: as a row finder leaves it. */
export function plainFrame(scene: Scene): RowFrame<never> {
  const middle = scene.strokeLength / 2;
  const [x, y] = placeOf(scene, 0, middle);
  const [x1, y1] = placeOf(scene, 1, middle);
  return rowFrame([x, y], Math.atan2(y1 - y, x1 - x));
}

/** Whole mm of the tape whose strokes lie in the picture with room around. */
export function millimetresSeen(scene: Scene, across = scene.strokeLength / 2): number[] {
  return Array.from({ length: 401 }, (_, i) => i - 200).filter((mm) => {
    const [x, y] = placeOf(scene, mm, across);
    const inside = x > 25 && y > 25 && x < scene.width - 25 && y < scene.height - 25;
    return inside && Math.abs(mm) <= (scene.reach ?? 1e3);
  });
}

/**
 * How far the graduations found stand from the ones drawn (px, the worst), and which whole number
 * of them the two scales differ by.
 */
export function misread(
  scene: Scene,
  frame: RowFrame,
  pitch: RowPitch,
  millimetres = millimetresSeen(scene),
  across = scene.strokeLength / 2,
): { worst: number; offsets: number[] } {
  const offsets = new Set<number>();
  let worst = 0;
  for (const mm of millimetres) {
    const [u] = toFrame(frame, ...placeOf(scene, mm, across));
    const off = graduationAt(pitch.model, centred(u - pitch.centre)) - mm;
    offsets.add(Math.round(off));
    const px = Math.abs(off - Math.round(off)) / densityAt(pitch.model, centred(u - pitch.centre));
    worst = Math.max(worst, px);
  }
  return { worst, offsets: [...offsets] };
}
