import type { GreyImage, Point } from './reading.ts';

/** What a finger covers, as a share of the picture's long side, and never less than this. */
const FINGER_SHARE = 1 / 90;
const LEAST_FINGER_PX = 9;
/** Grey levels a line must stand out by to be one. */
const LEAST_CONTRAST = 10;

/**
 * The middle of the graduation under a finger: moves the point across the nearest line, never
 * along it. The same point when no line stands out there.
 */
export function snapTo(image: GreyImage, x: number, y: number): Point {
  const reach = Math.round(
    Math.max(LEAST_FINGER_PX, Math.max(image.width, image.height) * FINGER_SHARE),
  );
  const across = directionAcross(image, x, y, reach);
  if (!across) return { x, y };
  const profile = profileAcross(image, x, y, across, reach);
  const shift = nearestLine(profile, reach);
  if (shift === undefined) return { x, y };
  return { x: x + shift * across.x, y: y + shift * across.y };
}

/** The direction in which grey changes most round a place; undefined where it changes evenly. */
function directionAcross(image: GreyImage, x: number, y: number, reach: number): Point | undefined {
  let [xx, yy, xy] = [0, 0, 0];
  for (let j = -reach; j <= reach; j++) {
    for (let i = -reach; i <= reach; i++) {
      const right = greyAt(image, x + i + 1, y + j) - greyAt(image, x + i - 1, y + j);
      const down = greyAt(image, x + i, y + j + 1) - greyAt(image, x + i, y + j - 1);
      const weight = Math.exp(-2 * ((i * i + j * j) / (reach * reach)));
      xx += weight * right * right;
      yy += weight * down * down;
      xy += weight * right * down;
    }
  }
  const clear = Math.hypot(xx - yy, 2 * xy) / (xx + yy + 1);
  if (clear < 0.25) return undefined;
  const angle = 0.5 * Math.atan2(2 * xy, xx - yy);
  return { x: Math.cos(angle), y: Math.sin(angle) };
}

/** Quarter pixels keep the middle of a thin line to a tenth of a pixel. */
const STEPS_PER_PX = 4;

function profileAcross(
  image: GreyImage,
  x: number,
  y: number,
  across: Point,
  reach: number,
): Float64Array {
  const half = reach * STEPS_PER_PX;
  const along = Math.max(2, Math.round(reach / 3));
  return Float64Array.from({ length: 2 * half + 1 }, (_, index) => {
    const s = (index - half) / STEPS_PER_PX;
    let sum = 0;
    for (let l = -along; l <= along; l++) {
      sum += greyAt(image, x + s * across.x - l * across.y, y + s * across.y + l * across.x);
    }
    return sum / (2 * along + 1);
  });
}

/** Where the nearest line crosses the profile, in px from its middle: dark or light, whichever stands out. */
function nearestLine(profile: Float64Array, reach: number): number | undefined {
  const half = reach * STEPS_PER_PX;
  let best: { shift: number; score: number } | undefined;
  for (const ink of [-1, 1]) {
    for (let i = 1; i < profile.length - 1; i++) {
      const here = ink * at(profile, i);
      if (here < ink * at(profile, i - 1) || here <= ink * at(profile, i + 1)) continue;
      const line = lineAt(profile, i, ink);
      if (line.contrast < LEAST_CONTRAST) continue;
      const shift = (line.middle - half) / STEPS_PER_PX;
      const score = line.contrast * Math.exp(-2 * (shift / reach) ** 2);
      if (!best || score > best.score) best = { shift, score };
    }
  }
  return best?.shift;
}

/** The middle of a line (mean of where its flanks cross half its height) and how far it stands out. */
function lineAt(profile: Float64Array, peak: number, ink: number) {
  const flank = (step: 1 | -1) => {
    let low = peak;
    for (let i = peak; i > 0 && i < profile.length - 1; i += step) {
      if (ink * at(profile, i + step) > ink * at(profile, i) + 1) break;
      low = i + step;
    }
    return low;
  };
  const left = flank(-1);
  const right = flank(1);
  const height = ink * at(profile, peak);
  const contrast = height - Math.max(ink * at(profile, left), ink * at(profile, right));
  const level = height - contrast / 2;
  const cross = (step: 1 | -1) => {
    let i = peak;
    while (i > 0 && i < profile.length - 1 && ink * at(profile, i) > level) i += step;
    const inside = ink * at(profile, i - step);
    const outside = ink * at(profile, i);
    return inside === outside ? i : i - step * ((level - outside) / (inside - outside));
  };
  return { middle: (cross(-1) + cross(1)) / 2, contrast };
}

const at = (profile: Float64Array, index: number) => profile[index] ?? 0;

/** Grey between pixels; the border goes on outside. */
function greyAt({ width, height, pixels }: GreyImage, x: number, y: number): number {
  const cx = Math.max(0, Math.min(width - 1.001, x));
  const cy = Math.max(0, Math.min(height - 1.001, y));
  const ix = Math.floor(cx);
  const iy = Math.floor(cy);
  const a = cx - ix;
  const b = cy - iy;
  const i = iy * width + ix;
  const p = (offset: number) => pixels[i + offset] ?? 0;
  const top = p(0) * (1 - a) + p(1) * a;
  const bottom = p(width) * (1 - a) + p(width + 1) * a;
  return top * (1 - b) + bottom * b;
}
