import {
  type ExactLength,
  exactLength,
  type Length,
  LONGEST,
  length,
  settled,
} from '../../lengths/length.ts';
import { mustBeCount, mustBePositive, mustBeWithin, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem } from '../problem.ts';
import type { Mark, Run } from '../run.ts';
import { MOST_FULL } from './gathers-input.ts';

/** The most zones of an edge, and the most parts of one that is gathered. */
const MOST_ZONES = 12;
const MOST_PARTS = 16;

/** The least that is said of a zone that has to be gathered. */
const LEAST_FULL = 1.01;

/** An edge that is gathered in places only, or more in some than in others. */
export interface GatherZonesInput {
  /** How long each is on the edge, one after the other. */
  zones: readonly Length[];
  /** How full each is; 1 lies flat. */
  ratios: readonly number[];
  /** The strip that is there, where that decides: what is over 1 is then only how zones compare. */
  strip?: Length | undefined;
  /** Left at both ends of the strip. */
  ends: Length;
  /** Each zone that is gathered is divided into as many. */
  parts: number;
}

export interface GatherZones {
  edge: Length;
  /** How full each zone comes out. */
  ratios: readonly number[];
  /** The strip without its ends, and from cut end to cut end. */
  strip: Length;
  cut: Length;
  /** What each zone takes of it. */
  takes: readonly ExactLength[];
  /** Marks that meet, with the same numbers. */
  marks: { strip: Run; edge: Run };
}

/**
 * A strip S = Σ rᵢ × Eᵢ, a flat zone r = 1, up to a whole unit. Of a strip that is there, flat zones take what
 * they are long, and the rest goes to the others in the proportion given: cᵢ = rᵢ × (S − Σ flat) ÷ Σ rᵢEᵢ. Both are
 * marked where zones meet and within each that is gathered, at its own scale. Derived here; that a
 * strip is its edge times its fullness: `sources/gathers.ts`.
 *
 * Problems: no zones or more than twelve, one of nothing, not as many fullnesses, one under 1 or over 20, none over 1
 * where a strip is there, a strip shorter than its edge or than what a zone needs flat, or over 20 times as long, one over a kilometre,
 * parts that are no whole number from 1 to 16.
 */
export function gatherZones(input: GatherZonesInput): Outcome<GatherZones> {
  return answerUnless(zoneProblems(input), () => {
    const { zones, ends } = input;
    const ratios = ratiosOf(input);
    const takes = zones.map((zone, i) => exactLength(zone * (ratios[i] ?? 1)));
    const sum = takes.reduce((all, one) => all + one, 0);
    const strip =
      input.strip === undefined
        ? length(Math.ceil(settled(exactLength(sum))))
        : length(input.strip - 2 * ends);
    const cut = length(strip + 2 * ends);
    const marks = zoneMarks(input, ratios, cut);
    return { ok: true, value: { edge: sumOf(zones), ratios, strip, cut, takes, marks } };
  });
}

/** How full each zone is: as given, or as the strip that is there gives. */
function ratiosOf({ zones, ratios, strip, ends }: GatherZonesInput): readonly number[] {
  if (strip === undefined) return ratios;
  const { flat, full } = partedOf({ zones, ratios });
  const scale = (strip - 2 * ends - flat) / full;
  return ratios.map((ratio) => (ratio === 1 ? 1 : ratio * scale));
}

/** What lies flat of the edge, and what the rest takes as full as it is given. */
function partedOf({ zones, ratios }: Pick<GatherZonesInput, 'zones' | 'ratios'>) {
  let [flat, full] = [0, 0];
  for (const [i, zone] of zones.entries()) {
    const ratio = ratios[i] ?? 1;
    if (ratio === 1) flat += zone;
    else full += zone * ratio;
  }
  return { flat, full };
}

/** Where zones meet, and where each that is gathered is divided; a place that lies flat before and after has none. */
function zoneMarks(
  { zones, ratios: asked, ends, parts }: GatherZonesInput,
  ratios: readonly number[],
  cut: Length,
): { strip: Run; edge: Run } {
  const places: { edge: number; strip: number }[] = [];
  let at = { edge: 0, strip: ends as number };
  for (const [i, zone] of zones.entries()) {
    const k = (asked[i] ?? 1) === 1 ? 1 : parts;
    const start = at;
    const step = { edge: zone / k, strip: (zone * (ratios[i] ?? 1)) / k };
    for (let j = 1; j <= k; j++) {
      at = { edge: start.edge + j * step.edge, strip: start.strip + j * step.strip };
      places.push(at);
    }
  }
  // The last is the end of both.
  const inside = places.slice(0, -1);
  const marks = (see: (place: (typeof places)[number]) => number): Mark[] =>
    inside.map((place, i) => ({
      at: exactLength(see(place)),
      label: String(i + 1),
      kind: 'measure',
    }));
  return {
    strip: { datum: 'cut-end', length: cut, marks: marks(({ strip }) => strip) },
    edge: { datum: 'strip-begins', length: sumOf(zones), marks: marks(({ edge }) => edge) },
  };
}

/** How many parts each gathered zone has, by how many marks were begun; undefined where that is no whole number. */
export function partsOfZones(ratios: readonly number[], marks: number): number | undefined {
  const full = ratios.filter((ratio) => ratio !== 1).length;
  const parts = (marks + 1 - (ratios.length - full)) / full;
  return Number.isInteger(parts) ? parts : undefined;
}

function sumOf(zones: readonly Length[]): Length {
  return length(zones.reduce((sum, one) => sum + one, 0));
}

function zoneProblems(input: GatherZonesInput): Problem[] {
  const { zones, ratios, strip, ends, parts } = input;
  const odd = ratios.find((one) => !(one >= 1 && one <= MOST_FULL));
  const alone: Problem[] = [
    ...mustBeCount('zones', zones.length, 1, MOST_ZONES),
    ...zones.flatMap((one) => mustBePositive('zones', one)),
    ...(odd === undefined
      ? []
      : [
          { kind: 'out-of-range', field: 'ratios', given: odd, least: 1, most: MOST_FULL } as const,
        ]),
    ...mustNotBeNegative('ends', ends),
    ...mustBeCount('parts', parts, 1, MOST_PARTS),
    ...(strip === undefined ? [] : mustBePositive('strip', strip)),
  ];
  if (alone.length > 0) return alone;
  if (ratios.length !== zones.length) {
    return [{ kind: 'not-as-many', field: 'ratios', given: ratios.length, needed: zones.length }];
  }
  return strip === undefined ? longProblems(input) : stripProblems(input, strip);
}

function longProblems({ zones, ratios }: GatherZonesInput): Problem[] {
  const [longest, full] = [Math.max(...zones), Math.max(...ratios)];
  const most = exactLength(LONGEST / (full * zones.length));
  return longest > most ? [{ kind: 'too-long', field: 'zones', most, given: length(longest) }] : [];
}

/** Every zone that is gathered comes out from as long as it is to twenty times that. */
function stripProblems({ zones, ratios, ends }: GatherZonesInput, strip: Length): Problem[] {
  const gathered = ratios.filter((ratio) => ratio !== 1);
  if (gathered.length === 0) {
    return [
      { kind: 'out-of-range', field: 'ratios', given: 1, least: LEAST_FULL, most: MOST_FULL },
    ];
  }
  const { flat, full } = partedOf({ zones, ratios });
  const around = flat + 2 * ends;
  const least = exactLength(around + full / Math.min(...gathered));
  const most = exactLength(around + (MOST_FULL * full) / Math.max(...gathered));
  return mustBeWithin('strip', strip, least, most);
}
