import { exactLength, type Length, LONGEST, length } from '../../lengths/length.ts';
import { mustBeCount, mustBePositive, mustBeWithin, mustNotBeNegative } from '../length-checks.ts';
import type { Problem } from '../problem.ts';
import type { Run } from '../run.ts';

/** The most a strip is gathered, and the most parts both edges are divided into. */
export const MOST_FULL = 20;
export const MOST_GATHER_PARTS = 60;

/** How full it is, in one of the ways it is told. */
export type Fullness =
  /** So many times the edge. */
  | { by: 'ratio'; ratio: number }
  /** It comes in to this part of itself. */
  | { by: 'part'; part: number }
  /** Of an own sample: what was flat, and what it is gathered. */
  | { by: 'sample'; flat: Length; gathered: Length }
  /** As long as the strip that is there, from cut end to cut end. */
  | { by: 'strip'; strip: Length };

export interface GathersInput {
  /** What it is gathered to, without allowances. */
  edge: Length;
  /** Of it, what stays flat, at its end. */
  flat: Length;
  full: Fullness;
  /** Closed, as a waist or a hem. */
  ring: boolean;
  /** Left at both ends of the strip: of a ring, the seam that closes it. */
  ends: Length;
  /** Edge and strip are divided into as many before it is drawn up. */
  parts: number;
}

export interface Gathers {
  /** How often what is gathered goes into the cloth it takes. */
  ratio: number;
  /** The strip without its ends. */
  strip: Length;
  /** The same from cut end to cut end, joined. */
  cut: Length;
  /** Marks that meet: on the strip from its cut end, on the edge from its beginning. */
  marks: { strip: Run; edge: Run };
}

/** What of the edge is gathered. */
export function pulledIn({ edge, flat }: Pick<GathersInput, 'edge' | 'flat'>): Length {
  return length(edge - flat);
}

/** What is wrong with each number by itself, and with a strip that would be too short or too long. */
export function gathersProblems(input: GathersInput): Problem[] {
  const { edge, flat, ends, parts } = input;
  const alone = [
    ...mustBePositive('edge', edge),
    ...(edge > 0 && flat >= edge
      ? [{ kind: 'not-under', field: 'flat', under: edge, given: flat } as const]
      : mustNotBeNegative('flat', flat)),
    ...mustNotBeNegative('ends', ends),
    ...mustBeCount('parts', parts, 2, MOST_GATHER_PARTS),
    ...fullnessAlone(input.full),
  ];
  return alone.length > 0 ? alone : fullnessProblems(input);
}

function fullnessAlone(full: Fullness): Problem[] {
  switch (full.by) {
    case 'ratio':
      return inRange('ratio', full.ratio, 1, MOST_FULL);
    case 'part':
      return inRange('part', full.part, 1 / MOST_FULL, 1);
    case 'sample':
      return [
        ...mustBePositive('sampleFlat', full.flat),
        ...mustBePositive('sampleGathered', full.gathered),
      ];
    case 'strip':
      return mustBePositive('strip', full.strip);
  }
}

function inRange(field: string, given: number, least: number, most: number): Problem[] {
  return given >= least && given <= most
    ? []
    : [{ kind: 'out-of-range', field, given, least, most }];
}

/** With all numbers good alone. */
function fullnessProblems({ edge, flat, ends, full }: GathersInput): Problem[] {
  const gathered = edge - flat;
  switch (full.by) {
    case 'ratio':
    case 'part': {
      const ratio = full.by === 'ratio' ? full.ratio : 1 / full.part;
      const most = exactLength((LONGEST - flat) / ratio + flat);
      return edge > most ? [{ kind: 'too-long', field: 'edge', most, given: edge }] : [];
    }
    case 'sample': {
      const given = full.flat;
      const most = exactLength(MOST_FULL * full.gathered);
      const outside = mustBeWithin('sampleFlat', given, full.gathered, most);
      if (outside.length > 0) return outside;
      const longest = exactLength(((LONGEST - flat) * full.gathered) / given + flat);
      return edge > longest
        ? [{ kind: 'too-long', field: 'edge', most: longest, given: edge }]
        : [];
    }
    case 'strip': {
      const around = flat + 2 * ends;
      const least = exactLength(gathered + around);
      const most = exactLength(MOST_FULL * gathered + around);
      return mustBeWithin('strip', full.strip, least, most);
    }
  }
}
