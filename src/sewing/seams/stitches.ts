import {
  type ExactLength,
  exactLength,
  type Length,
  UNITS_PER_INCH,
  UNITS_PER_MM,
} from '../../lengths/length.ts';
import { mustBeWithin } from '../length-checks.ts';
import { answerUnless, type Outcome, refused } from '../problem.ts';

/** One stitch length and its density, exact; showing rounds. */
export interface Stitch {
  length: ExactLength;
  perInch: number;
  perCm: number;
}

/** Stitches to the inch or centimetre that are taken; nothing sewn lies outside. Ours, no source. */
const FEWEST_STITCHES = 0.01;
const MOST_STITCHES = 1000;

const UNITS_PER_CM = 10 * UNITS_PER_MM;

/** The density of a stitch length. Problems name the field 'stitch'. */
export function stitchFromLength(given: Length): Outcome<Stitch> {
  const field = 'stitch';
  const least = exactLength(UNITS_PER_CM / MOST_STITCHES);
  const most = exactLength(UNITS_PER_INCH / FEWEST_STITCHES);
  if (given <= 0) return refused({ kind: 'not-positive', field, given });
  return answerUnless(mustBeWithin(field, given, least, most), () => ({
    ok: true,
    value: stitch(given),
  }));
}

/** The length of a stitch from stitches to the inch: 25.4 mm ÷ stitches. Problems name 'perInch'. */
export function stitchFromPerInch(count: number): Outcome<Stitch> {
  return fromCount('perInch', count, UNITS_PER_INCH);
}

/** The length of a stitch from stitches to the centimetre. Problems name 'perCm'. */
export function stitchFromPerCm(count: number): Outcome<Stitch> {
  return fromCount('perCm', count, UNITS_PER_CM);
}

function fromCount(field: string, given: number, units: number): Outcome<Stitch> {
  if (given >= FEWEST_STITCHES && given <= MOST_STITCHES) {
    return { ok: true, value: stitch(exactLength(units / given)) };
  }
  const bounds = { least: FEWEST_STITCHES, most: MOST_STITCHES };
  return refused({ kind: 'out-of-range', field, given, ...bounds });
}

function stitch(length: ExactLength): Stitch {
  return { length, perInch: UNITS_PER_INCH / length, perCm: UNITS_PER_CM / length };
}
