import type { GreyImage } from '../../src/tape/picture/grey-image.ts';
import type { Point } from '../../src/tape/picture/place.ts';
import { codedAsPhoto } from '../tapes/photo-coding.ts';
import { randomFrom } from '../tapes/random.ts';

/** What happens to a photo on its way, that must not matter to who reads it. */
export interface PlainWay {
  readonly how: string;
  readonly image: GreyImage;
  /** Where a place of the photo has gone. */
  readonly moved: (place: Point) => Point;
}

const same = (place: Point) => place;

/** Saved again, turned, made smaller, brighter, cut: what a phone, an album or a message does. */
export function* plainWays(photo: GreyImage): Generator<PlainWay> {
  for (const quality of [95, 85])
    yield { how: `JPEG ${quality}`, image: coded(photo, quality), moved: same };
  yield turned(photo);
  yield smaller(photo, 0.7);
  const brighter = photo.pixels.map((grey) => Math.min(255, Math.round(1.2 * grey)));
  yield { how: 'a fifth brighter', image: { ...photo, pixels: brighter }, moved: same };
  yield cut(photo, 0.05);
}

/** What else may come between two pictures of the same place: another size, the phone held the other way up, an unsteady hand, little light. */
export function* otherWays(picture: GreyImage): Generator<PlainWay> {
  yield smaller(picture, 0.85);
  yield smaller(picture, 0.65);
  yield turnedRound(picture);
  yield cut(picture, 0.07);
  const [soft, noisy] = [softened(picture), noised(picture)];
  yield { how: 'softened', image: soft, moved: same };
  yield { how: 'noisy', image: noisy, moved: same };
}

function turnedRound({ width, height, pixels }: GreyImage): PlainWay {
  const image = { width, height, pixels: pixels.slice().reverse() };
  const moved = ({ x, y }: Point) => ({ x: width - 1 - x, y: height - 1 - y });
  return { how: 'turned by 180°', image, moved };
}

/** Each px with a quarter of its neighbours along, and then down. */
function softened({ width, height, pixels }: GreyImage): GreyImage {
  const pass = (from: Uint8Array, step: number) =>
    from.map((grey, at) => {
      const [before, after] = [from[at - step] ?? grey, from[at + step] ?? grey];
      return Math.round((before + 2 * grey + after) / 4);
    });
  return { width, height, pixels: pass(pass(pixels, 1), width) };
}

/** Grey that strays by 5 levels (1 sigma), the same in every run. */
function noised({ width, height, pixels }: GreyImage): GreyImage {
  const random = randomFrom(1);
  const strayed = pixels.map((grey) =>
    Math.max(0, Math.min(255, Math.round(grey + 5 * random.normal()))),
  );
  return { width, height, pixels: strayed };
}

function coded(photo: GreyImage, quality: number): GreyImage {
  const pixels = photo.pixels.slice();
  codedAsPhoto(pixels, photo.width, photo.height, quality);
  return { ...photo, pixels };
}

/** By a quarter, clockwise. */
function turned({ width, height, pixels }: GreyImage): PlainWay {
  const image = { width: height, height: width, pixels: new Uint8Array(pixels.length) };
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      image.pixels[x * height + height - 1 - y] = pixels[y * width + x] as number;
  return { how: 'turned by 90°', image, moved: ({ x, y }) => ({ x: height - 1 - y, y: x }) };
}

/** Each px the mean of what it covers. */
function smaller(photo: GreyImage, share: number): PlainWay {
  const [width, height] = [photo.width, photo.height].map((side) => Math.floor(side * share)) as [
    number,
    number,
  ];
  const wide = resampled(photo.pixels, photo.height, photo.width, 1, photo.width, width, share);
  const both = resampled(wide, width, photo.height, width, 1, height, share);
  const pixels = Uint8Array.from(both, (grey) => Math.round(grey));
  const moved = ({ x, y }: Point) => {
    return { x: (x + 0.5) * share - 0.5, y: (y + 0.5) * share - 0.5 };
  };
  return { how: `scaled to ${Math.round(100 * share)} %`, image: { width, height, pixels }, moved };
}

/** Lines of samples, `step` apart in each and `stride` from line to line, each shrunk to `size`. */
function resampled(
  from: ArrayLike<number>,
  lines: number,
  length: number,
  step: number,
  stride: number,
  size: number,
  share: number,
): Float32Array {
  const to = new Float32Array(lines * size);
  const [toStep, toStride] = step === 1 ? [1, size] : [step, 1];
  for (let line = 0; line < lines; line++) {
    for (let i = 0; i < size; i++) {
      const [start, end] = [i / share, Math.min(length, (i + 1) / share)];
      let [sum, total] = [0, 0];
      for (let at = Math.floor(start); at < end; at++) {
        const weight = Math.min(end, at + 1) - Math.max(start, at);
        sum += weight * (from[line * stride + at * step] as number);
        total += weight;
      }
      to[line * toStride + i * toStep] = sum / total;
    }
  }
  return to;
}

function cut({ width, height, pixels }: GreyImage, border: number): PlainWay {
  const [left, top] = [Math.round(width * border), Math.round(height * border)];
  const [wide, high] = [width - 2 * left, height - 2 * top];
  const part = new Uint8Array(wide * high);
  for (let y = 0; y < high; y++) {
    const from = (top + y) * width + left;
    part.set(pixels.subarray(from, from + wide), y * wide);
  }
  const image = { width: wide, height: high, pixels: part };
  return { how: 'cut by a tenth', image, moved: ({ x, y }) => ({ x: x - left, y: y - top }) };
}
