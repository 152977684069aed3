import type { GreyImage } from './grey-image.ts';
import { EDGE_PX } from './limits.ts';

/** Grey between pixels; the border goes on outside. */
export function greyAt({ width, height, pixels }: GreyImage, x: number, y: number): number {
  const cx = Math.max(0, Math.min(width - EDGE_PX, x));
  const cy = Math.max(0, Math.min(height - EDGE_PX, y));
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
