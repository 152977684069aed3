import type { Canvas } from './canvas.ts';
import { tiled } from './draw-ground.ts';
import type { Grain } from './draw-tape.ts';
import type { Hider } from './hider.ts';
import { type Block, eachBlock, type MapGrid } from './map-grid.ts';

/** Lays a thing over the picture, with its shadow. */
export function drawHider(canvas: Canvas, bench: MapGrid, hider: Hider, grain: Grain): void {
  eachBlock(bench, canvas, (block) => {
    const { a, b } = block;
    const side = 8 * Math.max(Math.hypot(a[1], b[1]), Math.hypot(a[2], b[2]));
    const middle = hider.away(a[0] + 4 * (a[1] + a[2]), b[0] + 4 * (b[1] + b[2]));
    if (middle < side + 2 * hider.shadow.reach) drawBlock(canvas, block, hider, grain);
  });
}

function drawBlock(canvas: Canvas, block: Block, hider: Hider, grain: Grain): void {
  const { a, b, left, top, right, bottom } = block;
  const pxPerMm = 1 / Math.sqrt(Math.abs(a[1] * b[2] - a[2] * b[1]));
  const { reach, dark } = hider.shadow;
  for (let y = top; y < bottom; y++) {
    const dy = y + 0.5 - top;
    for (let x = left; x < right; x++) {
      const dx = x + 0.5 - left;
      const mx = a[0] + a[1] * dx + a[2] * dy + a[3] * dx * dy;
      const my = b[0] + b[1] * dx + b[2] * dy + b[3] * dx * dy;
      const away = hider.away(mx, my);
      const cover = Math.min(1, Math.max(0, 0.5 - away * pxPerMm));
      const at = y * canvas.width + x;
      // The light comes from one side, so the shadow lies off to the other.
      const shade = hider.away(mx - 0.6 * reach, my - 0.6 * reach);
      const under = canvas.values[at]! * (1 - dark * Math.min(1, Math.max(0, 0.5 - shade / reach)));
      const noise = 1 + hider.texture * tiled(grain.fine, grain.size, mx * 2.5, my * 2.5);
      const grey = cover > 0 ? hider.grey(mx, my, Math.min(0, away)) * noise : 0;
      canvas.values[at] = under + cover * (grey - under);
    }
  }
}
