import type { CameraSpec } from './camera.ts';
import { letterings } from './letterings.ts';
import type { Random } from './random.ts';
import type { NumberSpec, ScaleSpec } from './scale-spec.ts';
import { cmStanding } from './soft-tapes.ts';
import { type Piece, tapeAcross } from './tape-across.ts';
import type { Surface, TapeSpec } from './tape-spec.ts';
import { centimetres, type Standing } from './tape-styles.ts';

/** A rule 20 to 35 mm wide and 150 to 300 mm long, bare for some mm before its zero. */
export function rule(
  random: Random,
  camera: CameraSpec,
  surface: Surface,
  scales: (zero: number, width: number, length: number) => readonly ScaleSpec[],
  piece: Partial<Piece> = {},
): TapeSpec {
  const length = piece.length ?? random.pick([150, 200, 300]);
  const full = {
    width: random.between(20, 34),
    length,
    margin: random.pick([0, 0, 4, 7]),
    middle: random.between(0.25, 0.75) * length,
    ...piece,
  };
  const across = tapeAcross(random, camera, full, (zero, width) => scales(zero, width, length));
  return { ...across, surface };
}

/** Upright numbers just inside the lines. */
export function ruleNumbers(random: Random, long: number, height: number): NumberSpec {
  return {
    lettering: random.pick(letterings),
    height,
    place: random.chance(0.6) ? 'on' : 'before',
    turned: 0,
    across: long + height / 2 + random.between(0.4, 1),
    clear: 0.4,
  };
}

/** Millimetres numbered 10, 20, 30; halves of them if asked for. */
export function millimetres(random: Random, standing: Standing, halves: boolean): ScaleSpec {
  const short = random.between(2, 3.2);
  const lines = [
    { every: halves ? 20 : 10, mm: short * 2.1 },
    { every: halves ? 10 : 5, mm: short * 1.5 },
  ];
  return {
    ...standing,
    unit: 'mm',
    subdivisions: halves ? 2 : 1,
    numberEvery: 10,
    first: 0,
    inset: 0,
    lines: halves
      ? [...lines, { every: 2, mm: short }, { every: 1, mm: short * 0.65 }]
      : [...lines, { every: 1, mm: short }],
    stroke: random.between(0.13, 0.22),
    numbers: ruleNumbers(random, short * 2.1, random.between(2.2, 3.4)),
  };
}

/** A line every centimetre, or only at the tens, with a number at each ten or each line. */
export function sparse(
  random: Random,
  standing: Standing,
  { subdivisions, numberEvery }: { subdivisions: number; numberEvery: number },
): ScaleSpec {
  const long = random.between(6, 9);
  const tens = subdivisions * Math.max(1, numberEvery);
  return {
    ...standing,
    unit: 'cm',
    subdivisions,
    numberEvery,
    first: 0,
    inset: 0,
    lines: [
      { every: tens, mm: long },
      { every: 1, mm: long * 0.55 },
    ],
    stroke: random.between(0.25, 0.6),
    numbers: ruleNumbers(random, long, random.between(3.5, 6)),
  };
}

/** Digits 1 to 9 on the millimetres between two centimetre numbers. */
export function everyMillimetre(random: Random, zero: number, length: number): ScaleSpec {
  const scale = centimetres(random, { ...cmStanding(zero), last: length / 10 }, 24);
  const lettering = random.pick(letterings.filter(({ stretch }) => stretch < 1));
  const long = scale.lines[0]!.mm;
  const small = { lettering, height: 0.95, place: 'on', turned: 0, clear: 0 } as const;
  const text = (value: number) => `${Math.round(value * 10) % 10}`;
  const across = long + 0.9;
  const numbers = { ...scale.numbers!, place: 'on', height: 3.2, across: long + 3.6 } as const;
  return { ...scale, numbers, between: { ...small, across, text } };
}
