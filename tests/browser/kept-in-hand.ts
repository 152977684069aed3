import type { Page } from 'playwright-core';
import { begin } from '../../src/garment/actions/state.ts';
import { type FieldPlace, pendingOf, slotOf } from '../../src/garment/actions/typing.ts';
import { withKeys } from '../../src/garment/actions/with-keys.ts';
import { stepsMade } from '../../src/garment/next/work-lines.ts';
import type { Garment, Parts, Work } from '../../src/garment/record/record.ts';
import { KNOWN } from '../garment/trial/known.ts';

/** How many steps of a garment are made, by its record. */
export function madeOf(garment: Garment): number {
  return stepsMade(begin(withKeys(garment, KNOWN), KNOWN).answer).made;
}

/** How many steps of the garment in hand are made, as its home says. */
export async function saidMade(page: Page): Promise<number> {
  const said = await page.locator('.in-hand header p').textContent();
  return Number.parseInt(said ?? '', 10);
}

/** What was typed into a field of a work, be it settled or not. */
export function textIn(garment: Garment, work: string, field: string): string {
  const pending = pendingOf(garment);
  const place: FieldPlace = { work, field };
  const isHere = pending !== undefined && String(slotOf(pending.place)) === String(slotOf(place));
  const { fields } = (garment.works[work] ?? { fields: {} }) as Pick<Work, 'fields'>;
  return textOf(isHere ? pending.parts : fields[field]);
}

function textOf(parts: Parts | undefined): string {
  const [part] = parts ?? [];
  return part && 'text' in part ? part.text : '';
}
