import { layIn } from '../record/cloth-lay.ts';
import { materialsIn } from '../record/material.ts';
import type { Garment } from '../record/record.ts';
import { NOTHING } from '../rows/points.ts';
import type { WorkTrouble } from '../work-out/told.ts';
import type { Answer } from '../work-out/work-out.ts';
import { besideLay, type LayNow, layNow } from './lay-now.ts';
import { type Need, needsOf } from './need.ts';
import { biasOf, isBias, netOf, tooWide, type Unsure, unsureOf } from './net.ts';
import { type Served, servedBy } from './served.ts';
import { costOf, upToUnit, withSpare } from './to-buy.ts';

/** A thing to have at hand. Lengths in 1/8000 mm. */
export interface MaterialNow extends Served {
  /** What the works take of it, and what is wanted besides; of what is known so far. */
  net: number;
  /** The same with what is spare, and before it shrinks. */
  have: number;
  /** The same up to what the shop sells, and the spools that are needed only because several are fed at once. */
  buy: number;
  /** Of thread that is sold by the spool: how many, and how many are fed at once. */
  spools: { count: number; fed: number } | undefined;
  /** Why that is not to be relied on; empty where it is. */
  unsure: readonly Unsure[];
  /** What of it bias strips take, cut from the whole width of cloth. */
  bias: number;
  /** Pieces are laid in rows: it is the most it takes, until a lay is found. */
  bound: boolean;
  /** Of what is laid, how its pieces lie. */
  lay: LayNow | undefined;
  state: Need['state'];
  /** All of it is there. */
  ticked: boolean;
  /** How much more is to be bought; all of it while nothing is said to be there. */
  lacks: number;
  /** The works that what is there doesn't reach for, in their order; none while nothing is said of it. */
  stops: readonly string[];
  /** What it costs, and what is lacking of it does; undefined without a price, and of what is unsure. */
  cents: number | undefined;
  left: number | undefined;
}

/** All that a garment wants at hand. */
export interface Materials {
  all: readonly MaterialNow[];
  /** Works whose needs aren't known here. */
  unknown: readonly WorkTrouble[];
  /** Ids of what is said of materials and can't be read. */
  unsound: readonly string[];
  /** What it comes to, in hundredths: all of it, and what is still to be bought. */
  cents: number;
  left: number;
  /** How many of all are not in that sum. */
  without: number;
}

/** Everything to have at hand for a garment, as its works take it and its maker says of it. */
export function materialsOf(record: Garment, answer: Answer): Materials {
  const { said, unsound } = materialsIn(record);
  const needs = needsOf(answer);
  const served = servedBy(needs, said);
  const taken = new Set(served.flatMap((one) => one.needs));
  const shown = served.filter(
    ({ own, needs: mine, said: of, could }) =>
      own || mine.length > 0 || of.more !== undefined || could.some((need) => !taken.has(need)),
  );
  const all = shown.map((one) => materialNow(one, record)).sort(inOrder);
  const sum = (part: 'cents' | 'left') => all.reduce((so, one) => so + (one[part] ?? 0), 0);
  return {
    ...{ all, unsound, unknown: answer.troubles },
    ...{ cents: sum('cents'), left: sum('left') },
    without: all.filter(({ cents }) => cents === undefined).length,
  };
}

function materialNow(served: Served, record: Garment): MaterialNow {
  const { needs, said, form, kind } = served;
  const lies = form === 'laid' && needs.some((need) => !isBias(need));
  const lay = lies ? layNow(served, layIn(record, served.id)) : undefined;
  // Folded, a lay knows nothing of a pattern: its pieces don't begin alike in it.
  const blind = said.folded && said.repeat !== undefined;
  const laid = lay && !blind ? laidLength(served, lay) : undefined;
  const net = (laid ?? netOf(served, needs)) + (said.more ?? 0);
  const have = withSpare(net, said);
  const fed = kind === 'thread' ? Math.max(1, ...needs.map((need) => need.fed)) : 1;
  const wanted = have > NOTHING ? have + spoolsBeside(fed, said.unit) : have;
  const bought = upToUnit(wanted, said.unit);
  const unsure: readonly Unsure[] =
    bought === undefined ? [...unsureOf(served), { why: 'too much' }] : unsureOf(served);
  const buy = bought ?? 0;
  const lacks = lackingOf(wanted, served) ?? 0;
  const price = unsure.length === 0 ? said.price : undefined;
  return {
    ...served,
    ...{ net, have, buy, unsure, lacks },
    spools: kind === 'thread' && said.unit ? { count: buy / said.unit, fed } : undefined,
    bias: biasOf(served, needs).long,
    bound: lies && laid === undefined,
    lay,
    state: stateOf(needs),
    ticked: said.there !== undefined && unsure.length === 0 && lacks === 0,
    stops: stoppedBy(served, laid),
    cents: price && costOf(buy, price),
    left: price && costOf(lacks, price),
  };
}

/**
 * Threads fed at once each run from a spool of their own: however they share the length, one spool for each
 * beyond the first is enough beside those that the length takes (derived here: each may leave one begun).
 */
function spoolsBeside(fed: number, unit = 0): number {
  return (fed - 1) * unit;
}

function lackingOf(have: number, { said: { there = 0, unit } }: Served): number | undefined {
  const lacks = have - there;
  return lacks <= NOTHING ? 0 : upToUnit(lacks, unit);
}

/** How long the cloth is that a lay takes which still holds, and what was cut without one. */
function laidLength(served: Served, lay: LayNow): number | undefined {
  const { found, stale } = lay;
  return found && !stale ? found.length + besideLay(served, lay) : undefined;
}

/**
 * What is made has had its share; the rest takes it in the order of the work.
 * @param laid what all of it takes where a lay was found: a part of it takes no more
 */
function stoppedBy(served: Served, laid = Number.POSITIVE_INFINITY): string[] {
  const { needs, said } = served;
  const { there, spare: _, ...bare } = said;
  if (there === undefined) return [];
  const made = needs.filter(({ state }) => state === 'made');
  const open = needs.filter((need) => need.size && !made.includes(need) && !tooWide(served, need));
  const reaches = (many: number) =>
    withSpare(Math.min(laid, netOf(served, [...made, ...open.slice(0, many)])), bare) <=
    there + NOTHING;
  // One more never takes less, so the first that isn't reached is found by halving.
  let [enough, short] = [0, open.length + 1];
  while (short - enough > 1) {
    const half = Math.floor((enough + short) / 2);
    if (reaches(half)) enough = half;
    else short = half;
  }
  return [...new Set(open.slice(enough).map(({ work }) => work))];
}

function stateOf(needs: readonly Need[]): Need['state'] {
  if (needs.length > 0 && needs.every(({ state }) => state === 'made')) return 'made';
  return needs.some(({ state }) => state !== 'planned') ? 'partly made' : 'planned';
}

/** Cloth first; then as the work takes it, and last what none takes. */
function inOrder(one: MaterialNow, other: MaterialNow): number {
  const place = ({ form, needs }: MaterialNow) =>
    form === 'laid' ? -1 : (needs[0]?.place ?? Number.MAX_SAFE_INTEGER);
  return place(one) - place(other);
}
