import { repeatQuotes } from '../published/published-repeat-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

/** Stripes, checks and large patterns. */
export const repeatWords = {
  title: CALCULATION_NAMES.repeat,
  labels: {
    kind: 'Asked',
    span: 'Repeats, together',
    repeats: 'How many those are',
    panels: 'Panels, all alike',
    long: 'Each panel cut long',
    first: 'A line to the first piece’s match point',
    below: 'Second piece’s edge to its match point',
    free: 'That line to where cloth is free',
    on: 'Its centre lies',
    wide: 'Piece, finished width',
    one: 'One edge slants by, degrees',
    other: 'The other slants by, degrees',
    seam: 'Seam, long',
    way: 'The repeat',
  },
  kind: {
    panels: 'For panels',
    match: 'Where a piece begins',
    centre: 'On a stripe or between',
    slant: 'A slanted seam',
  },
  on: { line: 'On a line', between: 'Between two lines' },
  way: { even: 'Its own mirror image', one: 'Runs one way' },
  after: {
    panels: 'of cloth, so that all panels match',
    match: 'from the line to the second piece’s edge',
    centre: 'from the last line to each edge',
    slant: 'apart at the end of the seam',
  },
  sentence: {
    panels:
      'Cut the first panel at a line you can find again; lay each next one on it, line on line, and cut in a single layer.',
    match:
      'Choose the line, cut the first piece, and lay the second so that both match points show the same; stitch lines meet, not raw edges.',
    centre: 'Pin the centre on its line all along. The last line lies so far inside both edges.',
    slant: 'Match the lines where the seam begins, or where it shows most; from there they part.',
  },
  repeat: 'One repeat',
  extra: 'More than the panels alone',
  rule: 'By the rule, one repeat more',
  ruleOf: (cloth: string, short: boolean) => (short ? `${cloth}: too little` : cloth),
  lost: 'Cloth lost',
  upperEdge: 'Its upper edge to the first line',
  lowerEdge: 'Last line to each lower edge',
  onLine: 'it lies on a line',
  alongOne: 'Repeat along the one edge',
  alongOther: 'Repeat along the other',
  places: 'Panels, from the cut end',
  place: 'Panel begins',
  large: 'The repeat is more than a third of the piece: see what falls on it before you cut.',
  notMirrored:
    'A repeat that runs one way can’t show the same at left and right: its centre does, its edges don’t.',
  oneWay: 'A repeat that runs one way: all pieces lie the same way up.',
  drifts: 'Edges that slant alike match all along: share the slant between both edges if you can.',
  measureMore:
    'Measure over several repeats, and give how many: what is off is shared between them.',
  cutFirst:
    'Before you cut: fold cloth only with its lines pinned on each other; the second piece is cut single, laid on the first.',
  figure: {
    panels: 'The cloth with its repeats, panels one after another',
    match: 'The cloth with its repeats, both match points on it',
    centre: 'The piece across, with the lines on it',
    slant: 'Both edges from where they begin, and where the repeat falls on them',
  },
  repeatsCount: (count: number) => `${count} ${count === 1 ? 'repeat' : 'repeats'}`,
  panelCount: (count: number) => `${count} ${count === 1 ? 'panel' : 'panels'}`,
  formula: {
    repeat: (span: string, repeats: number, repeat: string) => `${span} ÷ ${repeats} = ${repeat}.`,
    each: (long: string, repeat: string, exact: string, each: number) =>
      `${long} ÷ ${repeat} = ${exact}, so ${each} to each panel. `,
    cloth: (before: number, each: number, repeat: string, long: string, cloth: string) =>
      `${before} × ${each} × ${repeat} + ${long} = ${cloth}. `,
    extra: (cloth: string, count: number, long: string, extra: string) =>
      `${cloth} − ${count} × ${long} = ${extra}.`,
    rule: (count: number, long: string, repeat: string, cloth: string) =>
      `${count} × ${long} + ${repeat} = ${cloth}.`,
    start: (first: string, on: number, repeat: string, below: string, start: string) =>
      `${first} ${on < 0 ? '−' : '+'} ${Math.abs(on)} × ${repeat} − ${below} = ${start}. `,
    less: (start: string, free: string, lost: string) => `${start} − ${free} = ${lost}.`,
    inside: (wide: string, phase: string, repeats: number, repeat: string, inside: string) =>
      `${wide} ÷ 2${phase === '' ? '' : ` − ${phase}`} − ${repeats} × ${repeat} = ${inside}.`,
    along: (repeat: string, angle: string, along: string) =>
      `${repeat} ÷ cos ${angle}° = ${along}. `,
    drift: (seam: string, low: string, high: string, drift: string) =>
      `${seam} × (cos ${low}° − cos ${high}°) = ${drift}.`,
  },
  derived: 'Derived here: pieces match where they show the same part of the repeat.',
  geometry: 'Geometry.',
  ruleSource: `${quoted(repeatQuotes['one-repeat'])}; it is for one match only.`,
};
