import { LENGTH_ALONE, quantityOf, type Typed, workOf } from '../record/from-second.ts';
import { homeOf, readHome } from '../record/home.ts';
import { begunIn, factsOf } from '../record/made-in-second.ts';
import { newGarment } from '../record/new-garment.ts';
import type { Fact, Garment, Part, Work } from '../record/record.ts';
import { numberOf } from '../record/sound.ts';
import { isObject } from '../record/sound-values.ts';
import { plain } from '../record/typing-of.ts';
import type { Known } from '../work-out/seen-work.ts';
import { at, type Edit, edit, type Slot } from './slots.ts';
import { put, type Refused, type Written } from './state.ts';
import { withKeys } from './with-keys.ts';

const MAPS = ['quantities', 'works', 'facts', 'begun'] as const;

/** What is typed and measured on the page of a calculation, as the parts of a garment. */
export type PageParts = Pick<Garment, (typeof MAPS)[number]>;

/**
 * Makes the parts of a garment of what is on a page: a work with every field, or a quantity of
 * one length alone; and a fact of each mark that was measured.
 * @param mark the mark of the bench for decimals, where it isn't the point
 * @param known what its calculation gives; where that is missing, it is looked up another time
 * @param side of a work that is done several times, the one that was measured
 */
export function partsOf(
  page: Typed,
  id: string,
  { known, mark, now, side = '' }: { known: Known; mark?: ','; now: number; side?: string },
): PageParts {
  const bare = newGarment('page', 'page', now);
  if (page.calculation === LENGTH_ALONE) {
    const { parts, ...rest } = quantityOf(page, 0);
    return {
      ...bare,
      quantities: { [id]: { ...rest, parts: parts.map((one) => marked(one, mark)) } },
    };
  }
  const facts = factsOf(page, id, now);
  const begun = begunIn(page, id, now);
  const kept = withKeys({ ...bare, works: { [id]: workOf(page, 0) }, facts, begun }, known);
  const work = kept.works[id] as Work;
  const fields = Object.entries(work.fields).map(
    ([key, parts]) => [key, parts.map((one) => marked(one, mark))] as const,
  );
  const works = { [id]: { ...work, fields: Object.fromEntries(fields) } };
  return side === '' ? { ...kept, works } : { ...onSide(kept, side), works };
}

/** What was made, on one side of its work. */
function onSide(kept: PageParts, side: string): PageParts {
  const there = (home: string) => homeOf(readHome(home).id, side, readHome(home).key);
  const facts = Object.entries(kept.facts).map(([id, fact]) => {
    const { home, ...rest } = fact as Fact;
    return [`${id}-${side}`, { ...rest, home: there(home) }];
  });
  const begun = Object.entries(kept.begun).map(([home, one]) => [there(home), one]);
  return { ...kept, facts: Object.fromEntries(facts), begun: Object.fromEntries(begun) };
}

function marked(part: Part, mark: ',' | undefined): Part {
  return mark && 'text' in part ? { ...part, mark } : part;
}

/** Puts new parts on a garment, as the last of it: one change. */
export function keepNew(state: Written, parts: PageParts, now: number): Written | Refused {
  const edits = MAPS.flatMap((map) =>
    Object.entries(parts[map]).map(([id, one]) => edit(state.record, [map, id], one)),
  );
  return put(
    state,
    'add',
    edits.map((one) => ranked(state.record, one)),
    { now },
  );
}

function ranked({ works, quantities }: Garment, one: Edit): Edit {
  const [map] = one.slot;
  if (map !== 'works' && map !== 'quantities') return one;
  const ranks = [...Object.values(works), ...Object.values(quantities)].map((each) =>
    isObject(each) && typeof each.rank === 'number' ? each.rank : 0,
  );
  return { ...one, after: { ...Object(one.after), rank: Math.max(0, ...ranks) + 1 } };
}

/** Puts what a page says now in the place of what is kept under the same id: one change. */
export function keepAgain(state: Written, parts: PageParts, now: number): Written | Refused {
  const { record } = state;
  const typed = fieldsIn(parts).flatMap(([slot, after]) =>
    isAsTyped(at(record, slot), after) ? [] : edit(record, slot, after),
  );
  const made = Object.entries(parts.facts).map(([id, fact]) => madeEdit(record, id, fact as Fact));
  const begun = Object.entries(parts.begun).flatMap(([home, one]) =>
    Object.hasOwn(record.begun, home) ? [] : edit(record, ['begun', home], one),
  );
  return put(state, 'keep', [...typed, ...made, ...begun], { now });
}

function fieldsIn({ works, quantities }: PageParts): [Slot, unknown][] {
  const all: [Slot, unknown][] = [];
  for (const [id, one] of Object.entries(quantities)) {
    const { name, parts } = Object(one) as Record<string, unknown>;
    all.push([['quantities', id, 'name'], name], [['quantities', id, 'parts'], parts]);
  }
  for (const [id, work] of Object.entries(works)) {
    const { name, fields } = work as Work;
    all.push([['works', id, 'name'], name]);
    for (const [key, it] of Object.entries(fields)) all.push([['works', id, 'fields', key], it]);
  }
  return all;
}

/** The same text in the same unit is what is there already, whoever put it there. */
function isAsTyped(there: unknown, now: unknown): boolean {
  return plain(there) === plain(now);
}

/** The fact of the same mark, where it has one. */
export function factThere({ facts }: Garment, { home, mark }: Fact): [string, Fact] | undefined {
  return (Object.entries(facts) as [string, Fact][]).find(
    ([, one]) => one?.home === home && one.mark?.rank === mark?.rank && one.mark?.of === mark?.of,
  );
}

function madeEdit(record: Garment, id: string, fact: Fact): Edit {
  const there = factThere(record, fact);
  if (!there) return edit(record, ['facts', freeIn(record.facts, id)], fact);
  const [own, { shown }] = there;
  const measured = numberOf(fact) === shown ? undefined : numberOf(fact);
  return edit(record, ['facts', own, 'measured'], measured);
}

function freeIn(facts: Garment['facts'], id: string): string {
  return Object.hasOwn(facts, id) ? freeIn(facts, `${id}+`) : id;
}
