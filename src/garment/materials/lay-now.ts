import { inches } from '../../lengths/length.ts';
import {
  type ClothLay,
  type FoundLay,
  heldOn,
  idOfLaid,
  keepsHeld,
  type LaidOf,
  type LaidOutline,
  type LaidSize,
  type PlacedPiece,
  saidOfPiece,
} from '../record/cloth-lay.ts';
import {
  endsOf,
  leastArea,
  leastLong,
  MOST_TILT,
  type PieceOutline,
  type PieceSaid,
} from '../record/piece-said.ts';
import { same } from '../work-out/same.ts';
import type { Need } from './need.ts';
import { isBias, longOf, netOf } from './net.ts';
import type { Served } from './served.ts';
import { washedWidth } from './to-buy.ts';

/** What of a lay that was found is otherwise now: pieces by id, the cloth, or what is held. */
export interface LayStale {
  pieces: readonly string[];
  cloth: boolean;
  held: boolean;
}

/** A cloth's lay as it stands. */
export interface LayNow {
  /** What a lay is to be found for; undefined while it isn't known how wide the cloth is. */
  of: LaidOf | undefined;
  /** Needs whose pieces are in it, by id. */
  needs: ReadonlyMap<string, Need>;
  /** Cut before there was a lay of the cloth as it lies now: their cloth is gone, wherever it was. */
  gone: readonly Need[];
  /** Pieces that stay where they are: cut there, or put there by the maker. */
  fixed: readonly PlacedPiece[];
  found: FoundLay | undefined;
  /** Undefined where it holds, and where none was found. */
  stale: LayStale | undefined;
}

/** What a lay is of, and whether the one that was found still holds. */
export function layNow(served: Served, lay: ClothLay): LayNow {
  const { found } = lay;
  const there = found ? placesIn(found, served) : [];
  const held = heldOn(lay, served.said.folded === true);
  const placed = new Set(there.map(idOfLaid));
  const known = served.needs.filter((need) => {
    const { outline } = saidOfPiece(lay, need.key);
    // Laid without what its edges take it would be cut too small.
    const known = outline?.adds !== 'edges' || need.edges;
    return !isBias(need) && cutSize(served, need) && known;
  });
  const partners = partnersOf(served, lay, known);
  const laidAs = (home: string) => partners.get(home) ?? home;
  const isGone = ({ state, home }: Need) => state === 'made' && !placed.has(laidAs(home));
  const laid = known.filter((need) => !isGone(need));
  const needs = new Map(laid.map((need) => [need.home, need]));
  // One that is cut through both layers is cut with its partner.
  const cutNow = new Set(
    laid.filter(({ state }) => state !== 'planned').map(({ home }) => laidAs(home)),
  );
  const begun = (id: string) => cutNow.has(id);
  const cut = there.filter((one) => begun(idOfLaid(one)));
  const put = held.filter((one) => needs.has(idOfLaid(one)) && !begun(idOfLaid(one)));
  const fixed = [...cut, ...put];
  // Where the one before it was cut without a lay the other is laid by itself.
  const cutWith = new Map([...partners].filter(([, home]) => needs.has(home)));
  const of = laidOf(served, lay, { needs: laid, partners: cutWith, begun });
  const stale = found && staleOf(found, of, fixed);
  return { of, needs, gone: known.filter(isGone), fixed, found, stale };
}

/** Where the pieces of a lay lie: from the fold, and through two layers, they are no places of open cloth, nor the other way. */
const placesIn = ({ laid, of }: FoundLay, { said }: Served): readonly PlacedPiece[] =>
  of.folded === (said.folded === true) ? laid : [];

/**
 * Of left and right, where they are a pair and the cloth is folded, the one that is cut with the other:
 * both through its layers at once. By home, the home of the one before it.
 */
function partnersOf(
  served: Served,
  lay: ClothLay,
  known: readonly Need[],
): ReadonlyMap<string, string> {
  if (!served.said.folded) return new Map();
  const pairs = known.flatMap((need): [string, string][] => {
    const place = sideOf(served, need);
    if (place % 2 === 0 || !saidOfPiece(lay, need.key).pair) return [];
    const before = known.find((one) => one.key === need.key && sideOf(served, one) === place - 1);
    return before && areAlike(before, need) ? [[need.home, before.home]] : [];
  });
  return new Map(pairs);
}

function larger(one: LaidSize, other: LaidSize = one): Pick<LaidSize, 'along' | 'across'> {
  const most = (key: 'along' | 'across') => Math.max(one[key], other[key]);
  return { along: most('along'), across: most('across') };
}

/** One of each, as large as the other: what is cut is known no better than by a tape. */
function areAlike({ size: one }: Need, { size: other }: Need): boolean {
  const single = one?.count === 1 && other?.count === 1 && !one.fold && !other.fold;
  const near = (key: 'along' | 'across') =>
    Math.abs((one?.[key] ?? 0) - (other?.[key] ?? 0)) <= CUT_WITHIN;
  return single && near('along') && near('across');
}

/** Which of the sides of its work a need is of, from 0. */
function sideOf({ needs }: Served, need: Need): number {
  return needs.filter(({ key }) => key === need.key).indexOf(need);
}

interface ToLay {
  needs: readonly Need[];
  partners: ReadonlyMap<string, string>;
  begun: (home: string) => boolean;
}

function laidOf(
  served: Served,
  lay: ClothLay,
  { needs, partners, begun }: ToLay,
): LaidOf | undefined {
  const { said } = served;
  if (said.width === undefined) return undefined;
  const cutWith = new Map([...partners].map(([other, home]) => [home, other]));
  const placed = needs.filter(({ home }) => !partners.has(home));
  const sizes = placed.map((need): [string, LaidSize] => {
    const piece = saidOfPiece(lay, need.key);
    const by = laidBy(need, piece, sideOf(served, need));
    const size = { ...(cutSize(served, need) as LaidSize), ...by };
    const other = needs.find(({ home }) => home === cutWith.get(need.home));
    const now = other ? { ...size, ...larger(size, cutSize(served, other)), count: 2 } : size;
    return [need.home, asLaid(begun(need.home), now, lay.found?.of.pieces[need.home])];
  });
  return {
    width: Math.floor(washedWidth(said.width, said)),
    folded: said.folded === true,
    nap: lay.nap === true,
    gap: lay.gap ?? 0,
    ...(said.repeat !== undefined && { repeat: said.repeat }),
    ...(lay.repeatAcross !== undefined && { repeatAcross: lay.repeatAcross }),
    ...(lay.flaws && lay.flaws.length > 0 && { flaws: lay.flaws }),
    pieces: Object.fromEntries(sizes),
  };
}

/**
 * How the pieces of a need may lie, and their outline.
 * @param side which of the sides of its work it is: of a pair every other is the mirror image
 */
function laidBy(need: Need, said: PieceSaid, side: number): Partial<LaidSize> {
  const { outline, pair, ...rest } = said;
  const one = need.size?.count === 1;
  return {
    ...rest,
    ...(outline && { outline: laidOutline(outline, need.edges) }),
    ...(pair && !one && { pair }),
    ...(pair && one && side % 2 === 1 && { mirrored: true as const }),
  };
}

/** What each side of an outline takes, where the garment says it. */
export function laidOutline({ form, adds }: PieceOutline, edges: Need['edges']): LaidOutline {
  if (adds === undefined) return { form };
  const sides = endsOf(form).length;
  if (typeof adds === 'number') return { form, adds: Array<number>(sides).fill(adds) };
  if (!edges) return { form };
  const { other, bottom, side, top } = edges;
  const four = [other, bottom, side, top].map((wide) => Math.ceil(wide));
  // Which side of an outline an edge became can't be told: all get as much as the widest takes.
  return { form, adds: form.kind === 'four' ? four : Array(sides).fill(Math.max(...four)) };
}

/** Half the coarsest graduation that cloth is cut by: a cut piece is known no better. */
const CUT_WITHIN = inches(1 / 16);

/** A piece that is cut counts as it was laid, unless it took more cloth than that. */
function asLaid(cut: boolean, now: LaidSize, before: LaidSize | undefined): LaidSize {
  if (!cut || !before) return now;
  const more = Math.max(now.along - before.along, now.across - before.across);
  const alike = now.count === before.count && now.fold === before.fold;
  return alike && more <= CUT_WITHIN ? before : now;
}

/** How large the pieces of a need are, never too small; undefined while that isn't known. */
export function cutSize({ form, said }: Served, need: Need): LaidSize | undefined {
  const { size } = need;
  if (form !== 'laid' || !size) return undefined;
  const along = need.by === 'edge' ? longOf(need, said) : size.along;
  if (along === undefined || size.across === undefined || size.count < 1) return undefined;
  const up = (of: number) => Math.ceil(of - 1e-6);
  return { count: size.count, along: up(along), across: up(size.across), fold: size.fold };
}

/**
 * What is wanted beside the length of a lay: for what has no place in it, be it that it was cut without it or
 * that its outline isn't known, for bias strips, and on a pattern one repeat, since the cloth is cut from the
 * bolt anywhere in it (see `rowsOf`). In 1/8000 mm.
 */
export function besideLay(served: Served, { needs }: LayNow): number {
  const others = served.needs.filter(({ home }) => !needs.has(home));
  return netOf(served, others) + (served.said.repeat ?? 0);
}

function staleOf(
  found: FoundLay,
  of: LaidOf | undefined,
  fixed: readonly PlacedPiece[],
): LayStale | undefined {
  const { pieces: before, ...clothThen } = found.of;
  const { pieces: now, ...clothNow } = of ?? { pieces: {} as LaidOf['pieces'] };
  const ids = [...new Set([...Object.keys(before), ...Object.keys(now)])];
  const pieces = ids.filter((id) => !same(before[id], now[id]));
  const cloth = of !== undefined && !same(clothThen, clothNow);
  const held = !keepsHeld(found, fixed);
  const forged = of !== undefined && !couldBe(found, of);
  return pieces.length > 0 || cloth || held || forged ? { pieces, cloth, held } : undefined;
}

/** Off the grain a piece may be a little shorter. */
const TILTED = Math.cos((MOST_TILT * Math.PI) / 180);

/** No lay is shorter than its longest piece, or than all its cloth together: a file may say anything. */
function couldBe({ length }: FoundLay, { width, pieces }: LaidOf): boolean {
  const all = Object.values(pieces);
  const area = all.reduce((sum, size) => sum + size.count * areaOf(size), 0);
  const longest = all.reduce((most, size) => Math.max(most, longAtLeast(size)), 0);
  return length >= Math.max(longest, area / width) * (1 - 1e-6);
}

function areaOf({ along, across, fold, outline }: LaidSize): number {
  if (!outline) return along * across;
  return (fold ? 2 : 1) * leastArea(outline.form);
}

function longAtLeast({ along, outline, tilt }: LaidSize): number {
  return (outline ? leastLong(outline.form) : along) * (tilt === undefined ? 1 : TILTED);
}
