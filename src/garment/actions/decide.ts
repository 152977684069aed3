import type { Decision } from '../record/record.ts';
import { answeredBy, type WayOut, waysOut } from '../rows/row-now.ts';
import { plusMinus } from '../work-out/doubt.ts';
import { rowAsked } from '../work-out/evaluate-row.ts';
import { askedKey } from '../work-out/node.ts';
import { edit } from './slots.ts';
import { type Done, factIds, refuse, type State, settle } from './state.ts';

/** Every way out of what differs at a home, each with the row it gives; none where nothing is asked. */
export function waysOutOf({ answer }: State, home: string): WayOut[] {
  const node = answer.nodes.get(home);
  const asked = answer.values.get(askedKey(home));
  if (!node || !asked?.ok) return [];
  if (node.form === 'fact') return [{ way: 'noted' }];
  if (node.form !== 'row' || typeof asked.value !== 'object') return [];
  return waysOut(rowAsked(node, asked));
}

/**
 * Takes a way out: it answers the facts that are there and what is asked now.
 * `allow` is how far off the maker lets what is made be; what was allowed there before goes on.
 */
export function decide(
  state: State,
  home: string,
  way: string,
  { now, allow = allowedAt(state, home) }: { now: number; allow?: number | undefined },
): Done {
  const isOpen = state.answer.conflicts.some((one) => one.home === home);
  if (!isOpen) return refuse(state, { why: 'not there', what: 'conflict' });
  if (!waysOutOf(state, home).some((one) => one.way === way)) {
    return refuse(state, { why: 'not there', what: 'way' });
  }
  const answered = answeredNow(state, home, allow);
  if (!answered) return refuse(state, { why: 'not there', what: 'conflict' });
  const facts = factIds(state, home).sort();
  const decision: Decision = { way, facts, ...answered, ...(allow !== undefined && { allow }) };
  return settle(state, 'decide', [edit(state.record, ['decisions', home], decision)], { now });
}

function answeredNow({ answer }: State, home: string, allow = 0) {
  const node = answer.nodes.get(home);
  const asked = answer.values.get(askedKey(home));
  if (!asked?.ok) return undefined;
  if (node?.form === 'row') return answeredBy(rowAsked(node, asked), allow);
  if (node?.form !== 'fact' || typeof asked.value !== 'number') return undefined;
  const tolerance = Math.max(node.fact.fact.tape / 2, plusMinus(asked), allow);
  return { asked: asked.value, tolerance };
}

/** How far off the maker said what is made at a home may be; undefined where nothing was said. */
export function allowedAt({ answer }: State, home: string): number | undefined {
  return answer.sound.decisions.get(home)?.allow;
}
