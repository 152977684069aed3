import { expect, inject, test } from 'vitest';
import { liveWords } from '#words/tape/live-words.ts';
import { scene } from '../tapes/scene.ts';
import { cameraOver } from './camera-file.ts';
import { launchBrowser, openApp } from './harness.ts';

test('with the cross on the inch edge of a tape, that edge is read and outlined', async () => {
  const drawn = scene('cm and inch from one end', 11);
  const inches = drawn.points.filter(({ onScale, scale }) => onScale && scale === 'inch');
  const point = inches[inches.length >> 1];
  if (!point) throw new Error('the scene has no inch edge');
  const camera = await launchBrowser([
    '--use-fake-ui-for-media-stream',
    '--use-fake-device-for-media-stream',
    `--use-file-for-fake-video-capture=${cameraOver(drawn, [point, point, point], 10)}`,
  ]);
  const { page, complaints } = await openApp(camera, inject('address'), {
    at: '#/tape',
    serviceWorkers: 'block',
  });
  await page.getByText('Live').tap();
  await page.getByText(liveWords.held).waitFor({ timeout: 30_000 });
  const said = (await page.locator('.told strong').textContent()) ?? '';
  expect(Math.abs(10 * Number.parseFloat(said) - point.mm)).toBeLessThan(0.5);
  // One edge, around the cross in the middle of the picture, with the numbers of that edge.
  const outlines = page.locator('.outlined polygon');
  expect(await outlines.count()).toBe(1);
  const [picture, outline] = await Promise.all(
    [page.locator('video'), outlines].map((one) => one.boundingBox()),
  );
  if (!picture || !outline) throw new Error('no outline is to be seen');
  expect(outline.y).toBeLessThan(picture.y + picture.height / 2);
  expect(outline.y + outline.height).toBeGreaterThan(picture.y + picture.height / 2);
  expect(await page.locator('.outlined text').allTextContents()).toContain('22');
  expect(complaints).toEqual([]);
  await camera.close();
});
