import { withApp } from '../bench/with-app.ts';
import { openApp } from './harness.ts';

/** `npm run picture`: the picture of the README, three screens beside each other. */
const SCREENS = ['#/convert', '#/closures', '#/closures/follow?at=2'];
const SIZE = { width: 390, height: 780 };
const TO = 'tests/browser/pictures/readme.png';

await withApp(async (browser, address) => {
  const pictures: string[] = [];
  for (const at of SCREENS) {
    const { page, close } = await openApp(browser, address, { at, size: SIZE });
    await page.locator('.tape svg').waitFor();
    pictures.push((await page.screenshot({ scale: 'css' })).toString('base64'));
    await close();
  }
  const width = (SIZE.width + 16) * pictures.length - 16;
  const page = await browser.newPage({ viewport: { width, height: SIZE.height } });
  const images = pictures.map((data) => `<img src="data:image/png;base64,${data}">`);
  await page.setContent(
    `<body style="margin:0;display:flex;gap:16px;background:#777">${images.join('')}</body>`,
  );
  await page.screenshot({ path: TO });
  console.log(TO);
});
