import { CALCULATION_NAMES } from './calculation-names.ts';

/** Collars. */
export const collarWords = {
  title: CALCULATION_NAMES.collar,
  labels: {
    front: 'Neckline, half front',
    back: 'Neckline, half back',
    deep: 'Depth, neck to outer edge',
    stand: 'Of it, stands',
    past: 'Past the front middle, each end',
    outer: 'Outer edge, all round where it lies',
    seam: 'Seam, all edges',
    upperThick: 'Thickness of the upper collar',
    underThick: 'Thickness of the under collar',
    between: 'Thickness between, interfacing',
    rolled: 'Rolls over through, °',
    under: 'Seams rolled under by',
  },
  none: 'none',
  flat: 'none, lies flat',
  straight: 'as the neckline: straight',
  thin: 'too thin to count',
  about: 'about',
  after: 'long to cut, the upper collar',
  sentence: (wide: string, underLong: string, underWide: string) =>
    `Cut the upper collar ${wide} wide, the under one ${underLong} × ${underWide}. Sew them edge to edge, the upper one eased in; turn, roll it over the hand, baste, and only then join the neck edges.`,
  neck: 'Neckline, all round',
  turn: 'Over the roll, upper wider by',
  around: 'Its outer edge, all round, longer by',
  roll: 'Roll line, from the neck seam',
  neckRadius: 'Neck edge on a radius of',
  outerRadius: 'Outer edge on a radius of',
  angle: 'Between its ends',
  degrees: (angle: string) => `${angle}°`,
  thinRoll: 'What the roll takes is within a stitch’s width: easing holds it.',
  leans:
    'The outer edge is shorter than the neck: it leans in. Try it against the neck at that height.',
  stands: 'All of it stands: nothing rolls over.',
  layers: 'Trim its seam in steps, the layer that lies outermost left widest.',
  before: 'Measure both on the stitch line, the tape on its edge, before you cut.',
  upperMarks: 'Upper collar: shoulders and back middle',
  underMarks: 'Under collar: shoulders and back middle',
  mark: 'Mark',
  figure: 'Both pieces with their seams, curved edges laid straight; above them the outer edge',
  source:
    'Geometry, derived here: the middle of each cloth keeps its length, and the upper one goes round outside.',
  formula: {
    neck: (front: string, back: string, neck: string) => `2 × (${front} + ${back}) = ${neck}. `,
    turn: (terms: readonly string[], part: string, pi: string, turn: string) =>
      `${pi} × ${part}(${terms.join(' + ')}) = ${turn}. `,
    half: (thickness: string) => `${thickness} ÷ 2`,
    part: (angle: string) => `${angle} ÷ 180 × `,
    long: (neck: string, ends: readonly string[], under: string, long: string) =>
      `${neck}${ends.map((end) => ` + 2 × ${end}`).join('')}${under} = ${long}. `,
    more: (under: string) => ` + 2 × ${under}`,
    less: (under: string) => ` − 2 × ${under}`,
    wide: (terms: readonly string[], seam: string, wide: string) =>
      `${terms.join(' + ')}${seam === '' ? '' : ` + 2 × ${seam}`} = ${wide}. `,
    underWide: (deep: string, under: string, seam: string, wide: string) =>
      `${deep}${under === '' ? '' : ` − ${under}`}${seam === '' ? '' : ` + 2 × ${seam}`} = ${wide}. `,
    radius: (inner: string, deep: string, outer: string, radius: string) =>
      `${inner} × ${deep} ÷ (${outer} − ${inner}) = ${radius}.`,
  },
};
