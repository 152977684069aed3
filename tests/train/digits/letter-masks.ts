import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { createCanvas, GlobalFonts, type SKRSContext2D } from '@napi-rs/canvas';
import type { Mask } from '../../tapes/pen.ts';
import type { Random } from '../../tapes/random.ts';
import { ownForms, traceDigit } from './own-forms.ts';
import type { Typeface } from './typefaces.ts';

/** Gives the mask of a character in one way of lettering, cut to its ink. */
export type Lettered = (letter: string) => Mask;

/** Texels a character is drawn high; the largest digits of cells are not as high. */
const TALL = 48;
/** Texels a sign may be wide, such as a dash. */
const WIDEST = 90;
/** Side of the canvas that one is drawn on. */
const SIDE = 160;

const here = createRequire(import.meta.url);

/** Every weight of the typefaces as a way of lettering. */
export function printed(faces: readonly Typeface[]): Lettered[] {
  return faces.flatMap(({ name, weights }) =>
    weights.map((weight) => {
      const file = `@fontsource/${name}/files/${name}-latin-${weight}-normal.woff2`;
      const family = `${name} ${weight}`;
      GlobalFonts.register(readFileSync(here.resolve(file)), family);
      return remembered((letter) => drawn((pen) => typeset(pen, letter, family)));
    }),
  );
}

/** Digits by strokes of our own: stamped, engraved, and stencilled by bridges across; no other characters. */
export function stroked(random: Random, count: number): Lettered[] {
  return Array.from({ length: count }, () => {
    const forms = ownForms(random);
    const stem = random.between(0.06, 0.2);
    const stretch = random.between(0.8, 1.2);
    const lean = random.chance(0.2) ? random.between(0.05, 0.2) : 0;
    const cap = random.pick(['round', 'butt', 'square'] as const);
    const join = random.pick(['round', 'miter', 'bevel'] as const);
    const bridge = random.chance(0.3) ? random.between(0.05, 0.1) : 0;
    const at = random.between(0.42, 0.58);
    return remembered((letter) => {
      const mask = drawn((pen) => {
        const tall = TALL * (1 - stem);
        pen.setTransform(tall * stretch, 0, -lean * tall, tall, 60, 50);
        pen.lineWidth = stem;
        pen.lineCap = cap;
        pen.lineJoin = join;
        pen.beginPath();
        traceDigit(pen, letter, forms);
        pen.stroke();
      });
      return letter === '1' ? mask : bridged(mask, at, bridge);
    });
  });
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

function typeset(pen: SKRSContext2D, letter: string, family: string): void {
  pen.font = `64px "${family}"`;
  const box = pen.measureText(letter);
  const above = box.actualBoundingBoxAscent;
  const wide = box.actualBoundingBoxRight + box.actualBoundingBoxLeft;
  const scale = Math.min(TALL / (above + box.actualBoundingBoxDescent), WIDEST / wide);
  pen.font = `${64 * scale}px "${family}"`;
  pen.fillText(letter, 50, 50 + above * scale);
}

/** What is drawn on a canvas, cut to its ink. */
function drawn(draw: (pen: SKRSContext2D) => void): Mask {
  const canvas = createCanvas(SIDE, SIDE);
  const pen = canvas.getContext('2d');
  draw(pen);
  const { data } = pen.getImageData(0, 0, SIDE, SIDE);
  const alphaAt = (x: number, y: number) => data[(y * SIDE + x) * 4 + 3] as number;
  let [x0, x1, y0, y1] = [SIDE, -1, SIDE, -1];
  for (let y = 0; y < SIDE; y++) {
    for (let x = 0; x < SIDE; x++) {
      if (alphaAt(x, y) < 128) continue;
      [x0, x1] = [Math.min(x0, x), Math.max(x1, x)];
      [y0, y1] = [Math.min(y0, y), Math.max(y1, y)];
    }
  }
  if (x1 < x0) throw new Error('nothing drawn');
  const [width, height] = [x1 - x0 + 1, y1 - y0 + 1];
  const alpha = new Uint8Array(width * height);
  for (let i = 0; i < alpha.length; i++) {
    alpha[i] = alphaAt(x0 + (i % width), y0 + Math.floor(i / width));
  }
  return { width, height, alpha };
}
