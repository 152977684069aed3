import { boxOf, type Outline, type Point, signedArea } from './outline.ts';
import type { Laid, Lay, LayPiece, LayTask } from './task.ts';
import { meet } from './touching.ts';

/** What is wrong with a lay. */
export type LayFault =
  | { kind: 'count'; id: string }
  | { kind: 'turn'; id: string }
  | { kind: 'off-cloth'; id: string }
  | { kind: 'off-fold'; id: string }
  | { kind: 'off-repeat'; id: string }
  | { kind: 'moved'; id: string }
  | { kind: 'length' }
  | { kind: 'overlap'; id: string; other: string };

/** A share of the width that counts as nothing: rounding, never cloth. */
const NOTHING = 1e-6;

/**
 * Looks at a lay as someone who doesn't know how it was found: from the outlines themselves, and
 * by another way than the search's. No lay is shown that this finds a fault in.
 */
export function faultsOf(task: LayTask, lay: Lay): LayFault[] {
  const least = NOTHING * task.width;
  const placed = lay.laid.flatMap((laid) => {
    const piece = task.pieces.find(({ id }) => id === laid.id);
    return piece ? [{ piece, laid, outline: outlineOf(piece, laid) }] : [];
  });
  const ends = placed.map(({ outline }) => boxOf(outline).x1);
  const tooShort = Math.max(0, ...ends) > lay.length + least;
  return [
    ...countFaults(task, lay),
    ...(tooShort ? [{ kind: 'length' as const }] : []),
    ...placed.flatMap((one) => placeFaults(task, one, least)),
    ...stayFaults(task, lay, least),
    ...overlaps(task, placed, least),
  ];
}

/** A piece's corners where it lies: its own, turned about the middle of its box, and moved. */
export function outlineOf({ outline, onFold }: LayPiece, { turn, x, y }: Laid): Point[] {
  const box = boxOf(outline);
  const [midX, midY] = [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2];
  const flip = onFold && turn !== 0;
  const angle = flip ? 0 : (turn * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return outline.map(([px, py]): Point => {
    const [dx, dy] = [(px - midX) * (flip ? -1 : 1), py - midY];
    return [x + cos * dx - sin * dy, y + sin * dx + cos * dy];
  });
}

function countFaults({ pieces }: LayTask, { laid }: Lay): LayFault[] {
  const known = new Set(pieces.map(({ id }) => id));
  const strange = laid.filter(({ id }) => !known.has(id));
  const wrong = pieces.filter(
    ({ id, count }) => laid.filter((one) => one.id === id).length !== count,
  );
  return [...strange, ...wrong].map(({ id }) => ({ kind: 'count', id }));
}

interface Placed {
  piece: LayPiece;
  laid: Laid;
  outline: readonly Point[];
}

function placeFaults(task: LayTask, { piece, laid, outline }: Placed, least: number): LayFault[] {
  const { id } = piece;
  const { x0, y0, y1 } = boxOf(outline);
  const faults: LayFault[] = [];
  if (!piece.turns.includes(laid.turn)) faults.push({ kind: 'turn', id });
  const inside = x0 >= -least && y0 >= -least && y1 <= task.width + least;
  // Written so that what is no number is a fault as well.
  if (!inside) faults.push({ kind: 'off-cloth', id });
  if (piece.onFold && !(Math.abs(y0) <= least)) faults.push({ kind: 'off-fold', id });
  if (!onRepeat(task, piece, laid, least)) faults.push({ kind: 'off-repeat', id });
  return faults;
}

function onRepeat({ repeat }: LayTask, piece: LayPiece, laid: Laid, least: number): boolean {
  if (!repeat || !piece.match) return true;
  // The match point is turned and moved as a corner of the outline would be.
  const box = boxOf(piece.outline);
  const corners: Outline = [piece.match, [box.x0, box.y0], [box.x1, box.y1]];
  const [x, y] = movedWith(piece, corners, laid);
  const falls = (at: number, step: number) =>
    !(step > 0) || Math.abs(at - Math.round(at / step) * step) <= least;
  return falls(x, repeat.along) && falls(y, repeat.across);
}

function movedWith(piece: LayPiece, [match, low, high]: Outline, laid: Laid): Point {
  // A match point may lie outside its piece: the box it is turned about stays the piece's.
  const outline: Outline = [low!, [high![0], low![1]], high!, [low![0], high![1]]];
  const box = outlineOf({ ...piece, outline }, laid);
  const [u, v] = [high![0] - low![0], high![1] - low![1]];
  const [s, t] = [(match![0] - low![0]) / u, (match![1] - low![1]) / v];
  const along = (i: 0 | 1) =>
    box[0]![i] + s * (box[1]![i] - box[0]![i]) + t * (box[3]![i] - box[0]![i]);
  return [along(0), along(1)];
}

/** What stays has stayed, and nothing lies on a flaw. */
function stayFaults(task: LayTask, lay: Lay, least: number): LayFault[] {
  return (task.laid ?? [])
    .filter(
      ({ id, turn, x, y }) =>
        !lay.laid.some(
          (one) => one.id === id && one.turn === turn && Math.hypot(one.x - x, one.y - y) <= least,
        ),
    )
    .map(({ id }) => ({ kind: 'moved', id }));
}

function overlaps(task: LayTask, placed: readonly Placed[], least: number): LayFault[] {
  const flaws = (task.flaws ?? []).map((outline) => ({ id: '', outline }));
  const all = [...placed.map(({ piece, outline }) => ({ id: piece.id, outline })), ...flaws];
  const boxes = all.map(({ outline }) => boxOf(outline));
  const apart = task.gap ?? 0;
  const faults: LayFault[] = [];
  placed.forEach(({ piece, outline }, i) => {
    for (let j = i + 1; j < all.length; j++) {
      const [a, b] = [boxes[i]!, boxes[j]!];
      const beside = a.x1 + apart <= b.x0 || b.x1 + apart <= a.x0;
      if (beside || a.y1 + apart <= b.y0 || b.y1 + apart <= a.y0) continue;
      const other = all[j]!;
      if (meet(outline, other.outline, apart, least)) {
        faults.push({ kind: 'overlap', id: piece.id, other: other.id });
      }
    }
  });
  return faults;
}

/**
 * The share of the cloth's area, up to the length used, that the pieces take; from 0 to 1.
 * @param wasted pieces of which an odd one is cut through two layers: its twin is left over, and is nothing used
 */
export function usedShare(task: LayTask, { length }: Lay, wasted: readonly string[] = []): number {
  const area = task.pieces.reduce((sum, { id, outline, count }) => {
    const used = wasted.includes(id) ? count - 1 / 2 : count;
    return sum + used * Math.abs(signedArea(outline));
  }, 0);
  return area / (task.width * length);
}
