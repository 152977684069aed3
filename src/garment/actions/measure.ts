import { homeOf } from '../record/home.ts';
import { takesLink } from '../record/parts.ts';
import type { Fact, Quantity } from '../record/record.ts';
import { edit } from './slots.ts';
import { type Done, factIds, isThere, refuse, type State, settle } from './state.ts';

/** Says where something made was measured; without a measure it is as shown. */
export interface FactMeasure {
  fact: string;
  measured: number | undefined;
  now: number;
}

/** Measures a quantity anew: that replaces what was typed or read. */
export interface QuantityMeasure {
  quantity: string;
  measured: number;
  /** The graduation of the tape in hand, in 1/8000 mm. */
  tape: number;
  /** Of the new fact, where there is none yet. */
  id: string;
  now: number;
}

export function measureFact(state: State, { fact, measured, now }: FactMeasure): Done {
  if (!isThere(state, ['facts', fact])) return refuse(state, { why: 'not there', what: 'fact' });
  const before = [...state.answer.sound.before.values()].some(({ id }) => id === fact);
  if (before) return refuse(state, { why: 'made before' });
  const edits = [edit(state.record, ['facts', fact, 'measured'], measured)];
  return settle(state, 'measure', edits, { now, press: true });
}

/** Whether a quantity follows from others, so that it is neither typed nor measured itself. */
export function isSum({ parts }: Quantity): boolean {
  return takesLink(parts);
}

export function measureQuantity(state: State, given: QuantityMeasure): Done {
  const { quantity: id, measured, tape, now } = given;
  const quantity = state.answer.sound.quantities.get(id);
  if (!quantity) return refuse(state, { why: 'not there', what: 'work' });
  if (isSum(quantity) || quantity.kind === 'run')
    return refuse(state, { why: 'a sum is not measured' });
  const home = homeOf(id);
  const fact: Fact = {
    ...{ home, shown: measured, plan: measured, rule: 0, read: '', when: now },
    tape: quantity.kind === 'length' ? tape : 0,
  };
  const [known = given.id] = factIds(state, home);
  const edits = [edit(state.record, ['facts', known], fact)];
  return settle(state, 'measure', edits, { now, press: true });
}
