import { garmentMaterialsWords as words } from '#words/garment/garment-materials-words.ts';
import { MATERIALS } from '../../../calculation/material.ts';
import type { MaterialNow } from '../../../garment/materials/materials.ts';
import { plainText } from '../../../garment/record/plain-text.ts';
import { workName } from '../said/names.ts';
import type { Telling } from '../said/told-words.ts';
import { amountText } from './materials-text.ts';

/** What a material is called: as its maker does, by the work that takes it, or as what it is. */
export function materialName({ answer }: Telling, one: MaterialNow): string {
  const name = plainText(one.said.name ?? '').trim();
  if (name !== '') return name;
  const work = byWork(one);
  return work === undefined ? words.kinds[one.kind] : workName({ answer }, work);
}

/** The work it is called by: one that takes something of its own. */
function byWork({ kind, own, needs, could }: MaterialNow): string | undefined {
  const [need] = needs.length > 0 ? needs : could;
  return own || MATERIALS[kind] === 'laid' ? undefined : need?.work;
}

/** How much of it to buy; never a sure number where there is none. */
export function materialAmount({ bench }: Telling, one: MaterialNow): string {
  const amount = amountText(one.form, one.buy, bench);
  if (one.buy === 0) return words.nothingYet;
  if (one.unsure.length > 0) return words.soFar(amount);
  return one.bound ? words.atMost(amount) : amount;
}

/** What matters of it in a line. */
export function materialNote(telling: Telling, one: MaterialNow): string {
  const { unsure, state, said, lacks, stops, needs, own, form, spools } = one;
  const none = needs.length === 0 && !own && said.more === undefined;
  const lacking = said.there !== undefined && lacks > 0;
  const [first, ...more] = unsure;
  return words.line([
    byWork(one) === undefined && said.name === undefined ? '' : words.kinds[one.kind],
    none ? words.notTaken : '',
    spools && spools.count > 0 ? words.spools(spools.count) : '',
    first ? words.others(words.open[first.why], more.length) : howLaid(one),
    state === 'made' ? words.made : state === 'partly made' ? words.partly : '',
    lacking ? words.lacking(amountText(form, lacks, telling.bench)) : '',
    stops.length > 0 ? words.stops(worksNamed(telling, stops)) : '',
  ]);
}

function howLaid({ bound, lay }: MaterialNow): string {
  if (bound) return words.bound;
  return lay?.found && !lay.stale ? words.asLaid : '';
}

/** Works by their names. */
export function worksNamed({ answer }: Telling, works: readonly string[]): string[] {
  return works.map((id) => workName({ answer }, id));
}
