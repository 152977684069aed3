import { circleQuotes } from '../published/published-circle-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

/** Circular skirts, flounces and gores. */
export const circleWords = {
  title: CALCULATION_NAMES.circle,
  labels: {
    what: 'What is cut',
    edge: 'Edge round, eased',
    long: 'Length, edge to hem',
    part: 'Of a circle',
    circles: 'Circles in all',
    panels: 'Panels',
    by: 'Flounce by',
    times: 'Times as full at the hem',
    radius: 'Radius of its edge',
    gores: 'Gores',
    sweep: 'Hem, all round',
    seam: 'Seam at the edge',
    side: 'Seam at each side',
    hem: 'Hem, added',
    cloth: 'Cloth wide',
  },
  what: { skirt: 'Circular skirt', flounce: 'Flounce', gores: 'Skirt of gores' },
  deep: 'Depth of the flounce',
  part: {
    full: 'A whole one',
    threeQuarter: 'Three quarters',
    half: 'A half',
    quarter: 'A quarter',
    other: 'Another part',
  },
  by: { times: 'Its fullness', radius: 'A radius' },
  none: 'none',
  notGiven: 'not given',
  about: 'about',
  after: 'radius of the edge to cut',
  sentence: {
    skirt: (count: number, angle: string, hem: string) =>
      `${count === 1 ? 'One piece' : `${count} panels`} of ${angle}°. Strike both arcs from the same point, the hem’s at ${hem}. Cut the edge small: it can be trimmed, not filled.`,
    flounce: (count: number, _angle: string, hem: string) =>
      `${count === 1 ? 'One ring, slit' : `${count} rings, each slit`} once. Strike both arcs from the same point, the outer one at ${hem}. Cut the hole small: it can be trimmed, not filled.`,
    gores: (count: number, angle: string, hem: string) =>
      `${count === 1 ? 'One gore' : `${count} gores`} of ${angle}°. Strike both arcs from the same point, the hem’s at ${hem}: marked down every ray, hem and edge are level.`,
  },
  radius: 'Radius of the stitch line',
  hemRadius: 'Radius of the hem line',
  cutHem: 'Radius where the hem is cut',
  hemLine: 'Hem, all round',
  full: 'Hem to edge',
  times: (ratio: string) => `${ratio} times`,
  cutEdge: 'The cut edge is shorter',
  cutEdgeOf: (cut: string, edge: string) => `${cut}, not ${edge}`,
  pieces: 'Cloth for one piece',
  pieceOf: {
    middle: (wide: string, high: string) =>
      `${wide} across × ${high} along the grain, its middle on it`,
    side: (wide: string, high: string) =>
      `${wide} across × ${high} along the grain, one side on it`,
  },
  inWidth: 'In the cloth’s width',
  inWidthOf: (side: number, rows: number, long: string, turned: boolean) =>
    `${side === 1 ? 'one' : `${side} side by side`}, ${rows === 1 ? 'one row' : `${rows} rows`}: at most ${long} of cloth${turned ? ', each turned across the grain' : ''}`,
  chords: 'Straight across one, edge and hem',
  chordsOf: (edge: string, hem: string, short: string) =>
    `${edge} and ${hem}: measured so, all hems come out ${short} short`,
  straight: 'Side, if it is cut straight',
  straightOf: (side: string, over: string) => `${side}: ${over} longer than its middle`,
  error: (by: string) => `A radius too long by ${by}`,
  errorOf: (more: string) => `makes the edge ${more} longer`,
  stay: 'Stay the edge at once: it is cut on the bias and grows. Before you cut: it has to pass the hips, or it needs an opening.',
  hangs: 'It hangs 24 or 48 hours before its hem is levelled.',
  figure: 'One piece as it is cut, its stitch lines in it; the edge below it, straight',
  count: (count: number, what: 'skirt' | 'flounce' | 'gores') =>
    what === 'flounce'
      ? `${count} ${count === 1 ? 'ring' : 'rings'}`
      : what === 'gores'
        ? `${count} ${count === 1 ? 'gore' : 'gores'}`
        : `${count} ${count === 1 ? 'panel' : 'panels'}`,
  source: `Geometry, derived here. A page differs: ${quoted(circleQuotes.pi)}. Hem: ${quoted(circleQuotes.hang)}.`,
  formula: {
    skirt: (edge: string, pi: string, part: string, radius: string) =>
      `${edge} ÷ (2 × ${pi} × ${part}) = ${radius}. `,
    gores: (edge: string, long: string, sweep: string, radius: string) =>
      `${edge} × ${long} ÷ (${sweep} − ${edge}) = ${radius}. `,
    asked: (long: string, times: string, radius: string) =>
      `${long} ÷ (${times} − 1) = ${radius}. `,
    rings: (edge: string, pi: string, radius: string, side: string, exact: string, count: number) =>
      `${edge} ÷ (2 × ${pi} × ${radius}${side === '' ? '' : ` − 2 × ${side}`}) = ${exact}, so ${count}. `,
    ring: (edge: string, count: number, side: string, pi: string, radius: string) =>
      `${side === '' ? `${edge} ÷ ${count}` : `(${edge} ÷ ${count} + 2 × ${side})`} ÷ (2 × ${pi}) = ${radius}. `,
    cut: (radius: string, seam: string, cut: string) =>
      seam === '' ? '' : `${radius} − ${seam} = ${cut}. `,
    cutHem: (radius: string, long: string, hem: string, cut: string) =>
      `${radius} + ${long}${hem === '' ? '' : ` + ${hem}`} = ${cut}.`,
  },
};
