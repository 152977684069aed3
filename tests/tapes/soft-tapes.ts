import type { CameraSpec } from './camera.ts';
import type { Random } from './random.ts';
import type { ScaleSpec } from './scale-spec.ts';
import { softSurface } from './surfaces.ts';
import { type Piece, tapeAcross } from './tape-across.ts';
import type { TapeSpec } from './tape-spec.ts';
import { centimetres, inches, type Standing } from './tape-styles.ts';

/** A tailor's tape of 150 cm with the scales that are asked for. */
export function softTape(
  random: Random,
  camera: CameraSpec,
  scales: (zero: number, width: number) => readonly ScaleSpec[],
  piece: Partial<Piece> = {},
): TapeSpec {
  const full = { width: random.between(15, 20), length: 1500, ...piece };
  return { ...tapeAcross(random, camera, full, scales), surface: softSurface(random) };
}

export const cmStanding = (zero: number): Standing => ({
  id: 'cm',
  zero,
  direction: 1,
  edge: 'low',
  last: 150,
});

/** Only centimetres, on one edge. */
export function cmTape(random: Random, camera: CameraSpec, piece: Partial<Piece> = {}): TapeSpec {
  return softTape(
    random,
    camera,
    (zero, width) => [centimetres(random, cmStanding(zero), width)],
    piece,
  );
}

/** Centimetres on one edge, inches on the other, from one zero or from both ends. */
export function twoEdged(
  random: Random,
  camera: CameraSpec,
  opposite: boolean,
  piece: Partial<Piece> = {},
): TapeSpec {
  const swapped = random.chance(0.5);
  const length = piece.length ?? 1500;
  const other = (zero: number): Standing => ({
    id: 'inch',
    zero: opposite ? zero + length : zero,
    direction: opposite ? -1 : 1,
    edge: swapped ? 'low' : 'high',
    last: Math.floor(length / 25.4),
  });
  return softTape(
    random,
    camera,
    (zero, width) => {
      const cm = {
        ...cmStanding(zero),
        edge: swapped ? 'high' : 'low',
        last: length / 10,
      } as const;
      const half = (full: number) => Math.max(8.5, full * 0.5);
      return [
        centimetres(random, cm, half(width)),
        inches(random, other(zero), half(width), random.pick([8, 16])),
      ];
    },
    { width: random.between(17, 22), ...piece },
  );
}
