import {
  type ExactLength,
  exactLength,
  type Length,
  length,
  settled,
} from '../../lengths/length.ts';
import { mustBePositive, mustBePositiveIfGiven, mustNotBeNegative } from '../length-checks.ts';
import { answerUnless, type Outcome, type Problem, refused } from '../problem.ts';
import { WAIST_LESS } from '../sources/elastic.ts';

/** The most that elastic may be shorter than the body in per cent of itself. */
const MOST_STRETCH = 300;

/** How long the elastic is, in one of the ways it is told. */
export type ElasticLength =
  /** Of an own sample: flat, stretched until it holds well, and stretched as far as it goes. */
  | { by: 'sample'; flat: Length; worn: Length; most?: Length | undefined }
  /** Stretched by so much when it is worn. */
  | { by: 'percent'; percent: number }
  /** The waist less 2 in, whatever the elastic. */
  | { by: 'rule' }
  /** As long as the piece that is there, from cut end to cut end. */
  | { by: 'there'; there: Length };

export interface ElasticInput {
  /** What it holds, round the body. */
  girth: Length;
  how: ElasticLength;
  /** What it has to pass when it is pulled on, where that is asked: hips, hand, heel. */
  pass?: Length | undefined;
  /** The casing flat, round. */
  round?: Length | undefined;
  /** What of the elastic lies double where it is joined: nothing where its ends are butted. */
  lap: Length;
}

export interface Elastic {
  /** Joined to a ring, not stretched. */
  ring: ExactLength;
  /** With its lap: what is cut. */
  cut: ExactLength;
  /** How much it is stretched when it is worn, in parts of itself. */
  worn: number;
  /** The same to pass what it has to; undefined where that isn't asked. */
  passing: number | undefined;
  /** The shortest ring that passes; undefined where how far it goes, or what it passes, isn't known. */
  least: ExactLength | undefined;
  /** How often the body goes into the casing, flat; undefined where that isn't known. */
  fullness: number | undefined;
}

/**
 * Elastic round a body G: by an own sample ℓ = G × flat ÷ worn; by a stretch of s per cent G ÷ (1 + s);
 * at a waist, without one, G − 2 in (`sources/elastic.ts`). Worn it is stretched (G − ℓ) ÷ ℓ, to pass H
 * (H − ℓ) ÷ ℓ, and it goes as far as its sample: ℓ is at least H × flat ÷ most (derived here).
 *
 * Problems: a length of nothing, a sample that doesn't stretch, elastic as long as what it holds, a
 * casing narrower than what it has to pass.
 */
export function elastic(input: ElasticInput): Outcome<Elastic> {
  return answerUnless(elasticProblems(input), () => {
    const { girth, how, lap } = input;
    const ring = ringOf(input);
    if (ring <= 0) {
      return how.by === 'there'
        ? refused({ kind: 'not-over', field: 'there', over: lap, given: how.there })
        : refused({ kind: 'not-over', field: 'girth', over: WAIST_LESS.value[0], given: girth });
    }
    if (ring >= girth && how.by === 'there') {
      const under = exactLength(girth + lap);
      return refused({ kind: 'not-under', field: 'there', under, given: how.there });
    }
    return { ok: true, value: { ...ofRing(input, ring), cut: exactLength(ring + lap) } };
  });
}

/** The same of a ring that came out at another length. */
export function ofRing(
  { girth, how, pass, round }: ElasticInput,
  ring: ExactLength,
): Omit<Elastic, 'cut'> {
  return {
    ring,
    worn: (girth - ring) / ring,
    passing: pass === undefined ? undefined : (pass - ring) / ring,
    least:
      how.by === 'sample' && how.most !== undefined && pass !== undefined
        ? exactLength((pass * how.flat) / how.most)
        : undefined,
    fullness: round === undefined ? undefined : round / girth,
  };
}

function ringOf({ girth, how, lap }: ElasticInput): ExactLength {
  switch (how.by) {
    case 'sample':
      return wholeUp((girth * how.flat) / how.worn);
    case 'percent':
      return wholeUp((100 * girth) / (100 + how.percent));
    case 'rule':
      return exactLength(girth - WAIST_LESS.value[0]);
    case 'there':
      return exactLength(how.there - lap);
  }
}

/** Up to a whole unit, so that a lap taken off again leaves it. */
function wholeUp(units: number): Length {
  return length(Math.ceil(settled(exactLength(units))));
}

function elasticProblems({ girth, how, pass, round, lap }: ElasticInput): Problem[] {
  const alone = [
    ...mustBePositive('girth', girth),
    ...mustBePositiveIfGiven('pass', pass),
    ...mustBePositiveIfGiven('round', round),
    ...mustNotBeNegative('lap', lap),
    ...howProblems(how),
  ];
  if (alone.length > 0 || pass === undefined || round === undefined || round >= pass) return alone;
  return [{ kind: 'too-short', field: 'round', least: pass, given: round }];
}

function howProblems(how: ElasticLength): Problem[] {
  switch (how.by) {
    case 'sample':
      return sampleProblems(how);
    case 'percent':
      return how.percent > 0 && how.percent <= MOST_STRETCH
        ? []
        : [
            {
              kind: 'out-of-range',
              field: 'percent',
              given: how.percent,
              least: 1,
              most: MOST_STRETCH,
            },
          ];
    case 'rule':
      return [];
    case 'there':
      return mustBePositive('there', how.there);
  }
}

function sampleProblems({ flat, worn, most }: Extract<ElasticLength, { by: 'sample' }>): Problem[] {
  const alone = [
    ...mustBePositive('sampleFlat', flat),
    ...mustBePositive('sampleWorn', worn),
    ...mustBePositiveIfGiven('sampleMost', most),
  ];
  if (alone.length > 0) return alone;
  if (worn <= flat) return [{ kind: 'not-over', field: 'sampleWorn', over: flat, given: worn }];
  return most !== undefined && most < worn
    ? [{ kind: 'too-short', field: 'sampleMost', least: worn, given: most }]
    : [];
}
