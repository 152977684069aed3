import type { CameraSpec } from './camera.ts';
import type { Random } from './random.ts';
import type { ScaleSpec } from './scale-spec.ts';
import type { Lay, TapeSpec } from './tape-spec.ts';

export interface Piece {
  readonly width: number;
  readonly length: number;
  /** How far the printed zero lies in from the tape's end, mm. */
  readonly margin?: number;
  /** Which mm of the tape lies in the middle of the picture; any if left out. */
  readonly middle?: number;
  readonly lay?: Partial<Lay>;
}

/**
 * A tape through the middle of the picture, s = 0 there, turned any way. `scales` gets the place
 * of the tape's zero end and its width.
 */
export function tapeAcross(
  random: Random,
  camera: CameraSpec,
  piece: Piece,
  scales: (zero: number, width: number) => readonly ScaleSpec[],
): Omit<TapeSpec, 'surface'> {
  const span = (camera.distance * camera.width) / camera.focal;
  const tall = (camera.distance * camera.height) / camera.focal;
  const middle = piece.middle ?? random.between(0.2 * span, piece.length - 0.3 * span);
  const zero = -middle;
  const margin = piece.margin ?? 0;
  // What lies far outside the picture needn't be followed.
  const reach = 1.6 * Math.hypot(span, tall);
  return {
    width: piece.width,
    from: Math.max(-reach, zero - margin),
    to: Math.min(reach, zero + piece.length + margin),
    lay: {
      x: random.between(-0.12, 0.12) * span,
      y: random.between(-0.15, 0.15) * tall,
      angle: anyTurn(random),
      ...piece.lay,
    },
    scales: scales(zero, piece.width),
  };
}

/** Mostly along the picture or upside down, as people hold it; else any way. */
function anyTurn(random: Random): number {
  if (random.chance(0.3)) return random.between(0, 2 * Math.PI);
  return random.pick([0, 0, Math.PI, Math.PI / 2, -Math.PI / 2]) + 0.12 * random.normal();
}

/** A place on a tape that lies straight, mm on the bench. */
export function onTape({ lay }: Pick<TapeSpec, 'lay'>, s: number, off: number): [number, number] {
  const [c, sn] = [Math.cos(lay.angle), Math.sin(lay.angle)];
  return [lay.x + s * c - off * sn, lay.y + s * sn + off * c];
}

/** What the picture shows from side to side, mm. */
export function spanOf({ distance, width, focal }: CameraSpec): number {
  return (distance * width) / focal;
}
