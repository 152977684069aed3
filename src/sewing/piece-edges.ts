/** Edges of a piece; of one on the fold both sides are one. */
export const EDGES = ['top', 'bottom', 'side', 'other'] as const;
export type Edge = (typeof EDGES)[number];
