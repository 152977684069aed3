import type { Mask } from './pen.ts';

/** One size of the print: coverage 0 to 255, along the tape by rows across it. */
export interface InkLevel {
  readonly perMm: number;
  readonly width: number;
  readonly height: number;
  readonly alpha: Uint8Array;
}

/** The print of a stretch of tape, to be looked up where the camera sees it. */
export interface InkSheet extends InkLevel {
  /** Where along the tape the sheet begins, mm. */
  readonly from: number;
}

export function blankSheet(from: number, to: number, across: number, perMm: number): InkSheet {
  const width = Math.ceil((to - from) * perMm);
  const height = Math.ceil(across * perMm);
  return { from, perMm, width, height, alpha: new Uint8Array(width * height) };
}

/** A stroke with straight sides, in mm, covering part of a texel in proportion. */
export function printBar(
  sheet: InkSheet,
  [along0, along1]: readonly [number, number],
  [across0, across1]: readonly [number, number],
  strength = 1,
): void {
  const { width, height, perMm, alpha } = sheet;
  const x0 = Math.max(0, (along0 - sheet.from) * perMm);
  const x1 = Math.min(width, (along1 - sheet.from) * perMm);
  const y0 = Math.max(0, across0 * perMm);
  const y1 = Math.min(height, across1 * perMm);
  for (let y = Math.floor(y0); y < y1; y++) {
    const tall = Math.min(y + 1, y1) - Math.max(y, y0);
    for (let x = Math.floor(x0); x < x1; x++) {
      const wide = Math.min(x + 1, x1) - Math.max(x, x0);
      const at = y * width + x;
      const cover = 255 * strength * tall * wide;
      alpha[at] = Math.min(255, (alpha[at] as number) + cover);
    }
  }
}

/** Lettering with its middle at the place given, in mm. */
export function printMask(
  sheet: InkSheet,
  mask: Mask,
  [along, across]: readonly [number, number],
  strength = 1,
): void {
  const left = Math.round((along - sheet.from) * sheet.perMm - mask.width / 2);
  const top = Math.round(across * sheet.perMm - mask.height / 2);
  for (let y = Math.max(0, -top); y < mask.height && top + y < sheet.height; y++) {
    for (let x = Math.max(0, -left); x < mask.width && left + x < sheet.width; x++) {
      const at = (top + y) * sheet.width + left + x;
      const cover = (mask.alpha[y * mask.width + x] as number) * strength;
      if (cover > (sheet.alpha[at] as number)) sheet.alpha[at] = cover;
    }
  }
}

/** The sheet and halves of it, for the parts that the camera sees smaller. */
export function levelsOf(sheet: InkSheet, want = 3): InkLevel[] {
  const levels: InkLevel[] = [sheet];
  for (let level: InkLevel = sheet; levels.length < want; ) {
    level = halved(level);
    levels.push(level);
  }
  return levels;
}

function halved({ perMm, width, height, alpha }: InkLevel): InkLevel {
  const wide = Math.max(1, width >> 1);
  const high = Math.max(1, height >> 1);
  const half = new Uint8Array(wide * high);
  for (let y = 0; y < high; y++) {
    for (let x = 0; x < wide; x++) {
      const at = 2 * y * width + 2 * x;
      const below = at + (height > 1 ? width : 0);
      const sum = alpha[at]! + alpha[at + 1]! + alpha[below]! + alpha[below + 1]!;
      half[y * wide + x] = (sum + 2) >> 2;
    }
  }
  return { perMm: perMm / 2, width: wide, height: high, alpha: half };
}
