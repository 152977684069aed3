import {
  type ExactLength,
  exactLength,
  type Length,
  LONGEST,
  length,
  settled,
  ZERO,
} from '../../lengths/length.ts';
import { MOST_STRIPS, type Strips, stripsFor } from '../cloth/strips.ts';
import {
  mustBeCount,
  mustBePositive,
  mustBePositiveIfGiven,
  mustNotBeNegative,
} from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';
import type { Run } from '../run.ts';
import { MOST_FULL } from './gathers-input.ts';
import { gatherMarks } from './gathers-marks.ts';

/** The most tiers there are. */
export const MOST_TIERS = 5;

/** The most parts each is divided into: of a sixteenth less than a hand lies between two pins. */
const MOST_TIER_PARTS = 16;

/** How much deeper each tier may be than the one above, at least and at most. */
const GROWTH = [0.2, 5] as const;

/** How deep tiers are, finished, from the top. */
export type TierDepths =
  /** Each as it was given; the length they should come to, where that is known. */
  | { by: 'own'; depths: readonly Length[]; long?: Length | undefined }
  /** So many that come to a length, each `growth` times as deep as the one above. */
  | { by: 'growing'; count: number; long: Length; growth: number };

export interface TiersInput {
  /** What the first is gathered to. */
  edge: Length;
  /** How full each is by the edge above: one for all, or one for each. */
  ratios: readonly number[];
  depths: TierDepths;
  /** Closed all round. */
  ring: boolean;
  /** Of a join of strips, and left at both ends of each row of them. */
  seam: Length;
  /** Taken by each tier of the seam between two, and of the one at the top. */
  between: Length;
  /** Of the last one. */
  hem: Length;
  /** The usable width of the cloth, which strips run across. */
  cloth: Length;
  /** Each tier and the edge above it are divided into as many. */
  parts: number;
}

export interface Tier {
  /** As long as it is sewn, and from cut end to cut end, joined. */
  strip: Length;
  cut: Length;
  ratio: number;
  /** Finished, and with its seams or hem. */
  deep: Length;
  cutDeep: Length;
  strips: Strips;
  /** What it is gathered to. */
  above: Length;
}

export interface Tiers {
  tiers: readonly Tier[];
  /** All depths together. */
  long: Length;
  /** What of the length they should come to is left; less than nothing where they are longer. */
  left: Length | undefined;
  /** Cloth for all strips of all tiers. */
  cloth: Length;
  /** How often the last goes round the first edge. */
  full: number;
}

/**
 * Rows of strips, each gathered to the one above: Sⱼ = rⱼ × Sⱼ₋₁, up to a whole unit, S₀ the edge. Each
 * is cut in ⌈Sⱼ ÷ (cloth − 2 seams)⌉ strips (`strips.ts`), its depth with a seam at the top and one, or the
 * hem, at the bottom. Depths are given, or grow by q to a length L: L(q − 1) ÷ (qᵏ − 1) the first,
 * L ÷ k where q is 1 (derived here), each to a whole unit so that they come to L.
 *
 * Source of tiers that multiply, and of depths that come to the length: `sources/gathers.ts`.
 *
 * @param cuts what rows were cut at, from the top, where they are made: those below go by that
 *
 * Problems: an edge or a depth of nothing, no tiers or more than five, a fullness under 1 or over 20, not as
 * many of them, a growth under 0.2 or over 5, tiers over a kilometre long, cloth that is all seam or takes
 * more than 500 strips, parts that are no whole number from 2 to 16, anything less than nothing.
 */
export function tiers(
  input: TiersInput,
  cuts: readonly (ExactLength | undefined)[] = [],
): Outcome<Tiers> {
  return answerUnless(tierProblems(input), () => {
    const depths = depthsOf(input.depths);
    const all: Tier[] = [];
    for (const [i, deep] of depths.entries()) {
      const above = all.at(-1)?.strip ?? input.edge;
      const row = tierUnder(input, { above, deep, cut: cuts[i], i, last: i === depths.length - 1 });
      if (!row.ok) return row;
      all.push(row.value);
    }
    const long = sumOf(depths);
    const asked = input.depths.long;
    return {
      ok: true,
      value: {
        tiers: all,
        long,
        left: asked === undefined ? undefined : length(asked - long),
        cloth: sumOf(all.map(({ strips }) => strips.cloth ?? ZERO)),
        full: (all.at(-1)?.strip ?? input.edge) / input.edge,
      },
    };
  });
}

interface Under {
  above: Length;
  deep: Length;
  /** What it was cut at. */
  cut: ExactLength | undefined;
  i: number;
  last: boolean;
}

function tierUnder(input: TiersInput, { above, deep, cut, i, last }: Under): Outcome<Tier> {
  const { ring, seam, between, hem, cloth } = input;
  const ratio = ratioOf(input, i);
  const strip =
    cut === undefined
      ? length(Math.ceil(settled(exactLength(ratio * above))))
      : length(Math.max(1, Math.round(cut) - 2 * seam));
  const cutDeep = length(deep + between + (last ? hem : between));
  const strips = stripsFor({ needed: strip, cloth, seam, ring, deep: cutDeep });
  if (!strips.ok) return strips;
  return {
    ok: true,
    value: {
      ...{ strip, cut: length(strip + 2 * seam), ratio: strip / above, deep, cutDeep },
      ...{ strips: strips.value, above },
    },
  };
}

/** Marks that meet: on a tier's upper edge from its cut end, on what is above from its beginning, each at its own scale. */
export function tierMarks(
  { ring, seam, parts }: Pick<TiersInput, 'ring' | 'seam' | 'parts'>,
  { strip, above }: Tier,
): { strip: Run; edge: Run } {
  return gatherMarks({ edge: above, flat: ZERO, ring, ends: seam, parts }, { strip, edge: above });
}

function ratioOf({ ratios }: TiersInput, i: number): number {
  return ratios[ratios.length === 1 ? 0 : i] ?? 1;
}

/** How deep each tier is, from the top. */
export function depthsOf(depths: TierDepths): readonly Length[] {
  if (depths.by === 'own') return depths.depths;
  const { count, long, growth } = depths;
  const down = (k: number) =>
    Math.round(long * (growth === 1 ? k / count : (growth ** k - 1) / (growth ** count - 1)));
  return Array.from({ length: count }, (_, k) => length(down(k + 1) - down(k)));
}

function sumOf(lengths: readonly Length[]): Length {
  return length(lengths.reduce((sum, one) => sum + one, 0));
}

function tierProblems(input: TiersInput): Problem[] {
  const { edge, seam, between, hem, cloth, parts, ratios, depths } = input;
  const alone = [
    ...mustBePositive('edge', edge),
    ...ratioProblems(ratios),
    ...depthProblems(depths),
    ...mustNotBeNegative('seam', seam),
    ...mustNotBeNegative('between', between),
    ...mustNotBeNegative('hem', hem),
    ...mustBePositive('cloth', cloth),
    ...mustBeCount('parts', parts, 2, MOST_TIER_PARTS),
  ];
  if (alone.length > 0) return alone;
  const count = depths.by === 'own' ? depths.depths.length : depths.count;
  if (ratios.length !== 1 && ratios.length !== count) {
    return [{ kind: 'not-as-many', field: 'ratios', given: ratios.length, needed: count }];
  }
  const over = exactLength(2 * seam);
  if (cloth <= over) return [{ kind: 'not-over', field: 'cloth', over, given: cloth }];
  return tooLong(input, count);
}

/** The last tier is the longest, of cloth and of all strips there may be. */
function tooLong(input: TiersInput, count: number): Problem[] {
  const full = Array.from({ length: count }, (_, i) => ratioOf(input, i)).reduce(
    (a, b) => a * b,
    1,
  );
  const room = Math.min(LONGEST, MOST_STRIPS * (input.cloth - 2 * input.seam));
  // Each tier is rounded up, and what is under it grows with that.
  const most = exactLength(room / full - count);
  return input.edge > most ? [{ kind: 'too-long', field: 'edge', most, given: input.edge }] : [];
}

function ratioProblems(ratios: readonly number[]): Problem[] {
  if (ratios.length === 0) return [{ kind: 'too-few', field: 'ratios', least: 1, given: 0 }];
  const odd = ratios.find((one) => !(one >= 1 && one <= MOST_FULL));
  return odd === undefined
    ? []
    : [{ kind: 'out-of-range', field: 'ratios', given: odd, least: 1, most: MOST_FULL }];
}

function depthProblems(depths: TierDepths): Problem[] {
  if (depths.by === 'own') {
    return [
      ...mustBeCount('depths', depths.depths.length, 1, MOST_TIERS),
      ...depths.depths.flatMap((one) => mustBePositive('depths', one)),
      ...mustBePositiveIfGiven('long', depths.long),
    ];
  }
  const { count, long, growth } = depths;
  const [least, most] = GROWTH;
  const alone = [
    ...mustBeCount('count', count, 1, MOST_TIERS),
    ...mustBePositive('long', long),
    ...(growth >= least && growth <= most
      ? []
      : [{ kind: 'out-of-range', field: 'growth', given: growth, least, most } as const]),
  ];
  if (alone.length > 0 || depthsOf(depths).every((one) => one > 0)) return alone;
  // So short that a tier would have no unit of depth.
  const all = Array.from({ length: count }, (_, k) => growth ** k);
  const share = Math.min(...all) / all.reduce((sum, one) => sum + one, 0);
  return [{ kind: 'too-short', field: 'long', least: exactLength(1 / share), given: long }];
}
