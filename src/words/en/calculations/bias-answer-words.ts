import type { BiasQuote } from '../../../sewing/sources/bias.ts';
import { biasQuotes } from '../published/published-bias-words.ts';
import { quoted } from '../published/published-words.ts';

/** What is said of bias strips. */
export const biasAnswerWords = {
  cloth: 'of cloth, along the selvedge',
  square: 'square of cloth',
  strip: 'of bias strip',
  sentence: {
    strips: (count: number) =>
      `${count === 1 ? 'One strip' : `${count} strips`} across the true bias: mark the lines equally far from a corner on both edges, on round the next corner where an edge ends. Join the ends on the grain, at right angles, shifted so that the stitch lines meet.`,
    round: (count: number) =>
      `Cut it along the true bias and sew the two straight edges to each other. Draw the lines, sew the tube shifted by one strip, and cut round and round: ${count === 1 ? 'one round' : `${count} rounds`}.`,
    single: 'From corner to corner, half of its width to each side of the fold.',
  },
  strips: 'Strips',
  rounds: 'Rounds',
  joins: 'Joins',
  joinsOf: (count: number, most: boolean) => (most ? `at most ${count}` : String(count)),
  first: 'First line, from the corner',
  apart: 'Lines apart, along the edge',
  across: 'Lines apart, square to them',
  gives: 'It gives',
  area: 'By its area',
  areaMost: {
    need: (size: string) => `${size}: too little for what is cut whole`,
    have: (size: string) => `${size}: more than can be cut whole`,
  },
  third: 'A third more, the quick rule',
  thirdOf: (size: string) => `${size} apart: too narrow`,
  lines: 'Lines, from the corner along both edges',
  line: 'Line',
  manyJoins:
    'More than one join in half a metre: a wider piece, or a longer shortest strip, has fewer.',
  stretch:
    'Bias gives as it is handled: cut it on the width you need once it is pressed, and try a short strip first.',
  before:
    'Before you cut: see that edges and grain are square to each other, and measure the strip’s width across it.',
  formula: {
    apart: (width: string, apart: string) => `${width} × 1.41421 = ${apart}.`,
    join: (seam: string, takes: string) => `2 × 1.41421 × ${seam} = ${takes} for each join.`,
    first: (shortest: string, first: string) => `${shortest} ÷ 1.41421 = ${first}.`,
    area: (long: string, width: string, shortest: string, cloth: string, piece: string) =>
      `(${long} × ${width} + ${shortest} × ${shortest} ÷ 2) ÷ ${cloth} = ${piece}.`,
    areaGives: (cloth: string, piece: string, shortest: string, width: string, long: string) =>
      `(${cloth} × ${piece} − ${shortest} × ${shortest} ÷ 2) ÷ ${width} = ${long}.`,
    areaRound: (long: string, wide: string, width: string, strip: string) =>
      `${long} × ${wide} ÷ ${width} = ${strip}.`,
    areaSquare: (need: string, width: string, side: string) =>
      `${need} × ${width} = ${side} × ${side}.`,
    rounds: (count: number, short: string, seam: string, long: string) =>
      `${count} × 1.41421 × ${seam === '' ? short : `(${short} − 2 × ${seam})`} = ${long}.`,
    single: (side: string, width: string, long: string) =>
      `1.41421 × ${side} − ${width} = ${long}.`,
    singleFor: (need: string, width: string, side: string) =>
      `(${need} + ${width}) ÷ 1.41421 = ${side}.`,
  },
  derived:
    'Geometry, derived here: the true bias lies at 45°, and each strip counts by its shorter edge.',
  geometry: 'Geometry.',
  published: ({ quote }: { quote: BiasQuote }) => `${quoted(biasQuotes[quote])}.`,
  others: `${quoted(biasQuotes.table)}. ${quoted(biasQuotes.join)}.`,
  figure: {
    strips: 'The piece of cloth, its strips across the bias',
    round: 'The piece of cloth, and one strip of it',
    single: 'The square, and the strip from corner to corner',
  },
};
