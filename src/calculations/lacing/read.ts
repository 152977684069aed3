import { lacingWords as words } from '#words/lacing-words.ts';
import type { Draft, Fault } from '../../calculation/calculation.ts';
import type { DraftReader } from '../../calculation/draft.ts';
import { countOf } from '../../calculation/draft-numbers.ts';
import { chosen, isGiven } from '../../calculation/fields.ts';
import { type Length, mm, ZERO } from '../../lengths/length.ts';
import type { LacingInput } from '../../sewing/lacing-input.ts';
import { readSteps } from '../../sewing/lacing-steps.ts';
import { kindOf } from './fields.ts';

/** What was typed of a lacing. */
export interface LacingRead {
  input: LacingInput;
  /** The second row, where there is one: the same lacing over holes of its own. */
  second: LacingInput | undefined;
  /** Of one's own steps, whether the first is before its hole is passed. */
  before: boolean;
  /** And those that pass through where the row has no hole. */
  offHoles: readonly number[];
}

export type ReadOutcome = { ok: true; value: LacingRead } | { ok: false; faults: readonly Fault[] };

/** Reads only the fields that are shown, and says everything that could not be read. */
export function lacingInput(read: DraftReader, draft: Draft): ReadOutcome {
  const kind = kindOf(draft);
  const holes = countOf(read, 'holes');
  const [pitch, margin, thickness] = (['pitch', 'margin', 'thickness'] as const).map(read.length);
  const outside = kind === 'outside' ? read.length('outside') : ZERO;
  const lace = read.maybeLength('lace');
  const { holes2, pitch2 } = secondRow(read, draft);
  const [tail, longest] = (['tail', 'longest'] as const).map(read.length);
  const own = kind === 'own' ? ownSteps(read, margin) : undefined;
  const faults = [...read.faults, ...(own?.faults ?? [])];
  if (
    holes === undefined ||
    pitch === undefined ||
    margin === undefined ||
    thickness === undefined ||
    outside === undefined ||
    tail === undefined ||
    longest === undefined ||
    faults.length > 0
  ) {
    return { ok: false, faults };
  }
  const start = chosen(draft, 'start', words.start);
  const measures = { holes, pitch, margin, thickness, lace, outside, tail, longest };
  const input = { kind, own: own?.repeat, start, ...measures };
  const second =
    holes2 === undefined ? undefined : { ...input, holes: holes2, pitch: pitch2 ?? pitch };
  const { before = false, offHoles = [] } = own ?? {};
  return { ok: true, value: { input, second, before, offHoles } };
}

function secondRow(read: DraftReader, draft: Draft) {
  if (!isGiven(draft, 'holes2')) return {};
  return { holes2: countOf(read, 'holes2'), pitch2: read.maybeLength('pitch2') };
}

/** A margin that isn't read, or is none, is a fault of its own: the steps are read all the same. */
function ownSteps(read: DraftReader, margin: Length | undefined) {
  const steps = readSteps(read.text('own'), margin !== undefined && margin > 0 ? margin : mm(1));
  if (steps.ok) return { ...steps, faults: [] };
  const faults = steps.faults.map(
    (fault): Fault => ({ field: 'own', why: { of: 'steps', fault } }),
  );
  return { repeat: undefined, before: false, offHoles: [], faults };
}
