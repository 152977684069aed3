import type { Locator, Page } from 'playwright-core';

/** The key takes no press so soon after its words changed, in ms: what was meant for the words before. */
const SETTLING = 400;

/** On the pad, what a screen reader calls a key that isn't a figure. */
const KEY_NAMES: Readonly<Record<string, string>> = { '.': 'decimal mark' };

export type Maker = ReturnType<typeof makerAt>;

/** A maker with a garment in hand on a phone with touch: each press is counted. */
export function makerAt(page: Page) {
  let presses = 0;
  const tap = async (target: Locator) => {
    presses += 1;
    await target.tap();
  };
  const press = (name: string | RegExp) =>
    tap(page.getByRole('button', { name, exact: typeof name === 'string' }));
  const type = async (text: string) => {
    for (const key of text) {
      const pad = page.locator('.pad');
      await tap(pad.getByRole('button', { name: KEY_NAMES[key] ?? key, exact: true }));
    }
  };
  const write = async (field: Locator, words: string) => {
    await tap(field);
    await field.fill(words);
  };
  return {
    get presses() {
      return presses;
    },
    ...{ tap, press, type, write },
    /** What the key says, in one line. */
    said: () => page.locator('.next-key .says').textContent().then(inLine),
    /** What its large part does. */
    face: () => page.locator('.next-key .made').textContent(),
    /** How many steps of the garment are made, as home says it. */
    made: () => page.locator('.in-hand header p').textContent(),
    /** Presses the key once its words have stood long enough to be read (by the page's clock, which is moved on), and waits for others. */
    async key() {
      const key = page.locator('.next-key');
      const before = await key.textContent();
      await page.clock.fastForward(SETTLING + 20);
      await tap(key.locator('.made'));
      await page.waitForFunction(
        (was) => document.querySelector('.next-key')?.textContent !== was,
        before,
        { timeout: 10_000 },
      );
    },
    /** Adds a work; it opens. */
    async add(calculation: string) {
      await press('Add');
      await press(calculation);
      await page.locator('.garment-work .dimension').first().waitFor();
    },
    /** Names the work that is open, and says how often it is done. */
    async call(name: string, often?: string) {
      await press('More');
      await press('Name it, or do it several times');
      await write(page.getByLabel('Its name'), name);
      if (often !== undefined) await press(often);
      await press('Keep');
      await press('Less');
    },
    /** Touches a field of the open work: where it stands on the drawing, else in its list. */
    async field(label: string) {
      const drawn = page.locator('button.dimension').filter({ hasText: label });
      if ((await drawn.count()) > 0) return tap(drawn.first());
      const listed = page.locator('.seen .tile').filter({ hasText: label }).first();
      if ((await listed.count()) > 0) return tap(listed);
      await press('More');
      await tap(listed);
    },
    /** Types a number into a field of the open work. */
    async give(label: string, text: string) {
      await this.field(label);
      await type(text);
      await press('Done');
    },
    /** Takes a number of the garment into a field of the open work. */
    async take(label: string, name: string) {
      await this.field(label);
      await press('From the garment');
      await tap(page.locator('.offered button').filter({ hasText: name }).first());
      await press('Done');
    },
    /** Chooses one of the ways of a field that is no number. */
    async choose(label: string, way: string) {
      await this.field(label);
      await press(way);
      await press('Done');
    },
    /** Adds a number of the garment, typed on the pad; home again. */
    async measure(name: string, number: string) {
      await press('Measures');
      await press('Add a number');
      await write(page.getByLabel('Name'), name);
      await press('Add');
      await type(number);
      await press('Done');
      await press('Done');
      await press('Done');
    },
    /** The next step was made elsewhere than its number says. */
    async madeAt(number: string) {
      await tap(page.locator('.next-key .says'));
      await press('Made elsewhere');
      await type(number);
      await press('Keep this measure');
    },
  };
}

function inLine(text: string | null): string {
  return (text ?? '').replace(/\s+/g, ' ').trim();
}
