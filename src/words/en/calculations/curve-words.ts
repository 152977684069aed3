import { CALCULATION_NAMES } from './calculation-names.ts';

/** Curves, slants and cut ends. */
export const curveWords = {
  title: CALCULATION_NAMES.curve,
  labels: {
    kind: 'Asked',
    chord: 'Straight across',
    rise: 'The curve rises',
    off: 'Raw edge to stitch line',
    side: 'The stitch line lies',
    parts: 'Parts to divide it into',
    high: 'Edge, straight up',
    aside: 'Its end lies aside by',
    long: 'Cloth, torn long',
    one: 'One diagonal',
    other: 'The other diagonal',
  },
  kind: { arc: 'A curved edge', slant: 'A slanted edge', square: 'Squaring cloth' },
  side: { inside: 'Inside the curve', outside: 'Outside it' },
  none: 'none',
  after: {
    arc: 'along the stitch line',
    slant: 'along the edge',
    square: 'for both diagonals, once it is square',
  },
  sentence: {
    arc: 'Seams meet at the stitch line, so measure and divide that, with the tape on its edge. Dividers step straight from mark to mark.',
    slant: 'Mark this length down every slanted line, so that the edge comes out even.',
    square:
      'Both ends torn along a thread: pull along the shorter diagonal until both are alike, and leave it to rest before you measure again.',
  },
  edge: 'Along the raw edge',
  radius: 'Radius of the raw edge',
  step: 'Straight from mark to mark',
  skew: 'One edge runs ahead by',
  usable: 'Left square, if that is cut off',
  marks: 'Marks along the stitch line',
  mark: 'Mark',
  before:
    'Pull it square before you cut it square: cut cloth stays off the thread, and hangs askew.',
  figure: {
    arc: 'The raw edge with its stitch line, and how far it rises',
    slant: 'The edge, straight up and aside',
    square: 'The cloth with both diagonals',
  },
  partsCount: (count: number) => `${count} ${count === 1 ? 'part' : 'parts'}`,
  formula: {
    radius: (chord: string, rise: string, radius: string) =>
      `${chord} × ${chord} ÷ (8 × ${rise}) + ${rise} ÷ 2 = ${radius}. `,
    edge: (radius: string, turn: string, edge: string) => `${radius} × ${turn} = ${edge}. `,
    line: (edge: string, inside: boolean, off: string, turn: string, line: string) =>
      `${edge} ${inside ? '−' : '+'} ${off} × ${turn} = ${line}.`,
    slant: (high: string, aside: string, edge: string) =>
      `${high} × ${high} + ${aside} × ${aside} = ${edge} × ${edge}.`,
    skew: (more: string, less: string, long: string, skew: string) =>
      `(${more} × ${more} − ${less} × ${less}) ÷ (4 × ${long}) = ${skew}. `,
    wanted: (one: string, other: string, wanted: string) =>
      `(${one} × ${one} + ${other} × ${other}) ÷ 2 = ${wanted} × ${wanted}.`,
  },
  turned: 'Geometry: the curve turns by so many times its radius.',
  geometry: 'Geometry.',
  derived: 'Geometry, derived here: the diagonals reach over the length more and less the skew.',
};
