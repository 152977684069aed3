import {
  type FoundLay,
  idOfLaid,
  type LaidOf,
  type LaidSize,
  MOST_LAID,
  type PlacedPiece,
} from '../../garment/record/cloth-lay.ts';
import { faultsOf, type LayFault, outlineOf } from '../../lay/check-lay.ts';
import { type Cloth, type ClothOutcome, type CutPiece, taskOf } from '../../lay/cloth.ts';
import { boxOf, mirrored, type Outline } from '../../lay/outline.ts';
import type { PieceProblem } from '../../lay/pieces/piece-problem.ts';
import type { Laid, Lay, LayTask } from '../../lay/task.ts';
import type { CutOutlines } from './cut-outlines.ts';
import { inMm, inUnits, inUnitsExactly } from './lay-units.ts';

const placeIn = ({ id, turn, x, y }: PlacedPiece): Laid => ({
  ...{ id, turn },
  ...{ x: inMm(x), y: inMm(y) },
});
export const keptPlace = ({ id, turn, x, y }: Laid): PlacedPiece => ({
  ...{ id, turn },
  ...{ x: inUnits(x), y: inUnits(y) },
});

/** A piece without an outline of its own is laid as the rectangle it is cut from. */
function rectangle({ along, across, fold }: LaidSize): Outline {
  const [long, wide] = [inMm(along), inMm(fold ? across / 2 : across)];
  return boxed(0, long, 0, wide);
}

function boxed(x0: number, x1: number, y0: number, y1: number): Outline {
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}

/**
 * The other of a pair lies as in a mirror, with the place that is to match.
 * @param begins on a pattern it falls where that begins: by the place that was said, else by its upper left corner
 */
function cutPiece(id: string, size: LaidSize, outline: Outline, begins: boolean): CutPiece {
  const { count, pair = false, mirrored: other, fold, oneWay, tilt, match } = size;
  const flip = other && !fold;
  const { x0, y0 } = boxOf(outline);
  const [x, y] = match ? [inMm(match[0]), inMm(match[1])] : [x0, y0];
  return {
    ...{ id, outline: flip ? mirrored(outline) : outline, count },
    ...{ pair, onFold: fold },
    ...(oneWay && { turns: 'none' as const }),
    ...(tilt !== undefined && { tilt }),
    ...(begins && { match: [x, flip ? -y : y] as const }),
  };
}

/**
 * The flaws of a cloth as it is laid. Folded, its middle is the fold, and a flaw of either layer is
 * cut through both.
 */
function flawsOf({ flaws = [], folded, width }: LaidOf): Outline[] {
  const middle = width / 2;
  const room = folded ? middle : width;
  return flaws.flatMap(({ along, across, long, wide }) => {
    const [a, b] = folded ? [across - middle, across + wide - middle] : [across, across + wide];
    const over = a * b < 0;
    const [near, far] = [Math.min(Math.abs(a), Math.abs(b)), Math.max(Math.abs(a), Math.abs(b))];
    const low = over ? 0 : near;
    if (low >= room) return [];
    const [x0, x1, y0, y1] = [along, along + long, low, Math.min(far, room)].map(inMm);
    return [boxed(x0 ?? 0, x1 ?? 0, y0 ?? 0, y1 ?? 0)];
  });
}

/** The cloth a lay is for: it is washed, and what is bought is reckoned elsewhere. */
const clothOf = (of: LaidOf): Cloth => ({
  ...{ width: inMm(of.width), folded: of.folded, nap: of.nap, gap: inMm(of.gap) },
  ...{ shrinkAlong: 0, shrinkAcross: 0, unit: 1 },
  ...(of.flaws && { flaws: flawsOf(of) }),
  // Folded, the layer below isn't seen: its lay knows nothing of the pattern.
  ...(hasPattern(of) && {
    repeat: { along: inMm(of.repeat ?? 0), across: inMm(of.repeatAcross ?? 0) },
  }),
});

const hasPattern = ({ folded, repeat, repeatAcross }: LaidOf) =>
  !folded && (repeat !== undefined || repeatAcross !== undefined);

/** What is to be laid; or why it can't be: the cloth is against it, or an outline is none. */
export type TaskOutcome =
  | ClothOutcome
  | { ok: false; problem: { kind: 'no-outline'; id: string; problem: PieceProblem } };

/** What is to be laid, with what stays where it is; or why it can't be. */
export function taskFor(of: LaidOf, fixed: readonly PlacedPiece[], cut: CutOutlines): TaskOutcome {
  const all = taskWith(of, cut, new Set());
  if (!all.ok || !hasPattern(of)) return withFixed(all, fixed);
  // Of pieces that stay where they begin elsewhere in the pattern none can begin as the others do.
  const off = fixed.filter((one) => isOffRepeat(all.value, placeIn(one))).map(idOfLaid);
  return withFixed(off.length > 0 ? taskWith(of, cut, new Set(off)) : all, fixed);
}

const isOffRepeat = (task: LayTask, laid: Laid) =>
  faultsOf(task, { laid: [laid], length: Number.MAX_VALUE }).some(
    ({ kind }) => kind === 'off-repeat',
  );

/** @param off ids of what falls anywhere in the pattern */
function taskWith(of: LaidOf, cut: CutOutlines, off: ReadonlySet<string>): TaskOutcome {
  const pieces: CutPiece[] = [];
  for (const [id, size] of Object.entries(of.pieces)) {
    const own = size.outline
      ? cut.get(id)
      : { ok: true as const, value: { laid: rectangle(size) } };
    if (!own) throw new Error(`the outline of ${id} wasn't cut`);
    if (!own.ok) {
      return { ok: false, problem: { kind: 'no-outline', id, problem: own.problems[0] } };
    }
    pieces.push(cutPiece(id, size, own.value.laid, hasPattern(of) && !off.has(id)));
  }
  return taskOf(pieces, clothOf(of));
}

function withFixed(outcome: TaskOutcome, fixed: readonly PlacedPiece[]): TaskOutcome {
  if (!outcome.ok) return outcome;
  const laid = fixed.map(placeIn).filter(({ id, turn }, place, all) => {
    const piece = outcome.value.pieces.find((one) => one.id === id);
    const before = all.slice(0, place).filter((one) => one.id === id).length;
    return piece?.turns.includes(turn) && before < piece.count;
  });
  return { ...outcome, value: { ...outcome.value, ...(laid.length > 0 && { laid }) } };
}

/** A lay of a record as the search has it. */
const layOf = ({ length, laid }: FoundLay): Lay => ({
  ...{ length: inMm(length), laid: laid.slice(0, MOST_LAID).map(placeIn) },
});

/** Pieces lie a hair apart, this share of the width: that is no cloth, and doesn't make a unit more. */
const HAIR = 5e-7;

/** A lay of the search as a record keeps it. */
export function foundFor({ length, laid }: Lay, of: LaidOf): FoundLay {
  const long = Math.ceil(inUnitsExactly(length) - HAIR * of.width);
  return { length: long, laid: laid.map(keptPlace), of };
}

/** The lay kept in a record, if it breaks none of the rules of now. */
export function soundLay(task: LayTask, found: FoundLay | undefined): Lay | undefined {
  const lay = found && layOf(found);
  return lay && faultsOf(task, lay).length === 0 ? lay : undefined;
}

/** A laid piece with its corners; nothing where the task has no such piece. */
export interface Seen {
  /** Its place in the lay. */
  at: number;
  home: string;
  laid: Laid;
  outline: Outline;
  onFold: boolean;
}

/** The pieces of a lay in the order in which they are laid out: from the cut end on. */
export function seenIn({ pieces }: LayTask, { laid }: Lay): Seen[] {
  const all = laid.flatMap((one, at) => {
    const piece = pieces.find(({ id }) => id === one.id);
    if (!piece) return [];
    const outline = outlineOf(piece, one);
    return { at, home: idOfLaid(one), laid: one, outline, onFold: piece.onFold === true };
  });
  const corner = new Map(all.map((one) => [one, boxOf(one.outline)]));
  return all.sort((a, b) => {
    const [one, other] = [corner.get(a), corner.get(b)];
    return (one?.x0 ?? 0) - (other?.x0 ?? 0) || (one?.y0 ?? 0) - (other?.y0 ?? 0);
  });
}

/** On a pattern by whole repeats, one at least where it is to go that way. */
function inRepeats(step: number, by: number): number {
  if (step === 0 || by === 0) return by;
  return Math.sign(by) * Math.max(1, Math.round(Math.abs(by) / step)) * step;
}

/** A lay with one piece put elsewhere, by so many mm, as long as it then is; and what is wrong with it. */
export function putBy(
  task: LayTask,
  { laid }: Lay,
  at: number,
  [along, across]: readonly [number, number],
): { lay: Lay; faults: readonly LayFault[] } {
  const dx = inRepeats(task.repeat?.along ?? 0, along);
  const dy = inRepeats(task.repeat?.across ?? 0, across);
  const put = laid.map((one, i) => {
    // As it is kept: what is shown is what is found again.
    return i === at ? placeIn(keptPlace({ ...one, x: one.x + dx, y: one.y + dy })) : one;
  });
  const ends = seenIn(task, { laid: put, length: 0 }).map(({ outline }) => boxOf(outline).x1);
  const lay = { laid: put, length: Math.max(0, ...ends) };
  const faults = faultsOf(task, lay).filter(({ kind }) => kind !== 'moved');
  return { lay, faults };
}
