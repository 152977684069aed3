import type { Page } from 'playwright-core';
import { type Maker, makerAt } from './maker.ts';
import { settled } from './settled.ts';

/** Two invented garments, each entered from nothing, as its maker would. */

/** A phone with nothing on it, and a new garment of that name made on it. */
async function newGarment(page: Page, name: string): Promise<Maker> {
  const maker = await onEmptyPhone(page);
  await maker.write(page.getByLabel('A new garment'), name);
  await maker.press('Make');
  await page.locator('.next-key').waitFor();
  return maker;
}

/** From the first page of a phone with nothing on it to its list of garments. */
export async function onEmptyPhone(page: Page): Promise<Maker> {
  // What the first page says of its phone moves the list below it.
  await settled(page);
  const maker = makerAt(page);
  await maker.tap(page.getByRole('link', { name: /^Garments/ }));
  return maker;
}

/** A pleated skirt: pleats and waistband of one waist, a placket of five hooks, a hem. */
export async function enterSkirt(page: Page): Promise<Maker> {
  const maker = await newGarment(page, 'Pleated skirt');
  await maker.measure('Waist, round', '72');
  await maker.add('Pleats');
  await maker.take('Finished', 'Waist, round');
  await maker.choose('Given', 'Number');
  await maker.give('How many', '8');
  await maker.press('Done');
  await maker.add('Equal parts');
  await maker.take('Edge to divide', 'Waist, round');
  await maker.call('Waistband');
  await maker.press('Done');
  await maker.add('Closures');
  await maker.give('Opening', '20');
  await maker.give('How many', '5');
  await maker.call('Placket');
  await maker.press('Done');
  await maker.add('Hem');
  await maker.give('Depth', '4');
  await maker.press('Done');
  return maker;
}

/** A shirt: both sleeves hemmed, cuffs, six buttons down the front and a buttonhole for each. */
export async function enterShirt(page: Page): Promise<Maker> {
  const maker = await newGarment(page, 'Work shirt');
  await maker.measure('Front edge', '62');
  await maker.measure('Cuff, round', '23');
  await maker.add('Hem');
  await maker.call('Sleeve hem', 'left and right');
  await maker.press('right');
  await maker.field('Depth');
  await maker.press('Only right');
  await maker.type('2.5');
  await maker.press('Done');
  await maker.press('Done');
  await maker.add('Equal parts');
  await maker.call('Sleeve into cuff', 'left and right');
  await maker.take('Edge to divide', 'Cuff, round');
  await maker.press('Done');
  await maker.add('Closures');
  await maker.choose('What is placed', 'Buttons');
  await maker.take('Opening', 'Front edge');
  await maker.give('How many', '6');
  await maker.call('Front buttons');
  await maker.press('Done');
  await maker.add('Stitches, buttons, needles');
  await maker.choose('What', 'Button');
  await maker.call('Button');
  await maker.press('Done');
  await maker.add('Buttonhole');
  await maker.take('Button across', 'Button · ');
  await maker.call('Buttonholes', '6 times');
  await maker.press('Done');
  return maker;
}
