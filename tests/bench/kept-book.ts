import type { Page } from 'playwright-core';
import type { Garment } from '../../src/garment/record/record.ts';
import { keptGarments } from '../browser/kept-garments.ts';
import { madeOf, saidMade, textIn } from '../browser/kept-in-hand.ts';
import { DEEDS, type Deed, type Told, textAfter } from './kill-deeds.ts';

/** What was begun and stored when the browser was killed, and its word of it went with it. */
const UNHEARD = 1;

/** What the app said is kept on a device, beside what is there at its next start. */
export class KeptBook {
  readonly faults: string[] = [];
  readonly #kept: Record<Deed, number> = { 'new garments': 0, Made: 0, settled: 0, pending: 0 };
  readonly #names = new Set<string>();
  /** Facts that were on the device at a start: they stay. */
  #facts = new Set<string>();
  /** Presses since then that were kept, and that were begun. */
  #pressed = { kept: 0, begun: 0 };
  /** What the depth may hold: what was kept last, and what was typed since. */
  #texts: string[] = [];

  note(deed: Deed, [what, text]: Told): void {
    if (what === 'kept') this.#kept[deed] += 1;
    if (deed === 'new garments') {
      if (what === 'kept') this.#names.add(text);
    } else if (deed === 'Made') this.#pressed[what === 'kept' ? 'kept' : 'begun'] += 1;
    else this.#texts = what === 'kept' ? [text] : [...this.#texts, text];
  }

  /** Looks at what is on the disk after a start, and at what the screens say of it. */
  async compare(page: Page, address: string): Promise<void> {
    await page.goto(`${address}#/garments/open?g=row`);
    await page.locator('.in-hand header p').waitFor();
    const { garments, damaged } = await keptGarments(page);
    const row = garments.find(({ id }) => id === 'row');
    if (damaged > 0) this.faults.push(`${damaged} records can't be read`);
    if (!row) return void this.faults.push('the row is gone');
    for (const name of this.#names) {
      if (!garments.some((one) => one.name === name)) this.faults.push(`${name} is gone`);
    }
    this.#compareFacts(row);
    this.#compareText(textIn(row, 'front', 'depth'), 'on the disk');
    await page.locator('.next-key .made').waitFor();
    const said = await saidMade(page);
    if (said !== madeOf(row)) this.faults.push(`home says ${said}, not ${madeOf(row)} made`);
    await page.goto(`${address}#/garments/open?g=row&w=front`);
    const shown = await page.locator('.garment-work input[name=depth]').inputValue();
    this.#compareText(shown, 'on the screen');
    this.#texts = [shown];
  }

  #compareFacts({ facts }: Garment): void {
    const there = new Set(Object.keys(facts));
    for (const id of this.#facts) if (!there.has(id)) this.faults.push(`fact ${id} is gone`);
    const fresh = there.size - this.#facts.size;
    const { kept, begun } = this.#pressed;
    if (fresh < kept || fresh > begun + UNHEARD) {
      this.faults.push(`${fresh} new facts of ${kept} presses kept and ${begun} begun`);
    }
    this.#facts = there;
    this.#pressed = { kept: 0, begun: 0 };
  }

  #compareText(text: string, where: string): void {
    const last = this.#texts.at(-1);
    if (last !== undefined && ![...this.#texts, textAfter(last)].includes(text)) {
      this.faults.push(`"${text}" ${where}, not one of ${this.#texts.join(', ')}`);
    }
  }

  /** Nothing is lost, and something of each kind was kept. */
  isGood(): boolean {
    return this.faults.length === 0 && DEEDS.every((deed) => this.#kept[deed] > 0);
  }

  summary(): string {
    const kept = DEEDS.map((deed) => `${this.#kept[deed]} ${deed}`).join(', ');
    return `kept: ${kept}; ${this.#facts.size} facts; ${this.faults.length} faults`;
  }
}
