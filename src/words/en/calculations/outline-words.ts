import { CALCULATION_NAMES } from './calculation-names.ts';

/** Holes round a closed outline. */
export const outlineWords = {
  title: CALCULATION_NAMES.outline,
  labels: {
    shape: 'Outline',
    wide: 'Width',
    high: 'Height',
    sides: 'Sides, all alike',
    side: 'Each side, long',
    ownSides: 'Sides, one after the other',
    ownCorners: 'Corner after each, degrees (over 180 goes in)',
    across: 'Across the circle',
    one: 'One edge round, along its holes',
    other: 'Other edge round, along its holes',
    by: 'Given',
    pitch: 'Hole to hole, about',
    count: 'Holes, together',
    margin: 'Edge to hole, centre',
    hole: 'Punch, across',
  },
  shape: {
    rectangle: 'Four corners',
    regular: 'Equal sides',
    free: 'Side by side',
    circle: 'Circle',
    pair: 'Bottom to body',
  },
  by: { pitch: 'Pitch', count: 'Number' },
  holes: 'holes, all round',
  sentence: {
    round: (corners: boolean) =>
      corners
        ? 'Scribe the margin line on all sides; a hole lies where two of them cross. Mark the corners first, then divide each side between them.'
        : 'Scribe the margin line, mark the first hole, and divide the way round.',
    pair: 'Mark both edges with the same numbers, from where they meet. Lace hole to hole: what the longer one has over is spread along all of it.',
  },
  pitchOf: {
    rectangle: 'Along the width',
    regular: 'Along each side',
    free: 'Along side 1',
    circle: 'Along the line',
    pair: 'Along the line',
  },
  pitchHigh: 'Along the height',
  pitchSide: (i: number) => `Along side ${i}`,
  sideBySide: 'in order round',
  cornerAfterEach: 'one for each side',
  spaces: (count: number, pitch: string) =>
    `${count} ${count === 1 ? 'space' : 'spaces'} of ${pitch}`,
  corners: 'Corner holes are numbers',
  pitchOne: 'Hole to hole on the one',
  pitchOther: 'Hole to hole on the other',
  eased: 'The one edge',
  easedBy: (percent: string, longer: number) =>
    longer === 0
      ? 'is as long as the other'
      : `${longer > 0 ? 'is eased' : 'is stretched'} by ${percent} %`,
  around: 'Holes, along the line from the first corner',
  oneEdge: 'Holes on the one edge',
  otherEdge: 'Holes on the other edge',
  hole: 'Hole',
  thin: (web: string) => `Only ${web} is left between two holes: less than a hole is wide.`,
  thinEdge: 'Less than a hole’s width is left to the edge: it tears out.',
  odd: 'An odd number: a lace that runs in and out ends on the other side than it began. One more or fewer is even.',
  much: 'More than 5 % is hard to ease: try a few holes on a scrap, or change one edge.',
  cornersLast: {
    round:
      'Measure each side before you punch; punch the corners last, once all between them are right.',
    pair: 'Lay both edges together and compare the marks before you punch either.',
  },
  figure: {
    rectangle: 'The outline with its line of holes',
    regular: 'The outline with its line of holes',
    free: 'The outline with its line of holes',
    circle: 'The outline with its line of holes',
    pair: 'Both edges laid straight, their holes by the same numbers',
  },
  counted: (count: number) => `${count} ${count === 1 ? 'hole' : 'holes'}`,
  sidesCount: (count: number) => `${count} sides`,
  formula: {
    side: (side: string, margin: string, takes: string, line: string) =>
      `${side} − 2 × ${margin}${takes === '' ? '' : ` × ${takes}`} = ${line}. `,
    own: (side: string, margin: string, takes: string, line: string) =>
      `${side} − ${margin} × ${takes} = ${line}. `,
    round: (pi: string, across: string, margin: string, line: string) =>
      `${pi} × (${across} − 2 × ${margin}) = ${line}. `,
    spaces: (line: string, pitch: string, exact: string, spaces: number) =>
      `${line} ÷ ${pitch} = ${exact}, so ${spaces} ${spaces === 1 ? 'space' : 'spaces'}. `,
    pitch: (line: string, spaces: number, pitch: string) => `${line} ÷ ${spaces} = ${pitch}.`,
    sum: (one: number, other: number, count: number) =>
      `2 × ${one} + 2 × ${other} = ${count} holes.`,
  },
  geometry: 'Geometry: the same number on both.',
  source: {
    pitch: 'Geometry: each side has as many spaces as come nearest to the pitch.',
    count: 'Derived here: each further hole goes to the side whose pitch is greatest.',
  },
  cornerSource:
    'Each corner’s hole is counted once: it lies where the two margin lines cross (a teaching page on leather).',
};
