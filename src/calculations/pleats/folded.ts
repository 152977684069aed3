import type { Point } from '../../drawing/figure.ts';
import type { PleatKind } from '../../sewing/fullness/pleat-input.ts';

/** Pleats as they are drawn from the side, in mm: their widths to scale, their layers apart. */
export interface Folded {
  kind: PleatKind;
  seam: number;
  /** From one pleat to the next. */
  width: number;
  depth: number;
  /** Across the front of a box. */
  face: number;
  /** Whether the folds of a box lie over each other behind. */
  overlap: boolean;
  /** Whether a knife pleat folds in its middle, and not where it ends. */
  half: boolean;
  /** After the last of those drawn. */
  flat: number;
  /** How many are drawn. */
  drawn: number;
  /** From one layer to the next. */
  apart: number;
}

/** The folded cloth as one line from its cut end, its front at the top. */
export function foldedCloth(folded: Folded): Point[] {
  const { kind, seam, width, flat, drawn } = folded;
  const end = 2 * seam + drawn * width + flat;
  const each = { knife, box, inverted }[kind];
  const pleats = Array.from({ length: drawn }, (_, i) => each(folded, i)).flat();
  const first = pleats[0] as Point;
  const last = pleats.at(-1) as Point;
  return [
    { x: 0, y: first.y + slope(folded) * first.x },
    ...pleats,
    {
      x: end,
      y: last.y - slope(folded) * (end - last.x),
    },
  ];
}

/**
 * Knife pleats lie like shingles: each front runs from under the fold before it up to its own, so
 * that no layer crosses another however deep they are.
 */
function slope({ kind, width, apart }: Folded): number {
  return kind === 'knife' ? (2 * apart) / width : 0;
}

function knife(folded: Folded, i: number): Point[] {
  const { seam, width, depth, half, apart } = folded;
  const fold = seam + (i + (half ? 0.5 : 1)) * width;
  const under = slope(folded) * depth;
  return [
    { x: fold, y: 0 },
    { x: fold, y: apart },
    { x: fold - depth, y: under + apart },
    { x: fold - depth, y: under + 2 * apart },
  ];
}

function inverted({ seam, width, depth, apart }: Folded, i: number): Point[] {
  const middle = seam + (i + 0.5) * width;
  return [
    { x: middle, y: 0 },
    { x: middle, y: apart },
    { x: middle - depth, y: apart },
    { x: middle - depth, y: 2 * apart },
    { x: middle + depth, y: 2 * apart },
    { x: middle + depth, y: apart },
    { x: middle, y: apart },
    { x: middle, y: 0 },
  ];
}

/** Where the folds lie over each other behind, one side lies two layers further back, and so does the next pleat's. */
function box({ seam, width, depth, face, overlap, apart }: Folded, i: number): Point[] {
  const middle = seam + (i + 0.5) * width;
  const further = overlap ? 2 : 0;
  const [before, after] = i % 2 === 0 ? [0, further] : [further, 0];
  const side = (edge: number, inner: number, back: number): Point[] => [
    { x: edge, y: (2 + back) * apart },
    { x: inner, y: (2 + back) * apart },
    { x: inner, y: (1 + back) * apart },
    { x: edge, y: (1 + back) * apart },
    { x: edge, y: 0 },
  ];
  const [left, right] = [middle - face / 2, middle + face / 2];
  return [...side(left, left + depth, before), ...side(right, right - depth, after).reverse()];
}
