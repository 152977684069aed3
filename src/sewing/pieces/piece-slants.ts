import { exactLength, type Length } from '../../lengths/length.ts';
import { mustBePositive } from '../length-checks.ts';
import type { Problem } from '../problem.ts';
import type { Edge } from './piece-edges.ts';

/** How an edge slants: by so much over so much of the other way; less than nothing the other way round. */
export interface Slant {
  by: Length;
  over: Length;
}

/** Of each edge, where it slants. The top falls, the bottom rises, sides lean in. */
export type Slants = Readonly<Partial<Record<Edge, Slant | undefined>>>;

/** The fields of each edge's slant. */
const FIELDS: Readonly<Record<Edge, readonly [by: string, over: string]>> = {
  top: ['topFalls', 'topOver'],
  bottom: ['bottomRises', 'bottomOver'],
  side: ['sideLeans', 'sideOver'],
  other: ['otherLeans', 'otherOver'],
};

/** The field of what an edge slants by, and of over how much. */
export function slantFields(edge: Edge): readonly [by: string, over: string] {
  return FIELDS[edge];
}

/** By how much for each of the other way. */
export function slopeOf(slant: Slant | undefined): number {
  return slant ? slant.by / slant.over : 0;
}

/** How much of the other way an allowance takes: 1 ÷ cos of the slant (design: a ÷ cos γ). */
export function slantTakes(slant: Slant | undefined): number {
  return slant ? Math.hypot(1, slopeOf(slant)) : 1;
}

/** What is wrong with some slants: one of half a right angle or more is none of that edge. Ours. */
export function slantProblems(slants: Slants, edges: readonly Edge[]): Problem[] {
  return edges.flatMap((edge): Problem[] => {
    const slant = slants[edge];
    if (!slant) return [];
    const [field, overField] = FIELDS[edge];
    const { by, over } = slant;
    const alone = mustBePositive(overField, over);
    if (alone.length > 0) return alone;
    if (by >= over) return [{ kind: 'not-under', field, under: over, given: by }];
    return by <= -over ? [{ kind: 'not-over', field, over: exactLength(-over), given: by }] : [];
  });
}
