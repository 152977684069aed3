import type { Draft } from '../../calculation/calculation.ts';
import type { DraftReader } from '../../calculation/draft.ts';
import { numberOf } from '../../calculation/draft-numbers.ts';
import { isGiven } from '../../calculation/fields.ts';
import { type Length, ZERO } from '../../lengths/length.ts';
import type { CurveInput } from '../../sewing/hem-curve.ts';
import type { HemInput } from '../../sewing/hem-input.ts';
import { hemOfWhole } from '../../sewing/hem-whole.ts';
import type { Outcome } from '../../sewing/problem.ts';
import { EASE_BY_CLOTH } from '../../sewing/sources/hems.ts';
import type { TaperInput } from '../../sewing/taper.ts';
import { chosen, hasTurn, hemFields, isWhole } from './fields.ts';

/** The hem itself; undefined when something of it could not be read. */
export function hemInput(read: DraftReader, draft: Draft): Outcome<HemInput> | undefined {
  const equal = chosen(draft, 'style') === 'double';
  const measure = read.length('depth');
  const edgeStitch = read.length('edgeStitch');
  const thickness = read.maybeLength('thickness') ?? ZERO;
  const finished = read.maybeLength('finished');
  const otherEnd = isGiven(draft, 'finished') ? read.maybeLength('otherEnd') : undefined;
  const left = read.maybeLength('left');
  const turn = hasTurn(draft) ? read.length('turn') : ZERO;
  if (measure === undefined || edgeStitch === undefined || turn === undefined) return undefined;
  const rest = { thickness, edgeStitch, finished, otherEnd, left };
  if (isWhole(draft)) {
    return hemOfWhole({ ...rest, whole: measure, turn: equal ? 'equal' : turn });
  }
  return { ok: true, value: { ...rest, depth: measure, turn: equal ? measure : turn } };
}

/** The curve, where there is one. @param apart from one reading up to the other */
export function readCurve(
  read: DraftReader,
  draft: Draft,
  apart: Length,
): { input: CurveInput; ease: number } | undefined {
  const shape = chosen(draft, 'shape');
  if (shape === 'straight') return undefined;
  const byReadings = shape === 'readings';
  const one = read.length(byReadings ? 'round' : 'chord');
  const other = read.length(byReadings ? 'above' : 'rise');
  const ease = shape === 'inward' ? 0 : easeOf(read, draft);
  if (one === undefined || other === undefined || ease === undefined) return undefined;
  const input: CurveInput = byReadings
    ? { by: 'readings', round: one, above: other, apart }
    : { by: 'rise', chord: one, rise: other, inward: shape === 'inward' };
  return { input, ease };
}

/** How far apart two readings were taken; the depth of the hem where that isn't said. */
export function readApart(read: DraftReader, draft: Draft, depth: Length): Length {
  const asked = hemFields(draft).some(({ key }) => key === 'apart');
  return (asked ? read.maybeLength('apart') : undefined) ?? depth;
}

/** The part of its length the cloth eases in. */
function easeOf(read: DraftReader, draft: Draft): number | undefined {
  const cloth = chosen(draft, 'cloth');
  if (cloth !== 'own') return EASE_BY_CLOTH[cloth];
  const percent = numberOf(read, 'ease');
  return percent === undefined ? undefined : percent / 100;
}

export type Widths = Pick<TaperInput, 'atHem' | 'above' | 'apart'>;

/** The widths of a tapered piece. @param apart from one up to the other */
export function readWidths(read: DraftReader, draft: Draft, apart: Length): Widths | undefined {
  if (chosen(draft, 'taper') === 'none') return undefined;
  const atHem = read.length('atHem');
  const above = read.length('acrossAbove');
  return atHem === undefined || above === undefined ? undefined : { atHem, above, apart };
}
