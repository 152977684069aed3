import type { Page } from 'playwright-core';
import { toPng } from '../tapes/picture-files.ts';
import { type SceneKind, scene } from '../tapes/scene.ts';

/** A drawn photo of a tape with what is true of it, as a phone would hand it over. */
export function photoOf(kind: SceneKind, seed: number) {
  const drawn = scene(kind, seed);
  const buffer = Buffer.from(toPng(drawn));
  return { drawn, file: { name: 'photo.png', mimeType: 'image/png', buffer } };
}

/** Where a place of a drawn photo is on the screen. */
export async function onScreen(
  page: Page,
  drawn: { width: number; height: number },
  { x, y }: { x: number; y: number },
) {
  const box = await page.locator('.photo svg').boundingBox();
  if (!box) throw new Error('there is no photo to be seen');
  const scale = Math.min(box.width / drawn.width, box.height / drawn.height);
  return {
    x: box.x + (box.width - scale * drawn.width) / 2 + scale * x,
    y: box.y + (box.height - scale * drawn.height) / 2 + scale * y,
    mmPerPx: 1 / scale,
  };
}
