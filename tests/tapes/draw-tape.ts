import type { Canvas } from './canvas.ts';
import { tiled } from './draw-ground.ts';
import { blankSheet, type InkLevel, type InkSheet, levelsOf } from './ink-sheet.ts';
import { type Block, eachBlock, type MapGrid, mapped } from './map-grid.ts';
import { printScale } from './scale-print.ts';
import type { TapeBody } from './tape-body.ts';
import type { TapeSpec } from './tape-spec.ts';

/** A square of noise shared by all surfaces of a picture; it repeats. */
export interface Grain {
  readonly size: number;
  readonly fine: Float32Array;
  readonly patches: Float32Array;
}

const SHADOW_MM = 2.2;
const MOST_TEXELS = 1.4e7;

/** Draws a tape over what is there. `perMm` is the picture's finest scale, px. */
export function drawTape(
  canvas: Canvas,
  bench: MapGrid,
  body: TapeBody,
  perMm: number,
  grain: Grain,
): void {
  const { spec } = body;
  const grid = mapped(bench, (x, y) => body.placeAt(x, y));
  const sheet = printed(spec, grid, perMm);
  if (!sheet) return;
  const levels = levelsOf(sheet);
  eachBlock(grid, canvas, (block) => {
    if (!touches(grid, block, spec)) return;
    const footprint =
      sheet.perMm *
      Math.max(Math.hypot(block.a[1], block.a[2]), Math.hypot(block.b[1], block.b[2]));
    const finer = Math.max(0, Math.min(levels.length - 1, Math.round(Math.log2(footprint / 2.2))));
    drawBlock(canvas, block, { spec, level: levels[finer]!, from: sheet.from, grain });
  });
}

/** The print of the stretch that the picture shows. */
function printed(spec: TapeSpec, grid: MapGrid, perMm: number): InkSheet | undefined {
  let [from, to] = [Infinity, -Infinity];
  for (let i = 0; i < grid.first.length; i++) {
    if (Math.abs(grid.second[i]! - spec.width / 2) > spec.width) continue;
    from = Math.min(from, grid.first[i]!);
    to = Math.max(to, grid.first[i]!);
  }
  [from, to] = [Math.max(spec.from, from - 8), Math.min(spec.to, to + 8)];
  if (!(to > from)) return undefined;
  const finest = Math.sqrt(MOST_TEXELS / ((to - from) * spec.width));
  const sheet = blankSheet(from, to, spec.width, Math.min(2.4 * perMm, finest));
  for (const scale of [...spec.scales, ...(spec.unread ?? [])]) printScale(sheet, scale, spec);
  spec.decorate?.(sheet);
  return sheet;
}

function touches({ first, second }: MapGrid, { corners, a, b }: Block, spec: TapeSpec): boolean {
  const reach = 8 * (Math.abs(a[1]) + Math.abs(a[2]) + Math.abs(b[1]) + Math.abs(b[2])) + SHADOW_MM;
  if (reach > 80) return false;
  return corners.some((i) => {
    const [s, across] = [first[i]!, second[i]!];
    const near = s > spec.from - reach && s < spec.to + reach;
    return near && across > -reach && across < spec.width + reach;
  });
}

interface Paint {
  readonly spec: TapeSpec;
  readonly level: InkLevel;
  readonly from: number;
  readonly grain: Grain;
}

function drawBlock(canvas: Canvas, block: Block, paint: Paint): void {
  const { a, b, left, top, right, bottom } = block;
  const { width, from, to, surface } = paint.spec;
  const pxPerMm = 1 / Math.sqrt(Math.abs(a[1] * b[2] - a[2] * b[1]));
  for (let y = top; y < bottom; y++) {
    const dy = y + 0.5 - top;
    for (let x = left; x < right; x++) {
      const dx = x + 0.5 - left;
      const s = a[0] + a[1] * dx + a[2] * dy + a[3] * dx * dy;
      const across = b[0] + b[1] * dx + b[2] * dy + b[3] * dx * dy;
      const inside = Math.min(across, width - across, s - from, to - s);
      if (inside < -SHADOW_MM) continue;
      const at = y * canvas.width + x;
      const under =
        canvas.values[at]! * (1 - surface.shadow * Math.min(1, 1 + inside / SHADOW_MM) ** 2);
      const cover = Math.min(1, Math.max(0, 0.5 + inside * pxPerMm));
      const grey = cover > 0 ? tapeGrey(paint, block, s, across, under) : 0;
      canvas.values[at] = under + cover * (grey - under);
    }
  }
}

function tapeGrey(paint: Paint, { a, b }: Block, s: number, across: number, under: number) {
  const { spec, grain } = paint;
  const { surface } = spec;
  let ink = 0;
  for (let tap = 0; tap < 4; tap++) {
    const [dx, dy] = [tap & 1 ? 0.25 : -0.25, tap & 2 ? 0.25 : -0.25];
    ink += inkAt(paint, s + a[1] * dx + a[2] * dy, across + b[1] * dx + b[2] * dy);
  }
  const cap = spec.caps?.find(({ from, to }) => s >= from && s <= to);
  const [u, v] = surface.brushed ? [s * 0.4, across * 9] : [s * 3, across * 3];
  const noise = 1 + surface.grain * tiled(grain.fine, grain.size, u, v);
  if (cap) return cap.grey * noise * (1 - 0.25 * Math.abs(across / spec.width - 0.4));
  if (surface.worn > 0) {
    const patch = tiled(grain.patches, grain.size, s * 1.1, across * 1.1);
    ink *= Math.min(1, Math.max(1 - surface.worn * 1.5, 1 - surface.worn * (0.5 + patch)));
  }
  const base = (surface.base + (surface.sheen?.(s, across) ?? 0)) * noise;
  const ground = under + surface.opacity * (base - under);
  return ground + (ink / 4 / 255) * (surface.ink - ground);
}

function inkAt({ level, from }: Paint, s: number, across: number): number {
  const { width, height, perMm, alpha } = level;
  const x = Math.max(0, Math.min(width - 1.001, (s - from) * perMm - 0.5));
  const y = Math.max(0, Math.min(height - 1.001, across * perMm - 0.5));
  const [x0, y0] = [x | 0, y | 0];
  const [fx, fy] = [x - x0, y - y0];
  const at = y0 * width + x0;
  const above = alpha[at]! * (1 - fx) + alpha[at + 1]! * fx;
  const below = alpha[at + width]! * (1 - fx) + alpha[at + width + 1]! * fx;
  return above * (1 - fy) + below * fy;
}
