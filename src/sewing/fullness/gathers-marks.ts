import { type ExactLength, exactLength, type Length, length } from '../../lengths/length.ts';
import type { Mark, Run } from '../run.ts';
import { type GathersInput, pulledIn } from './gathers-input.ts';

/**
 * What is gathered is divided into as many parts on strip and edge, each at its own scale; marks of
 * the same label meet (derived here). A ring has one where it begins, and what stays flat one where
 * that does.
 *
 * @param long the strip without its ends, and the edge
 */
export function gatherMarks(
  {
    edge,
    flat,
    ring,
    ends,
    parts,
  }: Pick<GathersInput, 'edge' | 'flat' | 'ring' | 'ends' | 'parts'>,
  long: { strip: ExactLength; edge: Length },
): { strip: Run; edge: Run } {
  const from = ring ? 0 : 1;
  const to = flat > 0 ? parts : parts - 1;
  const labels = Array.from({ length: to - from + 1 }, (_, i) => from + i);
  const along = (gathered: number, before: Length): Mark[] =>
    labels.map((i) => ({
      at: exactLength(before + (i * gathered) / parts),
      label: String(i),
      kind: 'measure',
    }));
  return {
    strip: {
      datum: 'cut-end',
      length: length(Math.round(long.strip) + 2 * ends),
      marks: along(long.strip - flat, ends),
    },
    edge: {
      datum: 'strip-begins',
      length: edge,
      marks: along(pulledIn({ edge, flat }), length(0)),
    },
  };
}

/** How many parts there are, by how many marks were begun. */
export function partsOfMarks(
  { flat, ring }: Pick<GathersInput, 'flat' | 'ring'>,
  marks: number,
): number {
  return marks + (ring ? 0 : 1) - (flat > 0 ? 1 : 0);
}
