import type { Bench } from '../../calculation/bench.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import type { Outputs } from '../../calculation/output.ts';
import type { Page, PageState } from '../../calculation/page.ts';
import { OUTPUTS } from '../../calculations/list.ts';
import { keepAgain, keepNew, type PageParts, partsOf } from '../../garment/actions/keep.ts';
import { isMeasuredTwice, isThere } from '../../garment/actions/keep-asks.ts';
import { begin, type Done, type State } from '../../garment/actions/state.ts';
import { tooMuchKept } from '../../garment/actions/too-much.ts';
import { settleTyping } from '../../garment/actions/typing.ts';
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
  const kept = (state: State) => done(keeping, state, parts, known, now);
  let to = wish.garment;
  let record: Garment;
  if (to === '') {
    const fresh = newGarment(crypto.randomUUID(), wish.newName, now);
    to = fresh.id;
    record = kept(begin(fresh, NOTHING_KNOWN)).record;
    await addGarment(store, { ...record, edits: 1 });
  } else {
    ({ record } = await changeGarment(store, to, (logged) => {
      const state = begin(logged.record, NOTHING_KNOWN, logged.log);
      const { record: next, log } = kept(settleTyping(state, now).state);
      return { record: next, log };
    }));
  }
  await rememberOpen(store, to);
  const seen = typingOf(keptIn(record, id));
  return { draft: page.draft, page: { ...asKept(page.page), kept: placeOf(to, id), seen } };
}

/** Nothing has to be worked out to put numbers down: that is done where the garment is shown. */
const NOTHING_KNOWN: Known = new Map();

async function knownOf(calculation: string): Promise<Known> {
  const load: (() => Promise<Outputs>) | undefined = OUTPUTS[calculation];
  // Without it the work is kept all the same, and looked up when it is next opened.
  const gives = await load?.().catch(() => undefined);
  return gives ? new Map([[calculation, gives]]) : NOTHING_KNOWN;
}

function done(
  { state: { page }, again, asked }: Keeping,
  state: State,
  parts: PageParts,
  known: Known,
  now: number,
): State {
  const there = again && keptIn(state.record, again.id);
  const fault = faultOf(state.record, parts, there && again.seen, page);
  if (fault && fault !== asked) throw new GarmentError(fault);
  const limit = tooMuchOf(parts, known);
  if (limit) throw new GarmentError(limit);
  const kept: Done = there ? keepAgain(state, parts, now) : keepNew(state, parts, now);
  if (kept.refused) throw new GarmentError('limit');
  return kept.state;
}

/** What a page has too much of; a page takes nothing from elsewhere, so that no field has too many links. */
function tooMuchOf(parts: PageParts, known: Known): 'length' | 'row' | undefined {
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
