import type { Bench } from '../../controls/bench.ts';
import type { Draft } from '../../controls/calculation.ts';
import { readDraft } from '../../controls/draft.ts';
import { exactly } from '../../controls/tape-text.ts';
import { curvedHem } from '../../sewing/hem-curve.ts';
import { chosen, hasTurn } from './fields.ts';
import { hemInput, readApart, readCurve } from './read.ts';

/**
 * What a facing of the same hem begins with: its free edge is turned under as the raw edge
 * would have been, and where the hem line is curved, its radius is known.
 */
export function toFacing(draft: Draft, bench: Bench): Draft {
  const { depth = '', turn = '', edgeStitch = '', finished = '', left = '' } = draft;
  const radius = radiusOf(draft, bench);
  const turned = hasTurn(draft) ? { turn } : {};
  return { u: bench.unit, depth, ...turned, edgeStitch, finished, left, radius };
}

/** What a corner begins with whose bottom is this hem. */
export function toCorner(draft: Draft, bench: Bench): Draft {
  const { depth = '', edgeStitch = '' } = draft;
  const turned = chosen(draft, 'style') === 'single' ? 'once' : 'twice';
  return { u: bench.unit, depth, edgeStitch, turned };
}

function radiusOf(draft: Draft, bench: Bench): string {
  const read = readDraft(draft, bench);
  const input = hemInput(read, draft);
  const curve = input && readCurve(read, draft, readApart(read, draft, input.depth));
  const curved = input && curve && curvedHem(input.depth, curve.input, curve.ease);
  return curved?.ok && curved.value.radius !== undefined ? exactly(curved.value.radius, bench) : '';
}
