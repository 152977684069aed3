import type { BestLay } from './best-lay.ts';
import type { Field } from './field.ts';
import { latticeOf, onLattice, type Range, rangeOf } from './lattice.ts';
import { oneOf } from './random.ts';

/** The best lay, with everything beyond a cut drawn at random moved towards the start. */
export function shortened(
  field: Field,
  best: BestLay,
  random: () => number,
  target: number,
): boolean {
  best.load();
  const cut = random() * best.length;
  for (let i = 0; i < field.problem.moving; i++) {
    if (field.x[i]! > cut) field.x[i] = field.x[i]! - (best.length - target);
  }
  return holdIn(field, target);
}

/** Two pieces of different kinds, of the larger half, change places. */
export function exchange(field: Field, bySize: readonly number[], random: () => number): void {
  const { x, y, problem } = field;
  const half = Math.max(2, Math.ceil(bySize.length / 2));
  const one = bySize[oneOf(random, half)]!;
  const others = bySize.slice(0, half).filter((i) => problem.pieces[i] !== problem.pieces[one]);
  const other = others[oneOf(random, others.length)];
  if (other === undefined) return;
  [x[one], x[other]] = [x[other]!, x[one]!];
  [y[one], y[other]] = [y[other]!, y[one]!];
}

/** Puts every piece within the strip, and on the repeat where it must be; false where one can't. */
export function holdIn(field: Field, length: number): boolean {
  const { problem, shape } = field;
  for (let i = 0; i < problem.moving; i++) {
    const { shapes } = problem.kinds[problem.pieces[i]!]!;
    const turns = [shape[i]!, ...shapes.filter((own) => own !== shape[i])];
    if (!turns.some((own) => heldIn(field, i, own, length))) return false;
  }
  return true;
}

function heldIn({ problem, x, y, shape }: Field, piece: number, own: number, length: number) {
  const range: Range = { x0: 0, y0: 0, x1: 0, y1: 0 };
  if (!rangeOf(problem, problem.shapes[own]!, length, range)) return false;
  const { stepX, stepY, startX, startY } = latticeOf(problem, problem.shapes[own]!);
  const atX = onLattice(x[piece]! + stepX / 2, stepX, startX, range.x0, range.x1, 0);
  const atY = onLattice(y[piece]! + stepY / 2, stepY, startY, range.y0, range.y1, 0);
  if (Number.isNaN(atX) || Number.isNaN(atY)) return false;
  x[piece] = atX;
  y[piece] = atY;
  shape[piece] = own;
  return true;
}
