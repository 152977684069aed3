import { type Glyph, type NumeralForms, numeral } from './glyphs.ts';
import { letters } from './letters.ts';

/** A way of lettering: forms of the numerals, and the pen. Sizes as a share of the height. */
export interface Lettering extends NumeralForms {
  readonly name: string;
  /** How much narrower or wider than the skeleton. */
  readonly stretch: number;
  /** Thickness of upright strokes. */
  readonly stem: number;
  /** Thickness of level strokes. */
  readonly bar: number;
  readonly roundEnds: boolean;
  /** How far the top leans to the right. */
  readonly slant: number;
  /** Clear space between characters. */
  readonly space: number;
}

/** Coverage 0 to 255 of a printed word, in texels. */
export interface Mask {
  readonly width: number;
  readonly height: number;
  readonly alpha: Uint8Array;
}

/** One line of lettering, `tall` texels high. */
export function lettered(text: string, style: Lettering, tall: number): Mask {
  const height = Math.max(1, Math.round(tall));
  const glyphs = [...text].map((letter) => numeral(letter, style) ?? letters[letter]);
  const masks = glyphs.map((glyph) => (glyph ? drawn(glyph, style, height) : undefined));
  const gap = Math.round(style.space * height);
  const blank = Math.round(0.35 * height);
  const width = masks.reduce((sum, mask) => sum + (mask?.width ?? blank) + gap, -gap);
  const alpha = new Uint8Array(Math.max(1, width) * height);
  let left = 0;
  for (const mask of masks) {
    if (mask) {
      for (let y = 0; y < height; y++) {
        const row = mask.alpha.subarray(y * mask.width, (y + 1) * mask.width);
        alpha.set(row.subarray(0, Math.max(0, width - left)), y * width + left);
      }
    }
    left += (mask?.width ?? blank) + gap;
  }
  return { width: Math.max(1, width), height, alpha };
}

/** Turned by quarter turns clockwise. */
export function turnedMask(mask: Mask, quarters: number): Mask {
  let { width, height, alpha } = mask;
  for (let turn = ((quarters % 4) + 4) % 4; turn > 0; turn--) {
    const next = new Uint8Array(alpha.length);
    for (let y = 0; y < height; y++) {
      for (let x = 0; x < width; x++) {
        next[x * height + height - 1 - y] = alpha[y * width + x] as number;
      }
    }
    [width, height, alpha] = [height, width, next];
  }
  return { width, height, alpha };
}

function drawn(glyph: Glyph, style: Lettering, height: number): Mask {
  const stem = (style.stem * height) / 2;
  const bar = (style.bar * height) / 2;
  const lean = style.slant * height;
  const across = glyph.width * style.stretch * height;
  const width = Math.ceil(across + 2 * stem + Math.abs(lean));
  const alpha = new Uint8Array(width * height);
  for (const stroke of glyph.strokes) {
    const placed = stroke.map((value, i) => {
      if (i % 2 === 1) return bar + value * (height - 2 * bar);
      const y = stroke[i + 1] as number;
      return stem + value * style.stretch * height + lean * (1 - y) - Math.min(0, lean);
    });
    drawStroke({ width, height, alpha }, placed, [stem, bar], style.roundEnds);
  }
  return { width, height, alpha };
}

function drawStroke(
  mask: Mask,
  points: readonly number[],
  nib: readonly [number, number],
  roundEnds: boolean,
): void {
  const last = points.length / 2 - 2;
  for (let i = 0; i <= last; i++) {
    const ends = points.slice(2 * i, 2 * i + 4) as [number, number, number, number];
    drawSegment(mask, ends, nib, [!roundEnds && i === 0, !roundEnds && i === last]);
  }
}

/** A straight piece swept by an elliptic nib, `cut` square at an end where asked. */
function drawSegment(
  { width, height, alpha }: Mask,
  [x0, y0, x1, y1]: readonly [number, number, number, number],
  [rx, ry]: readonly [number, number],
  cut: readonly [boolean, boolean],
): void {
  const ex = (x1 - x0) / rx;
  const ey = (y1 - y0) / ry;
  const length = Math.max(1e-9, Math.hypot(ex, ey));
  const edge = Math.min(rx, ry);
  for (let y = Math.max(0, Math.floor(Math.min(y0, y1) - ry - 1)); y < height; y++) {
    if (y > Math.max(y0, y1) + ry + 1) break;
    for (let x = Math.max(0, Math.floor(Math.min(x0, x1) - rx - 1)); x < width; x++) {
      if (x > Math.max(x0, x1) + rx + 1) break;
      const px = (x + 0.5 - x0) / rx;
      const py = (y + 0.5 - y0) / ry;
      const along = (px * ex + py * ey) / length;
      if ((cut[0] && along < -0.5 / edge) || (cut[1] && along > length + 0.5 / edge)) continue;
      const nearest = Math.min(length, Math.max(0, along)) / length;
      const away = Math.hypot(px - ex * nearest, py - ey * nearest);
      const cover = Math.min(1, Math.max(0, 0.5 + (1 - away) * edge)) * 255;
      const at = y * width + x;
      if (cover > (alpha[at] as number)) alpha[at] = cover;
    }
  }
}
