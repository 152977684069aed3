import type { GreyImage } from '../../src/tape/picture/grey-image.ts';
import type { Point } from '../../src/tape/picture/place.ts';
import type { Random } from '../tapes/random.ts';

/** A photo taken another way: its pixels, and where a place of the original has gone. */
export interface VariedPhoto {
  readonly image: GreyImage;
  /** What was done to it, to tell one variation from another in a report. */
  readonly how: string;
  /** Px of the varied picture to one of the original, about. */
  readonly enlarged: number;
  readonly moved: (place: Point) => Point;
}

type Matrix = readonly [number, number, number, number, number, number, number, number, number];

/** Turns the picture, takes part of it, tilts it, and spoils light, sharpness and noise: each now and then. */
export function varied(photo: GreyImage, random: Random): VariedPhoto {
  const turn = random.chance(0.5) ? random.between(-12, 12) : random.between(0, 360);
  const size = random.chance(0.6) ? random.between(0.6, 1) : random.between(1, 1.5);
  const tilt = random.chance(0.4) ? random.between(0.05, 0.3) : 0;
  const part = random.chance(0.4) ? random.between(0.45, 0.9) : 1;
  const blur = random.chance(0.3) ? random.between(0.4, 1.1) : 0;
  const noise = random.chance(0.4) ? random.between(1, 8) : 0;
  const gamma = random.chance(0.5) ? random.between(0.5, 1.9) : 1;
  const contrast = random.chance(0.4) ? random.between(0.35, 0.9) : 1;
  const shade = random.chance(0.4) ? random.between(0.2, 0.7) : 0;
  const forward = placed(photo, turn, size, tilt, part, random);
  const [width, height] = [
    Math.round(photo.width * size * part),
    Math.round(photo.height * size * part),
  ];
  const back = inverse(forward);
  const seen = new Float32Array(width * height);
  const block = Math.max(1, Math.round(1 / size));
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      seen[y * width + x] = sampled(photo, through(back, { x, y }), block);
    }
  }
  const soft = blur > 0 ? blurred(seen, width, height, blur) : seen;
  const pixels = new Uint8Array(width * height);
  for (let i = 0; i < pixels.length; i++) {
    const shadow = 1 - shade * ((i % width) / width);
    const lit = ((soft[i] ?? 0) / 255) ** gamma * shadow;
    const flat = 255 * (0.5 + (lit - 0.5) * contrast);
    pixels[i] = Math.max(0, Math.min(255, Math.round(flat + noise * random.normal())));
  }
  return {
    image: { width, height, pixels },
    how: `turn ${turn.toFixed(0)}° size ${size.toFixed(2)} part ${part.toFixed(2)} tilt ${tilt.toFixed(2)} blur ${blur.toFixed(1)} noise ${noise.toFixed(0)} gamma ${gamma.toFixed(1)} contrast ${contrast.toFixed(1)} shade ${shade.toFixed(1)}`,
    enlarged: size,
    moved: (place) => through(forward, place),
  };
}

function placed(
  { width, height }: GreyImage,
  turn: number,
  size: number,
  tilt: number,
  part: number,
  random: Random,
): Matrix {
  const angle = (turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle) * size, Math.sin(angle) * size];
  const toward = random.between(0, 2 * Math.PI);
  const long = Math.max(width, height);
  const [p, q] = [(tilt * Math.cos(toward)) / long, (tilt * Math.sin(toward)) / long];
  const slack = (1 - part) / 2;
  const [dx, dy] = [
    random.between(-slack, slack) * width * size,
    random.between(-slack, slack) * height * size,
  ];
  const [halfWidth, halfHeight] = [(width * size * part) / 2, (height * size * part) / 2];
  const fromMiddle: Matrix = [1, 0, -width / 2, 0, 1, -height / 2, 0, 0, 1];
  const turned: Matrix = [cos, -sin, 0, sin, cos, 0, p, q, 1];
  const toPicture: Matrix = [1, 0, halfWidth + dx, 0, 1, halfHeight + dy, 0, 0, 1];
  return times(toPicture, times(turned, fromMiddle));
}

function times(one: Matrix, other: Matrix): Matrix {
  const cell = (row: number, column: number) =>
    [0, 1, 2].reduce((sum, k) => sum + (one[row * 3 + k] ?? 0) * (other[k * 3 + column] ?? 0), 0);
  return [
    cell(0, 0),
    cell(0, 1),
    cell(0, 2),
    cell(1, 0),
    cell(1, 1),
    cell(1, 2),
    cell(2, 0),
    cell(2, 1),
    cell(2, 2),
  ];
}

function inverse([a, b, c, d, e, f, g, h, i]: Matrix): Matrix {
  // The adjugate: the scale of a projective matrix means nothing.
  return [
    e * i - f * h,
    c * h - b * i,
    b * f - c * e,
    f * g - d * i,
    a * i - c * g,
    c * d - a * f,
    d * h - e * g,
    b * g - a * h,
    a * e - b * d,
  ];
}

function through([a, b, c, d, e, f, g, h, i]: Matrix, { x, y }: Point): Point {
  const w = g * x + h * y + i;
  return { x: (a * x + b * y + c) / w, y: (d * x + e * y + f) / w };
}

/** The mean of a small square of the original, each part between its four pixels; the edge goes on outside. */
function sampled(photo: GreyImage, place: Point, block: number): number {
  let sum = 0;
  for (let row = 0; row < block; row++) {
    for (let column = 0; column < block; column++) {
      sum += between(photo, place.x + column - (block - 1) / 2, place.y + row - (block - 1) / 2);
    }
  }
  return sum / (block * block);
}

function between({ width, height, pixels }: GreyImage, x: number, y: number): number {
  const left = Math.max(0, Math.min(width - 2, Math.floor(x)));
  const top = Math.max(0, Math.min(height - 2, Math.floor(y)));
  const [right, down] = [Math.max(0, Math.min(1, x - left)), Math.max(0, Math.min(1, y - top))];
  const at = top * width + left;
  const upper = (pixels[at] ?? 0) * (1 - right) + (pixels[at + 1] ?? 0) * right;
  const lower = (pixels[at + width] ?? 0) * (1 - right) + (pixels[at + width + 1] ?? 0) * right;
  return upper * (1 - down) + lower * down;
}

/** Softened along rows and then along columns by a Gaussian. */
function blurred(values: Float32Array, width: number, height: number, sigma: number): Float32Array {
  const reach = Math.ceil(3 * sigma);
  const weights = Array.from({ length: 2 * reach + 1 }, (_, k) =>
    Math.exp(-((k - reach) ** 2) / (2 * sigma * sigma)),
  );
  const total = weights.reduce((sum, one) => sum + one, 0);
  const pass = (from: Float32Array, step: number, length: number) => {
    const to = new Float32Array(from.length);
    for (let i = 0; i < from.length; i++) {
      const place = Math.floor(i / step) % length;
      let sum = 0;
      for (let k = -reach; k <= reach; k++) {
        const inside = Math.max(0, Math.min(length - 1, place + k));
        sum += (weights[k + reach] ?? 0) * (from[i + (inside - place) * step] ?? 0);
      }
      to[i] = sum / total;
    }
    return to;
  };
  return pass(pass(values, 1, width), width, height);
}
