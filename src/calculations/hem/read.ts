import { needed } from '../../calculation/needed.ts';
import { type Length, ZERO } from '../../lengths/length.ts';
import type { CurveInput } from '../../sewing/hem-curve.ts';
import type { HemInput } from '../../sewing/hem-input.ts';
import { hemOfWhole } from '../../sewing/hem-whole.ts';
import type { Outcome } from '../../sewing/problem.ts';
import { EASE_BY_CLOTH } from '../../sewing/sources/hems.ts';
import type { TaperInput } from '../../sewing/taper.ts';
import type { HemRead } from './fields.ts';

/** The hem itself. */
export function hemInput(read: HemRead): Outcome<HemInput> {
  const { depth, given, style, thickness, edgeStitch, finished, otherEnd, left } = read;
  const equal = style === 'double';
  const turn = read.turn ?? ZERO;
  const rest = { thickness, edgeStitch, finished, otherEnd, left };
  if (given === 'all') return hemOfWhole({ ...rest, whole: depth, turn: equal ? 'equal' : turn });
  return { ok: true, value: { ...rest, depth, turn: equal ? depth : turn } };
}

/** The curve, where there is one. @param apart from one reading up to the other */
export function curveOf(
  read: HemRead,
  apart: Length,
): { input: CurveInput; ease: number } | undefined {
  const { shape } = read;
  switch (shape) {
    case 'straight':
      return undefined;
    case 'readings': {
      const { round, above } = needed({ round: read.round, above: read.above });
      return { input: { by: 'readings', round, above, apart }, ease: easeOf(read) };
    }
    default: {
      const inward = shape === 'inward';
      const { chord, rise } = needed({ chord: read.chord, rise: read.rise });
      return { input: { by: 'rise', chord, rise, inward }, ease: inward ? 0 : easeOf(read) };
    }
  }
}

/** How far apart two readings were taken; the depth of the hem where that isn't said. */
export function apartOf({ apart }: HemRead, depth: Length): Length {
  return apart ?? depth;
}

/** The part of its length the cloth eases in. */
function easeOf(read: HemRead): number {
  return read.cloth === 'own' ? needed({ ease: read.ease }).ease / 100 : EASE_BY_CLOTH[read.cloth];
}

export type Widths = Pick<TaperInput, 'atHem' | 'above' | 'apart'>;

/** The widths of a tapered piece. @param apart from one up to the other */
export function widthsOf(read: HemRead, apart: Length): Widths | undefined {
  if (read.taper === 'none') return undefined;
  return { ...needed({ atHem: read.atHem, above: read.acrossAbove }), apart };
}
