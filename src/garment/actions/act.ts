import type { Limit } from '../record/limits.ts';
import type { Note, Parts, Quantity, Work } from '../record/record.ts';
import { type Before, makeBefore, pass } from './before.ts';
import { type LaySaying, sayLay } from './cloth-lay.ts';
import { decide } from './decide.ts';
import { type Making, make, unmake } from './make.ts';
import { type MaterialSaying, sayMaterial } from './material.ts';
import { type FactMeasure, measureFact, measureQuantity, type QuantityMeasure } from './measure.ts';
import { type Moving, move } from './move.ts';
import { note } from './note.ts';
import { type Ranking, rank } from './rank.ts';
import { remove } from './remove.ts';
import { type Done, refuse, type State, settle } from './state.ts';
import { tooLong, tooMuchIn, tooMuchKept } from './too-much.ts';
import { type FieldPlace, isPlaceThere, settleTyping, type, typedEdits } from './typing.ts';
import { undo } from './undo.ts';
import { add, putBack, type Saying, say, share, takeOff, unlink } from './works.ts';

/** What the maker does. Times are in ms since 1970, lengths in 1/8000 mm; ids are new ones. */
export type Action = { now: number } & (
  | { do: 'type'; place: FieldPlace; parts: Parts }
  | { do: 'settle' }
  /** A link taken, or an option chosen: settled at once. */
  | { do: 'link' | 'choose'; place: FieldPlace; parts: Parts }
  | { do: 'unlink'; place: FieldPlace }
  /** A side takes what all sides have again. */
  | { do: 'share'; place: FieldPlace }
  | { do: 'add'; to: 'works'; id: string; it: Work }
  | { do: 'add'; to: 'quantities'; id: string; it: Quantity }
  | ({ do: 'rank' } & Ranking)
  /** Steps of a work among those of others. */
  | ({ do: 'move' } & Moving)
  /** Says something of works or quantities: their name, that they are final, how often a work is done. */
  | ({ do: 'say' } & Saying)
  /** Says something of a thing to have at hand. */
  | ({ do: 'material' } & MaterialSaying)
  /** Says something of laying a cloth. */
  | ({ do: 'lay' } & LaySaying)
  | ({ do: 'make' } & Making)
  /** Says that steps were made before the app knew. */
  | ({ do: 'make before' } & Before)
  /** Passes a step over, or takes it up again. */
  | { do: 'pass'; home: string; over: boolean }
  /** Of a step, or of a whole work; without one, what was there is taken off. */
  | { do: 'note'; home: string; note: Note | undefined }
  | ({ do: 'measure' } & (FactMeasure | QuantityMeasure))
  | { do: 'unmake'; fact: string }
  | { do: 'take off'; work: string; leave: 'wait' | 'number' }
  | { do: 'put back'; work: string }
  | { do: 'remove'; quantity: string }
  | { do: 'decide'; home: string; way: string; allow?: number }
  /** `sure`: also where something was made to it. */
  | { do: 'undo'; change: number; sure?: boolean }
);

/**
 * Does one thing to a garment, or says why not. What is being typed elsewhere settles first; a
 * press on the key that comes upon a number still pending stores nothing, and shows that of now.
 */
export function act(state: State, action: Action): Done {
  const typesOn = action.do === 'type' && isTypedAt(state, action.place);
  const settled = typesOn ? { state } : settleTyping(state, action.now);
  if (settled.refused || action.do === 'settle') return settled;
  const changed = settled.state.answer !== state.answer;
  if (changed && action.do === 'make') return refuse(settled.state, { why: 'stale' });
  return done(settled.state, action);
}

function isTypedAt({ record }: State, place: FieldPlace): boolean {
  const pending = record.pending as { place?: unknown } | undefined;
  return JSON.stringify(pending?.place) === JSON.stringify(place);
}

function done(state: State, action: Exclude<Action, { do: 'settle' }>): Done {
  const { now } = action;
  if ('place' in action && !isPlaceThere(state, action.place)) {
    return refuse(state, { why: 'not there', what: 'work' });
  }
  const limit = tooMuchOf(state, action);
  if (limit) return refuse(state, { why: 'limit', limit });
  switch (action.do) {
    case 'type':
      return type(state, { place: action.place, parts: action.parts }, now);
    case 'link':
    case 'choose': {
      const edits = typedEdits(state, action);
      return settle(state, action.do, edits, { now, byHand: action.do === 'link' });
    }
    case 'unlink':
      return unlink(state, action.place, now);
    case 'share':
      return share(state, action.place, now);
    case 'add':
      return add(state, action.to, action.id, action.it, now);
    case 'rank':
      return rank(state, action, now);
    case 'move':
      return move(state, action, now);
    case 'say':
      return say(state, action, now);
    case 'material':
      return sayMaterial(state, action, now);
    case 'lay':
      return sayLay(state, action, now);
    case 'make':
      return make(state, action);
    case 'make before':
      return makeBefore(state, action);
    case 'pass':
      return pass(state, action.home, action.over, now);
    case 'note':
      return note(state, action.home, action.note, now);
    case 'measure':
      return 'fact' in action ? measureFact(state, action) : measureQuantity(state, action);
    case 'unmake':
      return unmake(state, action.fact, now);
    case 'take off':
      return takeOff(state, action.work, action.leave, now);
    case 'put back':
      return putBack(state, action.work, now);
    case 'remove':
      return remove(state, action.quantity, now);
    case 'decide':
      return decide(state, action.home, action.way, action);
    case 'undo':
      return undo(state, action.change, action);
  }
}

/** What it would bring too much of: refused before anything is written. */
function tooMuchOf(state: State, action: Action): Limit | undefined {
  switch (action.do) {
    case 'type':
    case 'link':
    case 'choose':
      return tooMuchIn(state, action.place, action.parts);
    case 'add':
      return tooMuchKept(
        { works: {}, quantities: {}, facts: {}, [action.to]: { [action.id]: action.it } },
        state.known,
      );
    case 'make':
    case 'measure':
      return tooLong(action.measured);
    case 'decide':
      return tooLong(action.allow);
    default:
      return undefined;
  }
}
