import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { createCanvas, GlobalFonts } from '@napi-rs/canvas';
import { type Lettering, lettered, type Mask } from '../../tapes/pen.ts';
import type { Random } from '../../tapes/random.ts';
import type { Typeface } from './typefaces.ts';

/** Gives the mask of a character in one way of lettering, cut to its ink. */
export type Lettered = (letter: string) => Mask;

/** Texels a character is drawn high; the largest digits of cells are about as high. */
const TALL = 48;

const here = createRequire(import.meta.url);

/** Every weight of the typefaces as a way of lettering. */
export function printed(faces: readonly Typeface[]): Lettered[] {
  return faces.flatMap(({ name, weights }) =>
    weights.map((weight) => {
      const file = `@fontsource/${name}/files/${name}-latin-${weight}-normal.woff2`;
      const family = `${name} ${weight}`;
      GlobalFonts.register(readFileSync(here.resolve(file)), family);
      return remembered((letter) => drawn(letter, family));
    }),
  );
}

/** Lettering by strokes of our own: stamped, engraved, and stencilled by bridges across. */
export function stroked(random: Random, count: number): Lettered[] {
  return Array.from({ length: count }, () => {
    const style = stroke(random);
    const bridge = random.chance(0.3) ? random.between(0.05, 0.1) : 0;
    const at = random.between(0.42, 0.58);
    return remembered((letter) => {
      const mask = lettered(letter, style, TALL);
      return letter === '1' ? mask : bridged(mask, at, bridge);
    });
  });
}

function stroke(random: Random): Lettering {
  const stem = random.between(0.07, 0.2);
  return {
    name: 'stroked',
    flagged: random.chance(0.6),
    openFour: random.chance(0.3),
    serifs: random.chance(0.2),
    straightSides: random.chance(0.4),
    roundEnds: random.chance(0.5),
    stem,
    bar: stem * random.between(0.7, 1.05),
    slant: random.chance(0.2) ? random.between(0.05, 0.2) : 0,
    stretch: random.between(0.65, 1.1),
    space: 0.14,
  };
}

/** With a bridge of ground down the middle, as a stencil holds its islands. */
function bridged(mask: Mask, at: number, share: number): Mask {
  if (share === 0) return mask;
  const alpha = mask.alpha.slice();
  const from = Math.round(at * mask.width - (share * mask.height) / 2);
  for (let y = 0; y < mask.height; y++) {
    const start = y * mask.width + from;
    alpha.fill(0, start, start + Math.max(1, Math.round(share * mask.height)));
  }
  return { ...mask, alpha };
}

function remembered(draw: Lettered): Lettered {
  const kept = new Map<string, Mask>();
  return (letter) => {
    const mask = kept.get(letter) ?? draw(letter);
    kept.set(letter, mask);
    return mask;
  };
}

function drawn(letter: string, family: string): Mask {
  const side = 160;
  const canvas = createCanvas(side, side);
  const pen = canvas.getContext('2d');
  pen.font = `64px "${family}"`;
  const { actualBoundingBoxAscent: above, actualBoundingBoxDescent: below } =
    pen.measureText(letter);
  pen.font = `${(64 * TALL) / (above + below)}px "${family}"`;
  pen.fillText(letter, 50, 110);
  const { data } = pen.getImageData(0, 0, side, side);
  return trimmed((x, y) => data[(y * side + x) * 4 + 3] as number, side);
}

function trimmed(alphaAt: (x: number, y: number) => number, side: number): Mask {
  let [x0, x1, y0, y1] = [side, -1, side, -1];
  for (let y = 0; y < side; y++) {
    for (let x = 0; x < side; x++) {
      if (alphaAt(x, y) < 128) continue;
      [x0, x1] = [Math.min(x0, x), Math.max(x1, x)];
      [y0, y1] = [Math.min(y0, y), Math.max(y1, y)];
    }
  }
  const [width, height] = [x1 - x0 + 1, y1 - y0 + 1];
  const alpha = new Uint8Array(width * height);
  for (let i = 0; i < alpha.length; i++) {
    alpha[i] = alphaAt(x0 + (i % width), y0 + Math.floor(i / width));
  }
  return { width, height, alpha };
}
