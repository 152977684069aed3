import { expect, inject, test } from 'vitest';
import { THOROUGH } from '../thorough.ts';
import { launchBrowser, openApp, SMALL_PHONE } from './harness.ts';
import { photoOf } from './tape-pictures.ts';

const PHOTOS = THOROUGH ? 10 : 5;
/** By then all that is made once has been made. */
const WARM = THOROUGH ? 3 : 2;

/**
 * Chooses a photo as a maker does, but within the page: playwright's own way of filling in a file
 * keeps hold of the field for as long as the page lives, and with it of all that stood around it
 * (27 nodes and 4 listeners a photo, named “DevTools console” in the heap).
 */
function chooseWithin(photo: string): void {
  const bytes = Uint8Array.from(atob(photo), (letter) => letter.charCodeAt(0));
  const files = new DataTransfer();
  files.items.add(new File([bytes], 'photo.png', { type: 'image/png' }));
  const field = document.querySelector<HTMLInputElement>('input[type=file]:not([capture])');
  if (!field) throw new Error('no photo can be chosen here');
  field.files = files.files;
  field.dispatchEvent(new Event('change', { bubbles: true }));
}

test('one photo after another leaves no nodes and no listeners behind', async () => {
  const browser = await launchBrowser();
  const { page, context, complaints, close } = await openApp(browser, inject('address'), {
    at: '#/tape',
    size: SMALL_PHONE,
    serviceWorkers: 'block',
  });
  const { file } = photoOf('webcam tape', 1);
  const photo = file.buffer.toString('base64');
  const session = await context.newCDPSession(page);
  await session.send('Performance.enable');
  const left = async () => {
    await session.send('HeapProfiler.collectGarbage');
    const { metrics } = await session.send('Performance.getMetrics');
    const of = (wanted: string) => metrics.find(({ name }) => name === wanted)?.value ?? 0;
    return { nodes: of('Nodes'), listeners: of('JSEventListeners') };
  };
  let warm = await left();
  for (let i = 1; i <= PHOTOS; i++) {
    await page.getByText('Choose a photo').waitFor();
    await page.evaluate(chooseWithin, photo);
    await page.getByRole('slider').waitFor({ timeout: 90_000 });
    await page.locator('.photo svg').tap();
    await page.getByRole('button', { name: 'Another photo' }).tap();
    await page.getByText('Choose a photo').waitFor();
    await page.waitForFunction(() => history.state === null);
    if (i === WARM) warm = await left();
  }
  // What the last photo showed may not have been collected yet; what is held never is.
  const settled = expect.poll(left, { timeout: 30_000 });
  await settled.toSatisfy(({ nodes, listeners }: typeof warm) => {
    return nodes > 0 && nodes <= warm.nodes && listeners <= warm.listeners;
  });
  expect(complaints).toEqual([]);
  await close();
  await browser.close();
}, 400_000);
