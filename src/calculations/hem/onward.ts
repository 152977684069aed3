import type { Bench } from '../../calculation/bench.ts';
import type { Draft } from '../../calculation/calculation.ts';
import { readDraft } from '../../calculation/draft.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { curvedHem } from '../../sewing/hem-curve.ts';
import { chosen, hasTurn, isWhole } from './fields.ts';
import { hemInput, readApart, readCurve } from './read.ts';

/**
 * What a facing of the same hem begins with: its free edge is turned under as the raw edge
 * would have been, and where the hem line is curved, its radius is known.
 */
export function toFacing(draft: Draft, bench: Bench): Draft {
  const { turn = '', edgeStitch = '', thickness = '', finished = '', left = '' } = draft;
  const { depth, radius } = measuresOf(draft, bench);
  const turned = hasTurn(draft) ? { turn } : {};
  const otherEnd = draft.otherEnd ?? '';
  const same = { edgeStitch, thickness, finished, otherEnd, left };
  return { u: bench.unit, depth, ...turned, ...same, radius };
}

/** What a corner begins with whose bottom is this hem. */
export function toCorner(draft: Draft, bench: Bench): Draft {
  const { edgeStitch = '', thickness = '' } = draft;
  const { depth } = measuresOf(draft, bench);
  return { u: bench.unit, depth, edgeStitch, thickness, turned: TURNED[chosen(draft, 'style')] };
}

const TURNED = { single: 'once', double: 'equal', unequal: 'twice', narrow: 'twice' } as const;

/** The hem's own depth, as typed or of all there is, and its radius where it is curved. */
function measuresOf(draft: Draft, bench: Bench): { depth: string; radius: string } {
  const typed = draft.depth ?? '';
  const read = readDraft(draft, bench);
  const hem = hemInput(read, draft);
  if (!hem?.ok) return { depth: isWhole(draft) ? '' : typed, radius: '' };
  const input = hem.value;
  const curve = readCurve(read, draft, readApart(read, draft, input.depth));
  const curved = curve && curvedHem(input.depth, curve.input, curve.ease);
  const known = curved?.ok && curved.value.radius !== undefined ? curved.value.radius : undefined;
  return {
    depth: isWhole(draft) ? exactly(input.depth, bench) : typed,
    radius: known === undefined ? '' : exactly(known, bench),
  };
}
