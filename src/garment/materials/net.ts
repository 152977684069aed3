import type { Material } from '../record/material.ts';
import { NOTHING } from '../rows/points.ts';
import { biasCloth } from './bias-cloth.ts';
import { foldedRows, openRows, type Piece } from './in-rows.ts';
import type { Need, NeedWaits } from './need.ts';
import type { Served } from './served.ts';
import { washedWidth } from './to-buy.ts';

/** Why it isn't sure how much of a material is wanted. */
export type Unsure =
  | { why: 'waits'; at: NeedWaits }
  | { why: 'undecided'; need: Need }
  /** How long a strip is, that is as long as its edge. */
  | { why: 'no length'; need: Need }
  /** How wide the cloth is. */
  | { why: 'no width' }
  /** A piece is wider than the cloth is once it is washed. */
  | { why: 'too wide'; need: Need; by: number }
  /** No bias strip so wide or so long can be cut from the cloth. */
  | { why: 'no bias'; need: Need }
  | { why: 'too much' };

/**
 * What needs take of a material, of what is known of them: the rows their pieces are laid in, their
 * length together, or how many they are. In 1/8000 mm, or things.
 */
export function netOf(served: Served, needs: readonly Need[]): number {
  const { form, said } = served;
  const pieces = needs.flatMap((need) => piecesOf(need, said));
  if (form === 'count') return pieces.reduce((sum, { count }) => sum + count, 0);
  if (form === 'length') return pieces.reduce((sum, { count, along }) => sum + count * along, 0);
  return (rowsOf(served, needs, said.folded === true) ?? 0) + biasOf(served, needs).long;
}

/** How much of the length of cloth bias strips take, cut open from its whole width; none of what isn't laid. */
export function biasOf(
  { form, said }: Served,
  needs: readonly Need[],
): ReturnType<typeof biasCloth> {
  if (form !== 'laid' || said.width === undefined) return { long: 0, cannot: [] };
  const strips = needs
    .filter(isBias)
    .flatMap((need) =>
      piecesOf(need, said).map(({ across, along }) => ({ need, wide: across, long: along })),
    );
  return biasCloth(strips, washedWidth(said.width, said));
}

/** What is cut across the grain has no place among pieces that lie along it. */
export const isBias = ({ kind }: Need) => kind === 'bias';

/**
 * How long the rows of pieces are, open or folded; undefined while it isn't known how wide the cloth is.
 * On a pattern that comes again every row begins alike in it, so each takes whole repeats; and one more is
 * wanted, since the cloth is cut from the bolt anywhere in it.
 *
 * Source of the one more: a page for sewers on how much cloth to buy. That rows take whole ones: derived here.
 */
export function rowsOf(
  { said }: Served,
  needs: readonly Need[],
  folded: boolean,
): number | undefined {
  const { width, repeat = 0 } = said;
  if (width === undefined) return undefined;
  const washed = washedWidth(width, said);
  const laid = needs.filter((need) => !isBias(need));
  const pieces = laid.flatMap((need) => piecesOf(need, said));
  const narrow = pieces.filter(({ across }) => across <= washed + NOTHING);
  const long = (folded ? foldedRows : openRows)(inRepeats(narrow, repeat), washed);
  return long === undefined || narrow.length === 0 ? long : long + repeat;
}

/** Pieces as long as the whole repeats they reach into. */
function inRepeats(pieces: readonly Piece[], repeat: number): readonly Piece[] {
  if (repeat === 0) return pieces;
  const up = (along: number) => Math.ceil((along - NOTHING) / repeat) * repeat;
  return pieces.map((piece) => ({ ...piece, along: up(piece.along) }));
}

/** All that makes it unsure. */
export function unsureOf(served: Served): Unsure[] {
  const { needs, form, said } = served;
  const noWidth = form === 'laid' && said.width === undefined && needs.length > 0;
  return [
    ...needs.flatMap(({ waits }) => waits.map((at): Unsure => ({ why: 'waits', at }))),
    ...needs.flatMap((need): Unsure[] => {
      if (need.undecided) return [{ why: 'undecided', need }];
      if (need.size && need.by === 'edge' && longOf(need, said) === undefined) {
        return [{ why: 'no length', need }];
      }
      const by = tooWide(served, need);
      return by === undefined ? [] : [{ why: 'too wide', need, by }];
    }),
    ...biasOf(served, needs).cannot.map((need): Unsure => ({ why: 'no bias', need })),
    ...(noWidth ? [{ why: 'no width' } as const] : []),
  ];
}

/** By how much a piece is wider than the washed cloth it is laid on; undefined where it isn't. */
export function tooWide({ form, said }: Served, { size }: Need): number | undefined {
  if (form !== 'laid' || said.width === undefined || size?.across === undefined) return undefined;
  const by = size.across - washedWidth(said.width, said);
  return by > NOTHING ? by : undefined;
}

function piecesOf(need: Need, said: Material): Piece[] {
  const { size } = need;
  if (!size) return [];
  const along = need.by === 'edge' ? longOf(need, said) : size.along;
  if (need.by !== 'count' && along === undefined) return [];
  return [{ ...size, along: along ?? 0, across: size.across ?? 0 }];
}

/** How long an edge is said to be. */
export function longOf({ key }: Need, { long }: Material): number | undefined {
  return long && Object.hasOwn(long, key) ? long[key] : undefined;
}
