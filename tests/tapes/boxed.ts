import type { CameraSpec } from './camera.ts';
import { letterings } from './letterings.ts';
import type { Random } from './random.ts';
import type { NumberSpec, ScaleSpec } from './scale-spec.ts';
import { cmStanding, softTape } from './soft-tapes.ts';
import type { Piece } from './tape-across.ts';
import type { TapeSpec } from './tape-spec.ts';

/** How a tape is printed whose numbers stand in boxes between lines that cross all of it. */
export interface Boxes {
  /** The numbers stand across the tape, their feet to one side or the other; else along it. */
  readonly turned: 0 | 1 | 3;
  /** Millimetres along both edges. */
  readonly bothEdges: boolean;
  /** How far the centimetre and half-centimetre lines run, as a share of the tape's width. */
  readonly cmShare: number;
  readonly halfShare: number;
  /** Height of the digits, and how far they stand before their line, mm. */
  readonly height: number;
  readonly clear: number;
}

/** Photographs of soft tapes show digits of 2.5 to 5 mm, 0.5 to 1.5 mm before their line. */
export function someBoxes(random: Random, set: Partial<Boxes> = {}): Boxes {
  return {
    turned: random.pick([1, 3] as const),
    bothEdges: random.chance(0.6),
    cmShare: 1,
    halfShare: random.between(0.16, 0.26),
    height: random.between(2.6, 5),
    clear: random.between(0.5, 1.5),
    ...set,
  };
}

/** A tailor's tape of 150 cm with boxed numbers; each number before its line. */
export function boxedTape(
  random: Random,
  camera: CameraSpec,
  boxes: Boxes,
  piece: Partial<Piece> = {},
): TapeSpec {
  return softTape(random, camera, (zero, width) => scalesOf(random, zero, width, boxes), piece);
}

function scalesOf(random: Random, zero: number, width: number, boxes: Boxes): ScaleSpec[] {
  const short = random.between(0.1, 0.16) * width;
  const half = { every: 5, mm: Math.max(1.25 * short, boxes.halfShare * width) };
  const each = { every: 1, mm: short };
  // Tens cross the whole tape on every print seen.
  const long = [
    { every: 100, mm: width },
    { every: 10, mm: boxes.cmShare * width },
  ];
  const scale: ScaleSpec = {
    ...cmStanding(zero),
    unit: 'cm',
    subdivisions: 10,
    numberEvery: 1,
    first: 0,
    inset: 0,
    lines: [...long, half, each],
    stroke: random.between(0.18, 0.32),
    numbers: boxedNumbers(random, width, short, boxes),
  };
  if (!boxes.bothEdges) return [scale];
  const { numbers: _, ...bare } = scale;
  return [scale, { ...bare, id: 'cm, other edge', edge: 'high', lines: [half, each] }];
}

function boxedNumbers(random: Random, width: number, short: number, boxes: Boxes): NumberSpec {
  const { turned, height, clear } = boxes;
  const lettering = random.pick(letterings);
  const wide = (digits: number) =>
    digits * (0.58 * lettering.stretch + lettering.stem) + (digits - 1) * lettering.space;
  // Across the tape there is room between the short lines, along it between two long ones.
  const room = turned === 0 ? 9 - clear : width - (boxes.bothEdges ? 2.6 : 1.3) * short - 1;
  const heightOf = (value: number) => Math.min(height, room / wide(`${value}`.length));
  const middle = boxes.bothEdges ? width / 2 : (width + 1.3 * short) / 2;
  return { lettering, height, heightOf, place: 'before', turned, across: middle, clear };
}
