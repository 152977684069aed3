import { expect, inject, test } from 'vitest';
import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import { launchBrowser, openApp, SMALL_PHONE } from './harness.ts';
import { IN_HAND } from './in-hand.ts';
import { onScreen, photoOf } from './tape-pictures.ts';

const { drawn, file } = photoOf('cm tape on cloth', 3);

test('a drawn tape is read into the field of an opened work, and stands there as typed', async () => {
  const browser = await launchBrowser();
  const app = await openApp(browser, inject('address'), {
    ...{ at: '#/garments', size: SMALL_PHONE, serviceWorkers: 'block' },
  });
  const { page } = app;
  await IN_HAND.find(({ name }) => name === 'a field of a work')?.steps?.(page);
  const label = await page.locator('.tile.now > span').first().textContent();
  await page.getByRole('button', { name: words.read }).click();
  await page.getByLabel('Choose a photo').setInputFiles(file);
  await page.getByRole('slider').waitFor();
  const on = drawn.points.filter(({ onScale }) => onScale);
  const point = on[Math.floor(on.length / 2)];
  if (!point) throw new Error('the scene has no point on its scale');
  const { x, y } = await onScreen(page, drawn, point);
  await page.touchscreen.tap(x, y);
  await page.getByRole('button', { name: `Use: ${label}` }).click();
  const given = page.locator('.dimension.given', { hasText: label ?? '' });
  await given.first().waitFor();
  const read = 10 * Number.parseFloat((await given.first().locator('b').textContent()) ?? '');
  // A finger can't aim better than a px of the screen, here some two thirds of a millimetre.
  expect(Math.abs(read - point.mm)).toBeLessThan(1.5);
  await page.getByRole('button', { name: words.undo }).waitFor();
  expect(app.complaints).toEqual([]);
  await app.close();
  await browser.close();
});
