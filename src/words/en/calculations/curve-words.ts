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
    walkStep: 'Step of the tape',
    walkSteps: 'Whole steps',
    walkRest: 'And over',
    walkRadius: 'Radius, at its tightest',
    high: 'Edge, straight up',
    aside: 'Its end lies aside by',
    long: 'Cloth, torn long',
    one: 'One diagonal',
    other: 'The other diagonal',
    clothWide: 'Cloth, selvedge to selvedge',
    bow: 'A thread bows by',
    ahead: 'Its end runs ahead by',
    over: 'Edge along it, long',
  },
  kind: {
    arc: 'A curved edge',
    walk: 'A curve, walked by tape',
    slant: 'A slanted edge',
    square: 'Squaring cloth',
    grain: 'Bow and skew',
  },
  side: { inside: 'Inside the curve', outside: 'Outside it' },
  none: 'none',
  notGiven: 'not given',
  after: {
    arc: 'along the stitch line',
    walk: 'walked along the line',
    slant: 'along the edge',
    square: 'for both diagonals, once it is square',
  },
  sentence: {
    arc: 'Seams meet at the stitch line, so measure and divide that, with the tape on its edge. Dividers step straight from mark to mark.',
    walk: 'Walk the same steps again along the stitch line, and mark where each part ends: so they are alike, whatever shape the curve has.',
    slant: 'Mark this length down every slanted line, so that the edge comes out even.',
    square:
      'Both ends torn along a thread: pull along the shorter diagonal until both are alike, and leave it to rest before you measure again.',
    grain:
      'Follow one thread from selvedge to selvedge. Bow: lay a straight edge between its ends, and measure to the thread where it is farthest. Skew: from the line square to the selvedge to its other end.',
  },
  edge: 'Along the raw edge',
  radius: 'Radius of the raw edge',
  step: 'Straight from mark to mark',
  skew: 'One edge runs ahead by',
  worse: { bow: '% of its width, bowed', skew: '% of its width, askew' },
  lift: 'One end of that edge lies higher by',
  bow: 'Bow',
  share: (part: string) => `${part} %`,
  askew: 'Skew',
  askewOf: (part: string, degrees: string) => `${part} %, ${degrees}°`,
  worst:
    'Measure at several places: the worst counts, not the middle of them. Stripes and checks show it most; some twill is meant to hang askew.',
  usable: 'Left square, if that is cut off',
  marks: 'Marks along the stitch line',
  mark: 'Mark',
  walked: 'Marks, as walked',
  walkMark: (i: number) => `Mark ${i}`,
  walkPlace: (steps: number, rest: string) =>
    `${steps} ${steps === 1 ? 'step' : 'steps'}${rest === '' ? '' : ` and ${rest}`}`,
  walkLine: 'Along the curve itself',
  before:
    'Pull it square before you cut it square: cut cloth stays off the thread, and hangs askew.',
  figure: {
    arc: 'The raw edge with its stitch line, and how far it rises',
    walk: 'The curve laid straight, with its steps, and where its parts end',
    slant: 'The edge, straight up and aside',
    square: 'The cloth with both diagonals',
    grain: 'A thread from selvedge to selvedge, as it runs and as it should',
  },
  stepsCount: (count: number) => `${count} ${count === 1 ? 'step' : 'steps'}`,
  partsCount: (count: number) => `${count} ${count === 1 ? 'part' : 'parts'}`,
  formula: {
    radius: (chord: string, rise: string, radius: string) =>
      `${chord} × ${chord} ÷ (8 × ${rise}) + ${rise} ÷ 2 = ${radius}. `,
    edge: (radius: string, turn: string, edge: string) => `${radius} × ${turn} = ${edge}. `,
    line: (edge: string, inside: boolean, off: string, turn: string, line: string) =>
      `${edge} ${inside ? '−' : '+'} ${off} × ${turn} = ${line}.`,
    walked: (steps: number, step: string, rest: string, walked: string) =>
      `${steps} × ${step}${rest === '' ? '' : ` + ${rest}`} = ${walked}. `,
    part: (walked: string, parts: number, part: string) => `${walked} ÷ ${parts} = ${part}.`,
    slant: (high: string, aside: string, edge: string) =>
      `${high} × ${high} + ${aside} × ${aside} = ${edge} × ${edge}.`,
    skew: (more: string, less: string, long: string, skew: string) =>
      `(${more} × ${more} − ${less} × ${less}) ÷ (4 × ${long}) = ${skew}. `,
    share: (part: string, wide: string, share: string) => `${part} ÷ ${wide} = ${share} %. `,
    lift: (over: string, ahead: string, wide: string, lift: string) =>
      `${over} × ${ahead} ÷ ${wide} = ${lift}.`,
    wanted: (one: string, other: string, wanted: string) =>
      `(${one} × ${one} + ${other} × ${other}) ÷ 2 = ${wanted} × ${wanted}.`,
  },
  turned: 'Geometry: the curve turns by so many times its radius.',
  walkSource:
    'A straight step cuts its curve short, by the square of the step over 24 times that of the radius: geometry. Short steps hardly do.',
  geometry: 'Geometry.',
  grainSource:
    'Bow and skew as ASTM D3882 measures them, told by a laboratory’s guide of 2008; the worst in a piece counts there. What it lifts: derived here.',
  derived: 'Geometry, derived here: the diagonals reach over the length more and less the skew.',
};
