import { needed } from '../../calculation/needed.ts';
import { type Length, ZERO } from '../../lengths/length.ts';
import type { CurveInput } from '../../sewing/hems/hem-curve.ts';
import type { HemInput } from '../../sewing/hems/hem-input.ts';
import { hemOfWhole, problemsOfWhole } from '../../sewing/hems/hem-whole.ts';
import { type Taper, type TaperInput, trueTaper } from '../../sewing/hems/taper.ts';
import type { Outcome, Problem } from '../../sewing/problem.ts';
import { EASE_BY_CLOTH } from '../../sewing/sources/hems.ts';
import type { HemRead } from './fields.ts';

/** What is turned up is worked out from these; the rest say where it is stitched, and what has to hold it. */
export const TURN_FIELDS = [
  'depth',
  'given',
  'turn',
  'style',
  'thickness',
] as const satisfies readonly (keyof HemRead)[];

export const CURVE_FIELDS = [
  'shape',
  'round',
  'above',
  'apart',
  'chord',
  'rise',
] as const satisfies readonly (keyof HemRead)[];

export const TAPER_FIELDS = [
  'taper',
  'atHem',
  'acrossAbove',
  'apart',
] as const satisfies readonly (keyof HemRead)[];

type Read<Fields extends readonly (keyof HemRead)[]> = Pick<HemRead, Fields[number]>;
export type HemAsked = Read<typeof TURN_FIELDS> &
  Partial<Pick<HemRead, 'edgeStitch' | 'finished' | 'otherEnd' | 'left'>>;
export type CurveAsked = Read<typeof CURVE_FIELDS>;
export type TaperAsked = Read<typeof TAPER_FIELDS>;

/** The hem itself; stitched at its inner edge where that isn't asked. */
export function hemInput(read: HemAsked): Outcome<HemInput> {
  const { depth, given, style, thickness, edgeStitch = ZERO, finished, otherEnd, left } = read;
  const equal = style === 'double';
  const turn = read.turn ?? ZERO;
  const rest = { thickness, edgeStitch, finished, otherEnd, left };
  if (given === 'all') return hemOfWhole({ ...rest, whole: depth, turn: equal ? 'equal' : turn });
  return { ok: true, value: { ...rest, depth, turn: equal ? depth : turn } };
}

/** The same, where all there is to turn up is given: a problem with the depth is said of all of it. */
export function asGiven<Value>(
  outcome: Outcome<Value>,
  input: HemInput,
  { given, depth }: Pick<HemRead, 'given' | 'depth'>,
): Outcome<Value> {
  if (outcome.ok || given !== 'all') return outcome;
  return said(problemsOfWhole(outcome.problems, input, depth));
}

/** The curve, where there is one. @param apart from one reading up to the other */
export function curveOf(read: CurveAsked, apart: Length): CurveInput | undefined {
  const { shape } = read;
  switch (shape) {
    case 'straight':
      return undefined;
    case 'readings':
      return { by: 'readings', ...needed({ round: read.round, above: read.above }), apart };
    default:
      return {
        by: 'rise',
        ...needed({ chord: read.chord, rise: read.rise }),
        inward: shape === 'inward',
      };
  }
}

/** How far apart two readings were taken; the depth of the hem where that isn't said. */
export function apartOf({ apart }: Pick<HemRead, 'apart'>, depth: Length): Length {
  return apart ?? depth;
}

/** The part of its length the cloth eases in; it can only where the curve is outward. */
export function easeOf(read: Pick<HemRead, 'shape' | 'cloth' | 'ease'>): number {
  if (read.shape === 'straight' || read.shape === 'inward') return 0;
  return read.cloth === 'own' ? needed({ ease: read.ease }).ease / 100 : EASE_BY_CLOTH[read.cloth];
}

export type Widths = Pick<TaperInput, 'atHem' | 'above' | 'apart'>;

/** The widths of a tapered piece. @param apart from one up to the other */
export function widthsOf(read: TaperAsked, apart: Length): Widths | undefined {
  if (read.taper === 'none') return undefined;
  return { ...needed({ atHem: read.atHem, above: read.acrossAbove }), apart };
}

/** The taper's upper width has a field of its own here: `above` is the curve's. */
export function taperOf({ depth, turn }: HemInput, widths: Widths): Outcome<Taper> {
  const outcome = trueTaper({ ...widths, depth, turn });
  if (outcome.ok) return outcome;
  return said(
    outcome.problems.map((problem) =>
      problem.field === 'above' ? { ...problem, field: 'acrossAbove' } : problem,
    ),
  );
}

/** No answer, for as many problems as there were. */
function said(problems: readonly Problem[]): Outcome<never> {
  return { ok: false, problems: problems as readonly [Problem, ...Problem[]] };
}
