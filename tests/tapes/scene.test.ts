import { inflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { toPgm, toPng } from './picture-files.ts';
import { aboutKind, kinds, planned, type Scene, scene, sceneList } from './scene.ts';

test('the same kind and seed make the same picture, another seed another', () => {
  const [first, again, other] = [7, 7, 8].map((seed) => scene('webcam tape', seed));
  expect(Buffer.compare(first!.pixels, again!.pixels)).toBe(0);
  expect(again!.points).toEqual(first!.points);
  expect(Buffer.compare(first!.pixels, other!.pixels)).not.toBe(0);
});

test('a list of scenes goes round the kinds', () => {
  const list = sceneList(kinds.length + 2, 5);
  expect(new Set(list.map(({ kind }) => kind)).size).toBe(kinds.length);
  expect(list.at(-1)?.seed).toBe(6);
  for (const kind of kinds) expect(aboutKind(kind)).not.toBe('');
});

test('dark lines lie where truth says, to 0.3 px', () => {
  const seen = scene('cm tape on cloth', 2);
  const scale = seen.truth.scales[0]!;
  const off: number[] = [];
  for (let mm = Math.ceil(scale.visibleFromMm) + 1; mm < scale.visibleToMm - 1; mm += 3) {
    off.push(Math.abs(darkestNear(seen, scale.pointAt, mm)));
  }
  expect(off.length).toBeGreaterThan(60);
  off.sort((a, b) => a - b);
  expect(off[Math.floor(off.length / 2)]).toBeLessThan(0.1);
  expect(off[Math.floor(off.length * 0.95)]).toBeLessThan(0.3);
});

/** How far (px) the middle of the dark across a graduation lies from where it should. */
function darkestNear(seen: Scene, pointAt: (mm: number) => { x: number; y: number }, mm: number) {
  const reach = 0.5;
  const steps = 41;
  const px = Math.hypot(
    pointAt(mm + 0.5).x - pointAt(mm - 0.5).x,
    pointAt(mm + 0.5).y - pointAt(mm - 0.5).y,
  );
  const greys = Array.from({ length: steps }, (_, i) => {
    const { x, y } = pointAt(mm + ((2 * i) / (steps - 1) - 1) * reach);
    return greyAt(seen, x, y);
  });
  const light = Math.max(...greys);
  const sum = greys.reduce((total, grey) => total + (light - grey) ** 2, 0);
  const moment = greys.reduce(
    (total, grey, i) => total + (light - grey) ** 2 * (i - (steps - 1) / 2),
    0,
  );
  return ((moment / sum) * 2 * reach * px) / (steps - 1);
}

/** Between pixels, whose middles lie at halves. */
function greyAt({ width, pixels }: Scene, x: number, y: number): number {
  const [left, top] = [Math.floor(x - 0.5), Math.floor(y - 0.5)];
  const [fx, fy] = [x - 0.5 - left, y - 0.5 - top];
  const at = (dx: number, dy: number) => pixels[(top + dy) * width + left + dx]!;
  return (
    (at(0, 0) * (1 - fx) + at(1, 0) * fx) * (1 - fy) + (at(0, 1) * (1 - fx) + at(1, 1) * fx) * fy
  );
}

test('true points of every kind lie in its picture and on the stretch seen', () => {
  for (const kind of kinds) {
    const { spec, truth, points } = planned(kind, 3);
    const { width, height } = spec.camera;
    if (truth.expect !== 'ask-or-cannot') expect(points.length, kind).toBeGreaterThan(4);
    for (const { x, y, mm, scale, onScale } of points) {
      expect(x > 0 && y > 0 && x < width && y < height, `${kind}: ${x}, ${y}`).toBe(true);
      const from = truth.scales.find(({ id }) => id === scale);
      if (onScale) expect(mm >= from!.visibleFromMm && mm <= from!.visibleToMm, kind).toBe(true);
    }
  }
});

test('what lies there unmarked is asked about as well: a coil may be refused, not misread', () => {
  const { beside, points, bodies } = planned('coiled tape', 1);
  expect(points).toEqual([]);
  expect(beside.filter(({ says }) => says.length === 1).length).toBeGreaterThan(5 * bodies.length);
});

test('what is seen of a bent, waving, twisted or hollow tape leads back to its place', () => {
  for (const kind of ['bent tape', 'waving tape', 'twisted end', 'hollow steel tape'] as const) {
    const { bodies, camera, truth } = planned(kind, 2);
    const { spec, placeAt } = bodies[0]!;
    const [scale] = truth.scales;
    const { zero, direction } = spec.scales[0]!;
    for (let mm = scale!.visibleFromMm; mm < scale!.visibleToMm; mm += 7) {
      const { x, y } = scale!.pointAt(mm);
      const [s] = placeAt(...camera.meet(x, y));
      expect(Math.abs((s - zero) * direction - mm), `${kind} at ${mm} mm`).toBeLessThan(0.02);
    }
  }
});

test('picture files hold the pixels', () => {
  const grey = { width: 3, height: 2, pixels: Uint8Array.from([0, 10, 255, 7, 8, 9]) };
  expect(Buffer.from(toPgm(grey)).toString('latin1')).toBe(
    'P5\n3 2\n255\n\x00\x0a\xff\x07\x08\x09',
  );
  const png = Buffer.from(toPng(grey));
  const length = png.readUInt32BE(33);
  expect(png.toString('latin1', 37, 41)).toBe('IDAT');
  expect([...inflateSync(png.subarray(41, 41 + length))]).toEqual([0, 0, 10, 255, 0, 7, 8, 9]);
  // The check sum of an empty IEND chunk, as every PNG ends.
  expect(png.subarray(-4).toString('hex')).toBe('ae426082');
});
