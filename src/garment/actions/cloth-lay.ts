import { UNITS_PER_MM } from '../../lengths/length.ts';
import {
  type ClothLay,
  type FoundLay,
  heldAsSaid,
  heldOn,
  keepsHeld,
  layIn,
} from '../record/cloth-lay.ts';
import { isPieceSaid, type PieceSaid } from '../record/piece-said.ts';
import type { Parts, Quantity } from '../record/record.ts';
import { isObject } from '../record/sound-values.ts';
import { same } from '../work-out/same.ts';
import { workOut } from '../work-out/work-out.ts';
import { at, type Edit, edit, type Slot } from './slots.ts';
import { type Done, put, refuse, type State, settle } from './state.ts';

/** What is said of laying a cloth; undefined is said no more. */
export type LaySaying = { id: string } & (
  | { set: { [Key in Exclude<keyof ClothLay, 'pieces'>]?: ClothLay[Key] | undefined } }
  /** Of the pieces of one need. */
  | { piece: string; set: { [Key in keyof PieceSaid]?: PieceSaid[Key] | undefined } }
  /** A lay that a search came to; the number of the garment that is as long, if there is none yet. */
  | { found: FoundLay; quantity?: { id: string; name: string } }
);

/** Says something of laying a cloth: one change, of only what it names. */
export function sayLay(state: State, saying: LaySaying, now: number): Done {
  const { id } = saying;
  const there = at(state.record, ['lays', id]);
  // What a newer build wrote there otherwise is not written over.
  if (there !== undefined && !isObject(there)) {
    return refuse(state, { why: 'not there', what: 'work' });
  }
  const slotted = (set: object, ...inside: Slot) =>
    Object.entries(set).map(([key, said]) =>
      edit(state.record, ['lays', id, ...inside, key], said),
    );
  if ('piece' in saying) {
    if (!isPieceSaid(saying.set)) return refuse(state, { why: 'limit', limit: 'outline' });
    const of = at(state.record, ['lays', id, 'pieces']);
    const one = at(state.record, ['lays', id, 'pieces', saying.piece]);
    if ([of, one].some((it) => it !== undefined && !isObject(it))) {
      return refuse(state, { why: 'not there', what: 'work' });
    }
    return settle(state, 'lay', slotted(saying.set, 'pieces', saying.piece), { now });
  }
  if ('set' in saying) return settle(state, 'lay', slotted(saying.set), { now });
  const lay = layIn(state.record, id);
  const { found } = lay;
  const { folded } = saying.found.of;
  const holds = found && same(found.of, saying.found.of) && keepsHeld(found, heldOn(lay, folded));
  // Two tabs may look: the shorter stays.
  if (holds && found.length <= saying.found.length) return { state };
  // How the cloth lay when something was put there is known by the lay that goes now.
  const turned = lay.held && found && found.of.folded !== folded;
  const said = {
    ...{ found: saying.found },
    ...(turned && { held: heldAsSaid(lay) }),
  };
  return kept(state, [...slotted(said), ...lengthEdits(state, saying)], now);
}

/** The number of the garment that is as long as the lay: given anew, or added behind all others. */
function lengthEdits(
  { record, answer }: State,
  { id, found, quantity }: Extract<LaySaying, { found: FoundLay }>,
): Edit[] {
  const all = [...answer.sound.quantities];
  const known = all.find(([, { lay }]) => lay === id)?.[0];
  const parts: Parts = [{ text: lengthText(found.length), unit: 'mm', mark: '.' }];
  if (known !== undefined) return [edit(record, ['quantities', known, 'parts'], parts)];
  if (!quantity || at(record, ['quantities', quantity.id]) !== undefined) return [];
  const rank = all.reduce((most, [, one]) => Math.max(most, one.rank), 0) + 1;
  const it: Quantity = { name: quantity.name, kind: 'length', rank, parts, lay: id };
  return [edit(record, ['quantities', quantity.id], it)];
}

/** A length as it is typed, in mm, up to the tenth: nobody cuts cloth nearer. */
const lengthText = (units: number) => String(Math.ceil((10 * units) / UNITS_PER_MM) / 10);

/**
 * A lay is kept as it is found, so that nothing found is lost; it was nobody's choice, so there is
 * nothing to take back.
 */
function kept(state: State, edits: readonly Edit[], now: number): Done {
  const done = put(state, 'lay', edits, { now });
  if ('why' in done) return refuse(state, done);
  const { record, size } = done;
  // Only where a number of the garment is as long does anything hang on it.
  const counts = edits.some(({ slot: [map] }) => map === 'quantities');
  const answer = counts ? workOut(record, state.known, state.answer.memory) : state.answer;
  return { state: { ...state, record, size, answer } };
}
