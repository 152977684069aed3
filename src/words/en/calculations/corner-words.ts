import type { MitreQuote } from '../../../sewing/sources/mitres.ts';
import { mitreQuotes } from '../published/published-mitre-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

/** A mitred corner of two hems. */
export const cornerWords = {
  title: CALCULATION_NAMES.corner,
  labels: {
    depth: 'Depth at the bottom',
    side: 'Depth at the side',
    angle: 'Angle of the corner',
    turned: 'Turned',
    edgeStitch: 'Stitch in from fold',
    thickness: 'Cloth thick',
  },
  turned: { once: 'Once', twice: 'Twice, first less', equal: 'Twice, equally' },
  after: 'along the bottom',
  sentence: (upSide: string) =>
    `Mark that from the raw corner, A, and ${upSide} up the side, B. Lay A and B on each other, right sides together, and stitch from them to the finished corner.`,
  twice:
    'Press the first turns before you measure: the marks are on the folds, and so is the raw corner.',
  bottom: 'Mitre mark A, along the bottom from the raw corner',
  side: 'Mitre mark B, up the side from the raw corner',
  alongBottom: 'Along the bottom',
  upSide: 'Up the side',
  pressed: (edge: string) => `${edge}, turn pressed`,
  trim: 'Trim outside the stitching',
  flat: 'Corner, flat, wrong side up',
  folded: 'Corner, finished, wrong side up',
  check: 'Check the corner turned out before you trim: what is cut off stays off.',
  formula: (near: string, far: string, angle: string, along: string, edge: string) =>
    `${edge}: 2 × (${near} + ${far} × cos ${angle}°) ÷ sin ${angle}° = ${along}.`,
  foldLine: 'To the fold line, in the middle of its fold.',
  rule: ({ quote }: { quote: MitreQuote }) => `${mitreQuotes[quote].says}.`,
  source: ({ quote }: { quote: MitreQuote }) => mitreQuotes[quote].source,
  derived: 'Geometry, derived here.',
};
