import type { PageSymbol } from '../../../src/tape/characters/read-page.ts';
import { components } from '../../../src/tape/numbers/components.ts';
import type { GreyImage } from '../../../src/tape/picture/grey-image.ts';
import { GLYPHS } from './drawn-tape.ts';

/** A character reader for the digits of a drawn tape: each dark patch is the glyph it covers best. */
export function readGlyphs({ width, height, pixels }: GreyImage): PageSymbol[] {
  const ink = Uint8Array.from(pixels, (grey) => (grey < 128 ? 1 : 0));
  return components(ink, width, height)
    .components.filter((patch) => patch.height > 20)
    .map((patch) => {
      const inked = (x: number, y: number) => {
        const column = Math.floor(patch.x0 + x * patch.width);
        return ink[Math.floor(patch.y0 + y * patch.height) * width + column] === 1;
      };
      const scores = GLYPHS.map((glyph) => likeness(glyph, inked));
      const best = Math.max(...scores);
      const { x0, y0, x1, y1 } = patch;
      return { text: String(scores.indexOf(best)), confidence: 100 * best, x0, y0, x1, y1 };
    });
}

/** Share of the glyph's squares that are as they should be; outer empty columns left out. */
function likeness(glyph: readonly string[], inked: (x: number, y: number) => boolean): number {
  const used = [0, 1, 2, 3, 4].filter((column) => glyph.some((row) => row[column] === '1'));
  let right = 0;
  glyph.forEach((row, y) => {
    used.forEach((column, x) => {
      if (inked((x + 0.5) / used.length, (y + 0.5) / 7) === (row[column] === '1')) right++;
    });
  });
  return right / (7 * used.length);
}
