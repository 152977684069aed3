import { expect, test } from 'vitest';
import { CALCULATION_NAMES, calculationName } from '#words/calculations/calculation-names.ts';
import { calculationUses } from '#words/calculations/calculation-uses.ts';
import { SCREEN_WORDS } from '#words/phone/home-words.ts';
import { STAGES } from '../../src/calculation/output.ts';
import { CALCULATIONS } from '../../src/calculations/list.ts';

const ids = Object.values(calculationUses).flatMap(({ of }) => Object.keys(of));

test('every calculation of the list is named once, at a stage of the work, in their order', () => {
  expect([...ids].sort()).toEqual(Object.keys(CALCULATIONS).sort());
  expect(Object.keys(CALCULATION_NAMES).sort()).toEqual(Object.keys(CALCULATIONS).sort());
  expect(Object.keys(calculationUses)).toEqual(STAGES.filter((stage) => stage in calculationUses));
});

/** Whose page says more than its name in a list. */
const SAYS_MORE = ['edging', 'facing', 'lacing', 'opening', 'parts', 'seam'];

test('a page is titled as its calculation is called, or says more', async () => {
  const other: string[] = [];
  for (const [id, page] of Object.entries(CALCULATIONS)) {
    if ((await page()).title !== calculationName(id)) other.push(id);
  }
  expect(other.sort()).toEqual(SAYS_MORE);
});

test('home calls a calculation as its page or the list of all does', async () => {
  for (const [id, title] of Object.entries(SCREEN_WORDS)) {
    const page = await CALCULATIONS[id]?.();
    if (page) expect([page.title, calculationName(id)]).toContain(title);
  }
});

test('what is no calculation has no name, whatever it is called', () => {
  expect(calculationName('settings')).toBeUndefined();
  expect(calculationName('constructor')).toBeUndefined();
});
