// npm run readings     SCENES=84 SEED=1 PHOTOS=folder OUT=file
import { createHash } from 'node:crypto';
import { appendFileSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TapeUnit } from '../../src/tape/graduations/tape-unit.ts';
import { follow, lockOn } from '../../src/tape/live/live.ts';
import type { GreyImage } from '../../src/tape/picture/grey-image.ts';
import type { Point } from '../../src/tape/picture/place.ts';
import { readTape } from '../../src/tape/reader/read-tape.ts';
import { readingAt } from '../../src/tape/scales/read-at.ts';
import { snapTo } from '../../src/tape/touch/snap.ts';
import { scaleByTouch } from '../../src/tape/touch/touch.ts';
import { nodeEngine } from '../tapes/node-engine.ts';
import { greyOfFile } from '../tapes/photo-file.ts';
import { type Scene, sceneList } from '../tapes/scene.ts';

const { SCENES = '84', SEED = '1', PHOTOS, OUT = join(tmpdir(), 'readings.jsonl') } = process.env;

/** Places looked at in a picture with no known ones: so many along and down. */
const GRID = 12;
/** Px to the right and down by which the next frame of a live picture is off. */
const SWAY: readonly (readonly [number, number])[] = [
  [3, -2],
  [9, 4],
];

const engine = await nodeEngine();
const whole = createHash('sha256');
rmSync(OUT, { force: true });
for (const { kind, seed, make } of sceneList(Number(SCENES), Number(SEED))) {
  const scene = make();
  await keep(`${kind} ${seed}`, scene, placesOf(scene), touchesOf(scene));
}
for (const file of PHOTOS ? readdirSync(PHOTOS).sort() : []) {
  if (!/\.(jpe?g|png)$/i.test(file)) continue;
  await keep(file, await greyOfFile(join(PHOTOS as string, file)), [], []);
}
console.log(`${whole.digest('hex')}  all of ${OUT}`);
await engine.close();

/** Everything the reader says of a picture, as one line of JSON whose keys are in order. */
async function keep(
  name: string,
  image: GreyImage,
  places: readonly Point[],
  touches: readonly Touched[],
): Promise<void> {
  const grid = gridOver(image);
  const looked = [...places, ...grid];
  const reading = await readTape(image, engine.readPage);
  const lock = lockOn(reading, image);
  const line = stable({
    name,
    reading,
    at: looked.map(({ x, y }) => readingAt(reading, { x, y })),
    snapped: looked.map(({ x, y }) => snapTo(image, { x, y })),
    touched: touches.length > 1 ? scaleByTouch(image, touches) : undefined,
    followed: lock && SWAY.map(([x, y]) => follow(lock, shifted(image, x, y))?.reading),
  });
  whole.update(`${line}\n`);
  appendFileSync(OUT, `${line}\n`);
  console.log(`${createHash('sha256').update(line).digest('hex').slice(0, 16)}  ${name}`);
}

interface Touched extends Point {
  readonly value: number;
  readonly unit: TapeUnit;
}

/** Scenes count from the corner of the first pixel, the reader from its middle. */
function placesOf({ points }: Scene): Point[] {
  return points.map(({ x, y }) => ({ x: x - 0.5, y: y - 0.5 }));
}

/** The first and last place on the first scale, as if they had been touched. */
function touchesOf({ points }: Scene): Touched[] {
  const scale = points[0]?.scale;
  const on = points.filter((point) => point.onScale && point.scale === scale);
  return [on[0], on.at(-1)].flatMap((point) =>
    point ? [{ x: point.x - 0.5, y: point.y - 0.5, value: point.mm, unit: 'mm' as const }] : [],
  );
}

function gridOver({ width, height }: GreyImage): Point[] {
  return Array.from({ length: GRID * GRID }, (_, i) => ({
    x: Math.round(((i % GRID) + 0.5) * (width / GRID)),
    y: Math.round((Math.floor(i / GRID) + 0.5) * (height / GRID)),
  }));
}

/** The picture seen a little farther on; what comes in at the border is what was there. */
function shifted({ width, height, pixels }: GreyImage, right: number, down: number): GreyImage {
  const moved = pixels.map((_, i) => {
    const x = Math.min(width - 1, Math.max(0, (i % width) + right));
    const y = Math.min(height - 1, Math.max(0, Math.floor(i / width) + down));
    return pixels[y * width + x] as number;
  });
  return { width, height, pixels: moved };
}

/** JSON that doesn't depend on the order in which an object's keys were written. */
function stable(value: unknown): string {
  return JSON.stringify(value, (_, one: unknown) => {
    if (typeof one === 'number' && !Number.isFinite(one)) return String(one);
    if (one instanceof Set) return [...one].sort();
    if (ArrayBuffer.isView(one)) return Array.from(one as Float32Array);
    if (one === null || typeof one !== 'object' || Array.isArray(one)) return one;
    return Object.fromEntries(Object.entries(one).sort(([a], [b]) => (a < b ? -1 : 1)));
  });
}
