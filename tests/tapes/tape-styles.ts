import { letterings } from './letterings.ts';
import type { Lettering } from './pen.ts';
import type { Random } from './random.ts';
import type { NumberSpec, ScaleSpec } from './scale-spec.ts';

/** Where a scale stands on its tape. */
export interface Standing {
  readonly id: string;
  readonly zero: number;
  readonly direction: 1 | -1;
  readonly edge: 'low' | 'high';
  readonly last: number;
}

/** Lines are this long where a scale has this much room, mm; on half of a narrow tape they are shorter. */
const ROOMY = 13;

/** Of the room that the lines leave, digits take this much. */
const DIGITS = 0.6;

/** Centimetres with millimetres: lines of 3, 4.5 and 6.5 mm, digits of 3.5 to 5 mm, where there is room. */
export function centimetres(random: Random, standing: Standing, width: number): ScaleSpec {
  const short = random.between(2, 3.4) * Math.min(1, width / ROOMY);
  const long = short * random.between(1.7, 2.3);
  return {
    ...standing,
    unit: 'cm',
    subdivisions: 10,
    numberEvery: 1,
    first: 0,
    inset: random.chance(0.8) ? 0 : random.between(0.3, 0.8),
    lines: [
      { every: 10, mm: long },
      { every: 5, mm: short * random.between(1.35, 1.6) },
      { every: 1, mm: short },
    ],
    stroke: random.between(0.18, 0.32),
    numbers: numbersBy(random, standing, long, Math.min(5, (width - long) * DIGITS)),
  };
}

/** Inches, by default in sixteenths. */
export function inches(random: Random, standing: Standing, width: number, parts = 16): ScaleSpec {
  const short = random.between(1.6, 2.4) * Math.min(1, width / ROOMY);
  const long = short * random.between(2.6, 3.4);
  const steps =
    parts === 10 ? [10, 5, 1] : [1, 2, 4, 8, 16, 32].map((n) => parts / n).filter((n) => n >= 1);
  return {
    ...standing,
    unit: 'inch',
    subdivisions: parts,
    numberEvery: 1,
    first: 0,
    inset: 0,
    lines: steps.map((every, i) => ({
      every,
      mm: long - ((long - short) * i) / (steps.length - 1),
    })),
    stroke: random.between(0.2, 0.35),
    numbers: numbersBy(random, standing, long, Math.min(6.5, (width - long) * DIGITS)),
  };
}

/** Numbers just inside the long lines, before their line or on it. */
function numbersBy(
  random: Random,
  { edge, direction }: Standing,
  long: number,
  tallest: number,
): NumberSpec {
  const lettering = random.pick(letterings);
  // Two digits have to fit between two centimetre lines; three are cut smaller.
  const roomy = Math.min(tallest, 7.2 / digitsWide(lettering, 2));
  const height = random.between(0.75, 1) * roomy;
  const place = random.chance(0.5) ? 'before' : 'on';
  const beside = place === 'before' && random.chance(0.5);
  const upright = direction === 1 && (edge === 'low' || random.chance(0.7));
  return {
    lettering,
    height,
    heightOf: (value) => (value < 100 ? height : Math.min(height, 8 / digitsWide(lettering, 3))),
    place,
    turned: upright ? 0 : 2,
    across: beside
      ? Math.max(long * 0.5, long - height / 2) + height * 0.75
      : long + height * 0.5 + random.between(0.3, 0.9),
    clear: random.between(0.3, 0.7),
  };
}

/** Width of so many digits, as a share of their height. */
function digitsWide({ stretch, stem, space }: Lettering, digits: number): number {
  return digits * (0.58 * stretch + stem) + (digits - 1) * space;
}

/** The same numbers, lying across the tape; their middle `across` mm from the edge. */
export function acrossTheTape(numbers: NumberSpec, across: number, turned: 1 | 3): NumberSpec {
  return { ...numbers, turned, across };
}
