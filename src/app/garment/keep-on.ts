import type { Bench } from '../../calculation/bench.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import type { Outputs } from '../../calculation/output.ts';
import type { Page, PageState } from '../../calculation/page.ts';
import { OUTPUTS } from '../../calculations/list.ts';
import { keepAgain, keepNew, type PageParts, partsOf } from '../../garment/actions/keep.ts';
import { isMeasuredTwice, isThere } from '../../garment/actions/keep-asks.ts';
import { type Written, written } from '../../garment/actions/state.ts';
import { tooFar, tooMuchKept } from '../../garment/actions/too-much.ts';
import { putTyping } from '../../garment/actions/typing.ts';
import { newGarment } from '../../garment/record/new-garment.ts';
import type { Garment } from '../../garment/record/record.ts';
import { typingOf } from '../../garment/record/typing-of.ts';
import type { Known } from '../../garment/work-out/seen-work.ts';
import type { KeepWish } from '../../screens/garments/keep.tsx';
import {
  addGarment,
  changeGarment,
  GarmentError,
  type GarmentFault,
} from '../../storage/garments.ts';
import type { Store } from '../../storage/store.ts';
import { rememberOpen } from './deeds.ts';
import { keptIn, placeOf } from './opened.ts';
import { asKept, measuredAtFirst, typedOn } from './page-kept.ts';
import { tellTabs } from './tabs.ts';

interface Keeping {
  calculation: Calculation;
  /** What is on its page. */
  state: PageState;
  bench: Bench;
  wish: KeepWish;
  /** What it is kept in place of, and what was typed there when that was last seen. */
  again: { id: string; seen: string } | undefined;
  /** What was asked of the maker already. */
  asked: GarmentFault | undefined;
}

/**
 * Keeps what is on a calculation's page on a garment.
 * @returns what is on the page then: it says where it is kept
 * @throws GarmentError, also for what is to be asked first
 */
export async function keepOn(store: Store, keeping: Keeping): Promise<PageState> {
  const { calculation, state: page, bench, wish, again } = keeping;
  const id = again?.id ?? crypto.randomUUID();
  const now = Date.now();
  const typed = { ...typedOn(calculation, page, bench), name: wish.name.trim() };
  const known = await knownOf(calculation.id);
  const mark = bench.decimalMark === ',' ? { mark: bench.decimalMark } : {};
  const side = again && wish.side !== undefined ? { side: wish.side } : {};
  const parts = partsOf(typed, id, { known, now, ...mark, ...side });
  // Nothing has to be worked out to put numbers down: that is done where the garment is shown.
  const limit = tooFar(typed) ?? tooMuchOf(parts, known);
  const kept = (before: Written) => done(keeping, before, parts, limit, now);
  let to = wish.garment;
  let record: Garment;
  if (to === '') {
    const fresh = newGarment(crypto.randomUUID(), wish.newName, now);
    to = fresh.id;
    record = kept(written(fresh)).record;
    await addGarment(store, { ...record, edits: 1 });
  } else {
    ({ record } = await changeGarment(store, to, (logged) => {
      const before = putTyping(written(logged.record, logged.log), now);
      const { record: next, log } = kept(before);
      return { record: next, log };
    }));
  }
  tellTabs(to);
  // It is kept: which garment is open then is written behind it, and what reads that waits for it.
  void rememberOpen(store, to);
  const seen = typingOf(keptIn(record, id));
  return { draft: page.draft, page: { ...asKept(page.page), kept: placeOf(to, id), seen } };
}

/** Fetches what keeping a calculation takes, so that the press has nothing to wait for but the disk. */
export async function readyToKeep({ id }: Calculation): Promise<void> {
  await knownOf(id);
}

async function knownOf(calculation: string): Promise<Known> {
  const load: (() => Promise<Outputs>) | undefined = OUTPUTS[calculation];
  // Without it the work is kept all the same, and looked up when it is next opened.
  const gives = await load?.().catch(() => undefined);
  return new Map(gives ? [[calculation, gives]] : []);
}

function done(
  { state: { page }, again, asked }: Keeping,
  before: Written,
  parts: PageParts,
  limit: PageLimit | undefined,
  now: number,
): Written {
  const there = again && keptIn(before.record, again.id);
  const fault = faultOf(before.record, parts, there && again.seen, page);
  if (fault && fault !== asked) throw new GarmentError(fault);
  if (limit) throw new GarmentError(limit);
  const kept = there ? keepAgain(before, parts, now) : keepNew(before, parts, now);
  if ('why' in kept) throw new GarmentError('limit');
  return kept;
}

type PageLimit = 'length' | 'row';

/** What a page has too much of; a page takes nothing from elsewhere, so that no field has too many links. */
function tooMuchOf(parts: PageParts, known: Known): PageLimit | undefined {
  const limit = tooMuchKept(parts, known);
  return limit === 'length' || limit === 'row' ? limit : undefined;
}

/** What is to be asked about before it is kept. */
function faultOf(
  record: Garment,
  parts: PageParts,
  seen: string | undefined,
  page: Page,
): GarmentFault | undefined {
  if (seen === undefined) return isThere(record, parts) ? 'there' : undefined;
  const [id = ''] = Object.keys({ ...parts.works, ...parts.quantities });
  const typing = typingOf(keptIn(record, id));
  const same = typing === seen || typing === typingOf(parts.works[id] ?? parts.quantities[id]);
  if (!same) return 'changed';
  return isMeasuredTwice(record, parts, measuredAtFirst(page)) ? 'measured' : undefined;
}
