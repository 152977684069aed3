import type { Camera } from './camera.ts';
import { canvasOf } from './canvas.ts';
import { drawGround } from './draw-ground.ts';
import { drawHider } from './draw-hider.ts';
import { drawTape } from './draw-tape.ts';
import { groundOf } from './ground.ts';
import { throughLens } from './lens.ts';
import { lightUp } from './light.ts';
import { benchGrid } from './map-grid.ts';
import type { Random } from './random.ts';
import type { SceneSpec } from './scene-spec.ts';
import { developed } from './sensor.ts';
import { softNoise } from './soft-noise.ts';
import type { TapeBody } from './tape-body.ts';

const GRAIN = 256;

/** The picture's grey pixels, row after row. */
export function render(
  spec: SceneSpec,
  camera: Camera,
  bodies: readonly TapeBody[],
  random: Random,
): Uint8Array {
  const { width, height, focal, distance } = spec.camera;
  const perMm = focal / distance;
  const canvas = canvasOf(width, height);
  const bench = benchGrid(camera);
  drawGround(canvas, bench, groundOf(spec.ground, perMm, random));
  const grain = {
    size: GRAIN,
    fine: softNoise(random, GRAIN, 1),
    patches: softNoise(random, GRAIN, 4),
  };
  for (const body of bodies) drawTape(canvas, bench, body, perMm * 1.15, grain);
  for (const hider of spec.hiders) drawHider(canvas, bench, hider, grain);
  lightUp(canvas, spec.light);
  throughLens(canvas, spec.lens);
  return developed(canvas, spec.sensor, random);
}
