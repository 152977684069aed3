import type { Places } from './field.ts';
import type { Problem } from './problem.ts';
import type { Snapshot } from './separate.ts';
import type { Lay } from './task.ts';

export type BestLay = ReturnType<typeof keeper>;

/** Holds the best lay of all that are shown to it. */
export function keeper(problem: Problem, places: Places, onBetter: (lay: Lay) => void) {
  const { x, y, shape } = places;
  const held = copyOf({ x, y, shape, overlap: 0 });
  const counted = (i: number) => !problem.kinds[problem.pieces[i]!]!.isFlaw;
  const used = () => {
    let end = 0;
    for (let i = 0; i < x.length; i++) {
      if (counted(i)) end = Math.max(end, x[i]! + problem.shapes[shape[i]!]!.box.x1);
    }
    return end;
  };
  const best = {
    length: Infinity,
    keep: () => {
      const length = used();
      if (length >= best.length) return;
      best.length = length;
      held.x.set(x);
      held.y.set(y);
      held.shape.set(shape);
      onBetter(best.lay());
    },
    load: () => take(places, held),
    lay: (): Lay => ({ laid: laidOf(problem, held), length: best.length }),
  };
  return best;
}

function laidOf({ kinds, pieces, shapes }: Problem, { x, y, shape }: Snapshot) {
  return pieces
    .map((kind, i) => ({
      kind,
      id: kinds[kind]!.id,
      turn: shapes[shape[i]!]!.turn,
      x: x[i]!,
      y: y[i]!,
    }))
    .filter(({ kind }) => !kinds[kind]!.isFlaw)
    .map(({ id, turn, x: atX, y: atY }) => ({ id, turn, x: atX, y: atY }));
}

export const copyOf = ({ x, y, shape, overlap }: Snapshot): Snapshot => ({
  x: x.slice(),
  y: y.slice(),
  shape: shape.slice(),
  overlap,
});

export function take(places: Places, { x, y, shape }: Places): void {
  places.x.set(x);
  places.y.set(y);
  places.shape.set(shape);
}

/** Puts the pieces where a lay has them; false, and nothing is known of them, where it has others. */
export function putBack(problem: Problem, { x, y, shape }: Places, { laid }: Lay): boolean {
  const left = [...laid];
  return problem.pieces.slice(0, problem.moving).every((kind, i) => {
    const { id, shapes } = problem.kinds[kind]!;
    const at = left.findIndex((one) => one.id === id);
    const [one] = at < 0 ? [] : left.splice(at, 1);
    const own = shapes.find((name) => problem.shapes[name]!.turn === one?.turn);
    if (!one || own === undefined) return false;
    x[i] = one.x;
    y[i] = one.y;
    shape[i] = own;
    return true;
  });
}
