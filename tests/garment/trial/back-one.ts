import type { Action } from '../../../src/garment/actions/act.ts';
import type { State } from '../../../src/garment/actions/state.ts';
import { lastPress } from '../../../src/garment/actions/undo.ts';

/** The last press taken back, as home does it. */
export function backOne(state: State, now: number): Action {
  return { do: 'undo', change: lastPress(state)?.id ?? 0, now };
}
