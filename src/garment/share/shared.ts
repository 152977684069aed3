import { asTyped } from '../../calculation/draft-text.ts';
import type { Kind } from '../../calculation/output.ts';
import { exactLength } from '../../lengths/length.ts';
import { todays, turnParts } from '../actions/put.ts';
import { edited } from '../actions/slots.ts';
import type { State } from '../actions/state.ts';
import { homeOf, readHome } from '../record/home.ts';
import { materialsWithout } from '../record/material.ts';
import { linkOf } from '../record/parts.ts';
import type { Garment, Kept, Part, Quantity, TextPart } from '../record/record.ts';
import { type KnownFact, numberOf } from '../record/sound.ts';
import { isObject } from '../record/sound-values.ts';
import { knownOnly } from './known-keys.ts';

/** What the maker lets go along. */
export interface ShareWish {
  /** Measures of someone's body, with their names. */
  bodies: boolean;
  notes: boolean;
  times: boolean;
  /** What is made goes along as made, so that another can go on with it; else as notes. */
  goOn: boolean;
  /** Nothing that this version of the app doesn't know. */
  knownOnly: boolean;
}

/** What was left out, counted. */
export interface LeftOut {
  bodies: number;
  /** Numbers that are typed in the place of those. */
  typed: number;
  notes: number;
  photos: number;
  /** What is made goes along as notes only. */
  facts: number;
}

/** A garment to be handed on, which says of itself what was left out. */
export interface SharedGarment extends Garment {
  shared: LeftOut;
}

/** Says of what was made of one number that it was, for a note. */
export type SayMade = (home: string, kind: Kind, numbers: readonly number[]) => string;

/**
 * A garment as it is handed on: under an id of its own, so that it is never taken for the one it is
 * from; without what is being typed, and without what the maker doesn't let go along.
 *
 * @param id a new one
 */
export function sharedGarment(
  state: State,
  wish: ShareWish,
  id: string,
  sayMade: SayMade,
): SharedGarment {
  const { record, answer } = state;
  const bodies = new Set(wish.bodies ? [] : bodiesIn(record));
  let typed = 0;
  const edits = turnParts(state, (part, side) => {
    const link = linkOf(part);
    if (!link || !('quantity' in link) || !bodies.has(link.quantity)) return part;
    typed += 1;
    return typedNow(state, part, side);
  });
  const {
    pending: _,
    passed,
    notes,
    materials,
    ...rest
  } = wish.goOn ? edited(record, edits) : withMeasured(edited(record, edits), state);
  const stays = (home: string) => !bodies.has(readHome(home).id);
  const said = notesIn(record).filter(([home]) => stays(home));
  const given = wish.notes ? said.filter(([, { text }]) => text !== undefined) : [];
  const made = [...answer.sound.facts].filter(([home]) => stays(home));
  const whole: Garment = {
    ...rest,
    ...{ id, changed: wish.times ? record.changed : 0, edits: 1 },
    quantities: without(rest.quantities, (key) => !bodies.has(key)),
    facts: wish.goOn
      ? mapped(
          without(rest.facts, () => true),
          stays,
          wish.times,
        )
      : {},
    begun: wish.goOn ? without(rest.begun, stays) : {},
    decisions: wish.goOn ? without(rest.decisions, stays) : {},
    ...(wish.goOn && passed && { passed }),
    // Another buys for themselves.
    ...(materials && {
      materials: wish.goOn ? materials : materialsWithout(materials, 'there', 'price'),
    }),
  };
  const asNotes = wish.goOn ? [] : made.map(([home, all]) => noteOf(state, home, all, sayMade));
  const all = joined([...given.map(([home, { text = '' }]) => [home, text] as const), ...asNotes]);
  const shared: LeftOut = {
    ...{ bodies: bodies.size, typed },
    notes: said.filter(([, { text }]) => text !== undefined).length - given.length,
    photos: said.filter(([, { photo }]) => photo !== undefined).length,
    facts: wish.goOn ? 0 : made.reduce((sum, [, facts]) => sum + facts.length, 0),
  };
  const garment = { ...whole, ...(Object.keys(all).length > 0 && { notes: all }) };
  return { ...(wish.knownOnly ? onlyKnown(garment) : garment), shared };
}

/** Whatever a newer app or a damaged record says there: what may be of a body is. */
function bodiesIn({ quantities }: Garment): string[] {
  return Object.entries(quantities).flatMap(([id, one]) =>
    isObject(one) && (one.body || one.measure !== undefined) ? id : [],
  );
}

/** Today's number of a part as it is typed; nothing where there is none. */
function typedNow(state: State, part: Part, side: string): TextPart {
  const now = 'link' in part ? todays(state, part, side) : part;
  if ('put' in now) return typedNumber(now.kind, now.put);
  const { was: _, ...text } = now as TextPart;
  return text;
}

function typedNumber(kind: Kind, number: unknown): TextPart {
  if (typeof number !== 'number') return { text: '', unit: 'cm' };
  const said =
    kind === 'length'
      ? asTyped(exactLength(number), { unit: 'cm', decimalMark: '.' })
      : String(number);
  return { text: number < 0 ? `(${said})` : said, unit: 'cm' };
}

/** What was measured is typed: its fact doesn't go along. */
function withMeasured(record: Garment, { answer }: State): Garment {
  const measured = [...answer.sound.quantities].flatMap(([id, quantity]): [string, Quantity][] => {
    const fact = answer.sound.facts.get(homeOf(id))?.at(-1)?.fact;
    if (!fact) return [];
    return [[id, { ...quantity, parts: [typedNumber(quantity.kind, numberOf(fact))] }]];
  });
  return { ...record, quantities: { ...record.quantities, ...Object.fromEntries(measured) } };
}

function without(kept: Kept, stays: (key: string) => boolean): Kept {
  return Object.fromEntries(Object.entries(kept).filter(([key]) => stays(key)));
}

/** Facts of what goes along; without times where they don't. */
function mapped(facts: Kept, stays: (home: string) => boolean, times: boolean): Kept {
  return Object.fromEntries(
    Object.entries(facts).flatMap(([id, fact]) => {
      if (!isObject(fact) || typeof fact.home !== 'string' || !stays(fact.home)) return [];
      return [[id, times ? fact : { ...fact, when: 0 }]];
    }),
  );
}

function notesIn({ notes }: Garment): [string, { text?: string; photo?: string }][] {
  return Object.entries(Object(notes) as Kept).flatMap(([home, note]) => {
    if (!isObject(note)) return [];
    const { text, photo } = note;
    return [
      [
        home,
        {
          ...(typeof text === 'string' && { text }),
          ...(typeof photo === 'string' && { photo }),
        },
      ],
    ];
  });
}

function noteOf(
  { answer }: State,
  home: string,
  facts: readonly KnownFact[],
  sayMade: SayMade,
): readonly [string, string] {
  const kind = answer.nodes.get(home)?.kind ?? 'length';
  const numbers = facts.map(({ fact }) => numberOf(fact));
  return [home, sayMade(home, kind === 'run' ? 'length' : kind, numbers)];
}

function joined(notes: readonly (readonly [string, string])[]): Kept {
  const all = new Map<string, string>();
  for (const [home, text] of notes) {
    const before = all.get(home);
    all.set(home, before === undefined ? text : `${before}\n${text}`);
  }
  return Object.fromEntries([...all].map(([home, text]) => [home, { text }]));
}

function onlyKnown(garment: Garment): Garment {
  const { version, id, name, invented, changed, edits, passed, notes, materials, lays } = garment;
  return {
    ...{ version, id, name, invented, changed, edits },
    quantities: knownOnly('quantities', garment.quantities),
    works: knownOnly('works', garment.works),
    facts: knownOnly('facts', garment.facts),
    begun: knownOnly('begun', garment.begun),
    decisions: knownOnly('decisions', garment.decisions),
    ...(passed && { passed }),
    ...(materials && { materials: knownOnly('materials', materials) }),
    ...(lays && { lays: knownOnly('lays', lays) }),
    ...(notes && { notes: knownOnly('notes', notes) }),
  };
}
