import type { PieceForm, PiecePlace, PieceSaid } from '../../../garment/record/piece-said.ts';
import { mm } from '../../../lengths/length.ts';
import type { EdgeWidths } from '../../../sewing/pieces/piece-edges.ts';

/** A place of an outline in mm: down along the grain, and across. */
type Place = readonly [down: number, across: number];

/** A piece with what is said of laying it. Lengths are 1/8000 mm where nothing else is said. */
export interface OutlineShown {
  need: string;
  name: string;
  /** As the garment cuts it; of a piece on the fold the half. */
  asked: { long: number; wide: number };
  fold: boolean;
  /** What its edges take; undefined where the garment doesn't say so. */
  edges: EdgeWidths | undefined;
  said: PieceSaid;
  /** Of an outline of its own, in mm: as it is cut, and as it was entered. Undefined while that is worked out. */
  drawn: { cut: readonly Place[]; entered: readonly Place[] } | undefined;
  /** Why it can't be laid, or why that isn't known. */
  problem: string | undefined;
}

/** How large an outline is that lies in the place of the rectangle; undefined where there is none. */
export function sizeOf({ drawn }: Pick<OutlineShown, 'drawn'>) {
  if (!drawn) return undefined;
  const [long, wide] = ([0, 1] as const).map((way) => {
    const all = drawn.cut.map((place) => place[way]);
    return mm(Math.max(...all) - Math.min(...all));
  });
  return { long: long ?? 0, wide: wide ?? 0 };
}

/** A rectangle as large as the garment cuts the piece, to be changed. */
export const rectangleForm = ({ asked: { long, wide } }: OutlineShown): PieceForm => ({
  ...{ kind: 'four', long: Math.round(long), slant: 'both' },
  ...{ top: Math.round(wide), bottom: Math.round(wide) },
});

/** How far a side of a form bows; nothing where it is straight. */
export const bowOf = ({ bows }: PieceForm, at: number): number => bows?.[at] ?? 0;

/** The form with one side bowing otherwise. */
export function withBow(form: PieceForm, at: number, bow: number): PieceForm {
  const count = form.kind === 'four' ? 4 : form.points.length;
  const bows = Array.from({ length: count }, (_, i) => (i === at ? bow : bowOf(form, i)));
  const { bows: _, ...straight } = form;
  return bows.some((one) => one !== 0) ? { ...straight, bows } : straight;
}

/** The form with a point put in the place of another, or behind all; undefined takes it out. */
export function withPoint(
  form: PieceForm & { kind: 'points' },
  at: number,
  point: PiecePlace | undefined,
): PieceForm | undefined {
  const put = <One>(all: readonly One[], one: One | undefined): One[] => [
    ...all.slice(0, at),
    ...(one === undefined ? [] : [one]),
    ...all.slice(at + 1),
  ];
  const points = put(form.points, point);
  if (points.length === 0) return undefined;
  const { bows } = form;
  // A side that was is none any more once the point it goes from is gone.
  return { kind: 'points', points, ...(bows && { bows: point ? bows : put(bows, undefined) }) };
}

/** Points turned a quarter, or as in a mirror, with their top and their left at 0 again. */
export function turnedForm(
  form: PieceForm & { kind: 'points' },
  how: 'quarter' | 'mirror',
): PieceForm {
  const turned = form.points.map(
    ([down, across]): PiecePlace => (how === 'quarter' ? [across, -down] : [down, -across]),
  );
  const [top, left] = ([0, 1] as const).map((way) => Math.min(...turned.map((at) => at[way])));
  const points = turned.map(
    ([down, across]): PiecePlace => [down - (top ?? 0), across - (left ?? 0)],
  );
  return { ...form, points };
}
