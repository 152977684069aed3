import { isId } from './home.ts';
import { MOST_SIDES } from './limits.ts';
import { plainText } from './plain-text.ts';
import type {
  Begun,
  Decision,
  Fact,
  Garment,
  Kept,
  MadeBefore,
  Note,
  Quantity,
  Work,
} from './record.ts';
import {
  isBefore,
  isBegun,
  isDecision,
  isFact,
  isKind,
  isNote,
  isObject,
  isPlace,
} from './sound-values.ts';

/** Something of a record that can't be worked with; it stays as it is. */
export interface Unsound {
  part: 'quantity' | 'work' | 'fact' | 'begun' | 'decision';
  id: string;
}

export interface KnownFact {
  id: string;
  fact: Fact;
}

export interface KnownBefore {
  id: string;
  fact: MadeBefore;
}

/** Of a record what can be worked with; fields are still anyone's, and read one by one. */
export interface Sound {
  /** Made up to show the app with. */
  invented: boolean;
  unsound: readonly Unsound[];
  /** In order of rank. */
  quantities: ReadonlyMap<string, Quantity>;
  works: ReadonlyMap<string, Work>;
  /** By home, in the order they lie in. */
  facts: ReadonlyMap<string, readonly KnownFact[]>;
  /** By home, what was made before the app knew; none where a number of it is known. */
  before: ReadonlyMap<string, KnownBefore>;
  begun: ReadonlyMap<string, Begun>;
  decisions: ReadonlyMap<string, Decision>;
  /** Homes of the steps that were passed over. */
  passed: ReadonlySet<string>;
  notes: ReadonlyMap<string, Note>;
}

/** What was looked at before, by the very object: a garment changes by making new ones. */
export type Seen = WeakMap<object, unknown>;

/** Reads a record as far as it is sound. Ids are keys of maps: no two works have one. */
export function soundOf(garment: Garment, seen: Seen = new WeakMap()): Sound {
  const unsound: Unsound[] = [];
  const pick = <One>(kept: Kept, part: Unsound['part'], look: (one: unknown) => One | undefined) =>
    Object.entries(kept).flatMap(([id, one]): [string, One][] => {
      const good = once(seen, one, look);
      if (good === undefined) unsound.push({ part, id });
      return good === undefined ? [] : [[id, good]];
    });
  const named = <One>(pairs: [string, One][], part: Unsound['part'], taken?: Kept) =>
    pairs.filter(([id]) => {
      const good = isId(id) && !(taken && Object.hasOwn(taken, id));
      if (!good) unsound.push({ part, id });
      return good;
    });
  const quantities = named(pick(garment.quantities, 'quantity', quantityIn), 'quantity');
  const works = named(pick(garment.works, 'work', workIn), 'work', garment.quantities);
  const made = pick(garment.facts, 'fact', madeIn);
  const facts = byHome(made.filter(isNumbered), unsound);
  const begun = pick(garment.begun, 'begun', begunIn);
  const decided = pick(garment.decisions, 'decision', decisionIn);
  return {
    invented: garment.invented,
    quantities: new Map(quantities.sort(byRank)),
    works: new Map(works.sort(byRank)),
    facts,
    before: withoutNumber(made.filter(isUnnumbered), facts, unsound),
    begun: new Map(begun),
    decisions: new Map(decided),
    passed: new Set(pairsIn(garment.passed).flatMap(([home, is]) => (is === true ? home : []))),
    notes: new Map(
      pairsIn(garment.notes).flatMap(([home, one]): [string, Note][] =>
        isNote(one) ? [[home, noteIn(one)]] : [],
      ),
    ),
    unsound,
  };
}

function once<One>(seen: Seen, one: unknown, look: (one: unknown) => One | undefined) {
  if (typeof one !== 'object' || one === null) return undefined;
  const before = seen.get(one) as { look: unknown; good: One | undefined } | undefined;
  if (before?.look === look) return before.good;
  const good = look(one);
  seen.set(one, { look, good });
  return good;
}

function byRank(a: [string, { rank: number }], b: [string, { rank: number }]): number {
  return a[1].rank - b[1].rank || (a[0] < b[0] ? -1 : 1);
}

type Made = Fact | MadeBefore;
const madeIn = (one: unknown): Made | undefined => (isBefore(one) || isFact(one) ? one : undefined);
const isUnnumbered = (one: [string, Made]): one is [string, MadeBefore] => 'before' in one[1];
const isNumbered = (one: [string, Made]): one is [string, Fact] => !isUnnumbered(one);
const pairsIn = (kept: unknown) => (isObject(kept) ? Object.entries(kept) : []);
const begunIn = (one: unknown) => (isBegun(one) ? one : undefined);
const decisionIn = (one: unknown) => (isDecision(one) ? one : undefined);

function quantityIn(one: unknown): Quantity | undefined {
  if (!isObject(one) || !isKind(one.kind)) return undefined;
  const { plusMinus, measure, lay, ...rest } = one as unknown as Quantity;
  if (plusMinus !== undefined && !(isPlace(plusMinus) && plusMinus >= 0)) return undefined;
  return {
    ...rest,
    ...(plusMinus !== undefined && { plusMinus }),
    ...(typeof measure === 'string' && { measure }),
    ...(typeof lay === 'string' && { lay }),
    name: nameIn(one),
    rank: rankIn(one),
  };
}

function workIn(one: unknown): Work | undefined {
  if (!isObject(one) || typeof one.calculation !== 'string' || !isObject(one.fields)) {
    return undefined;
  }
  const { sides: _, own, moved, movedSides, ...rest } = one as unknown as Work;
  const sides = sidesIn(one.sides);
  return {
    ...rest,
    name: nameIn(one),
    rank: rankIn(one),
    ...(sides.length > 0 && { sides }),
    ...(isObject(own) && { own }),
    ...(isObject(moved) && { moved }),
    ...(isObject(movedSides) && { movedSides }),
  };
}

function nameIn({ name }: Readonly<Record<string, unknown>>): string {
  return typeof name === 'string' ? plainText(name) : '';
}

function noteIn({ text, ...note }: Note): Note {
  return { ...note, ...(text !== undefined && { text: plainText(text) }) };
}

function rankIn({ rank }: Readonly<Record<string, unknown>>): number {
  return isPlace(rank) ? rank : 0;
}

function sidesIn(read: unknown): string[] {
  if (!Array.isArray(read)) return [];
  const sides = read.filter((side): side is string => isId(side) && side !== 'total');
  return [...new Set(sides)].slice(0, MOST_SIDES);
}

/** Facts in the order they lie in. Of a step that is no row the last one made counts; a row's have marks. */
function byHome(facts: [string, Fact][], unsound: Unsound[]): Map<string, KnownFact[]> {
  const homes = new Map<string, KnownFact[]>();
  for (const [id, fact] of facts) {
    const there = homes.get(fact.home);
    if (there) there.push({ id, fact });
    else homes.set(fact.home, [{ id, fact }]);
  }
  for (const [home, all] of homes) {
    all.sort(inOrder);
    const marks = all.filter(({ fact }) => fact.mark);
    if (marks.length === 0 && all.length > 1) {
      for (const { id } of all.slice(0, -1)) unsound.push({ part: 'fact', id });
      homes.set(home, all.slice(-1));
    } else if (marks.length > 0 && marks.length < all.length) {
      for (const { id, fact } of all) if (!fact.mark) unsound.push({ part: 'fact', id });
      homes.set(home, marks);
    }
  }
  return homes;
}

/** What is made and has no number; where one is known after all, that counts. */
function withoutNumber(
  made: [string, MadeBefore][],
  numbered: ReadonlyMap<string, unknown>,
  unsound: Unsound[],
): Map<string, KnownBefore> {
  const homes = new Map<string, KnownBefore>();
  for (const [id, fact] of made.sort(([a], [b]) => (a < b ? -1 : 1))) {
    const counts = !numbered.has(fact.home) && !homes.has(fact.home);
    if (counts) homes.set(fact.home, { id, fact });
    else unsound.push({ part: 'fact', id });
  }
  return homes;
}

function inOrder(a: KnownFact, b: KnownFact): number {
  const [one, other] = [numberOf(a.fact), numberOf(b.fact)];
  return (
    one - other || (a.fact.mark?.rank ?? 0) - (b.fact.mark?.rank ?? 0) || (a.id < b.id ? -1 : 1)
  );
}

/** What is there: measured, else what stood on the key. */
export function numberOf(fact: Fact): number {
  return fact.measured ?? fact.shown;
}
