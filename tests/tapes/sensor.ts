import type { Canvas } from './canvas.ts';
import { codedAsPhoto } from './photo-coding.ts';
import type { Random } from './random.ts';

export interface SensorSpec {
  /** Standard deviation of the noise at middle grey. */
  readonly noise: number;
  /** Share of the range that is kept: 1 for full contrast. */
  readonly contrast: number;
  readonly brightness: number;
  /** 1 to 100 as in the usual coding of photos; 100 leaves the picture as it is. */
  readonly quality: number;
}

const TABLE = 1 << 16;

/** Noise, whole greys, and coding as a photo. */
export function developed(canvas: Canvas, sensor: SensorSpec, random: Random): Uint8Array {
  const { width, height, values } = canvas;
  const table = Float32Array.from({ length: TABLE }, () => random.normal() * sensor.noise);
  const pixels = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    let at = Math.floor(random.unit() * TABLE);
    const stride = 1 + 2 * random.whole(0, 500);
    for (let i = y * width; i < (y + 1) * width; i++) {
      at = (at + stride) & (TABLE - 1);
      const grey = 128 + (values[i]! - 128) * sensor.contrast + sensor.brightness;
      // Brighter light brings more noise with it, by its square root.
      const noise = table[at]! * Math.sqrt(Math.max(0.2, grey / 128));
      pixels[i] = Math.min(255, Math.max(0, grey + noise + 0.5));
    }
  }
  if (sensor.quality < 100) codedAsPhoto(pixels, width, height, sensor.quality);
  return pixels;
}
