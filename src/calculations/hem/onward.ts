import type { Bench } from '../../calculation/bench.ts';
import type { Draft } from '../../calculation/calculation.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { curvedHem } from '../../sewing/hems/hem-curve.ts';
import type { HemInput } from '../../sewing/hems/hem-input.ts';
import { type HemRead, hasTurn, hemFields, isWhole } from './fields.ts';
import { apartOf, curveOf, easeOf, hemInput } from './read.ts';

const { specs, typing } = hemFields;

/**
 * What a facing of the same hem begins with: its free edge is turned under as the raw edge
 * would have been, and where the hem line is curved, its radius is known.
 */
export function toFacing(draft: Draft, bench: Bench): Draft {
  const ask = hemFields.asks(draft);
  return {
    depth: depthOf(draft, bench),
    ...(hasTurn(ask) ? { turn: ask(specs.turn) } : {}),
    edgeStitch: ask(specs.edgeStitch),
    thickness: ask(specs.thickness),
    finished: ask(specs.finished),
    otherEnd: ask(specs.otherEnd),
    left: ask(specs.left),
    radius: radiusOf(draft, bench),
  };
}

/** What a corner begins with whose bottom is this hem. */
export function toCorner(draft: Draft, bench: Bench): Draft {
  const ask = hemFields.asks(draft);
  return {
    depth: depthOf(draft, bench),
    edgeStitch: ask(specs.edgeStitch),
    thickness: ask(specs.thickness),
    turned: specs.style.is('single')(ask) ? 'once' : hasTurn(ask) ? 'twice' : 'equal',
  };
}

/** The hem's own depth, as typed or of all there is; whatever is typed of its curve. */
function depthOf(draft: Draft, bench: Bench): string {
  const ask = hemFields.asks(draft);
  if (!isWhole(ask)) return ask(specs.depth);
  const hem = worked({ ...draft, ...typing({ shape: 'straight', taper: 'none' }) }, bench);
  return hem ? exactly(hem.input.depth, bench) : '';
}

/** The hem's radius, where it is curved and that can be worked out. */
function radiusOf(draft: Draft, bench: Bench): string {
  const hem = worked({ ...draft, ...typing({ taper: 'none' }) }, bench);
  const curve = hem && curveOf(hem.read, apartOf(hem.read, hem.input.depth));
  const curved = hem && curve && curvedHem(hem.input.depth, curve, easeOf(hem.read));
  const radius = curved?.ok ? curved.value.radius : undefined;
  return radius === undefined ? '' : exactly(radius, bench);
}

function worked(draft: Draft, bench: Bench): { read: HemRead; input: HemInput } | undefined {
  const read = hemFields.read(draft, bench);
  const input = read.ok ? hemInput(read.value) : undefined;
  return read.ok && input?.ok ? { read: read.value, input: input.value } : undefined;
}
