import type { Length } from '../../lengths/length.ts';

/** Edges of a piece; of one on the fold both sides are one. */
export const EDGES = ['top', 'bottom', 'side', 'other'] as const;
export type Edge = (typeof EDGES)[number];

/** How far each raw edge lies beyond the finished one, square to it; in 1/8000 mm. */
export type EdgeWidths = Readonly<Record<Edge, Length>>;
