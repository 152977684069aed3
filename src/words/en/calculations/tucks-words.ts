import type { TuckQuote } from '../../../sewing/sources/tucks.ts';
import { tuckQuotes } from '../published/published-tuck-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

const says = (...quotes: readonly TuckQuote[]) =>
  `${quotes.map((quote) => quoted(tuckQuotes[quote])).join('; ')}.`;

/** Tucks over a finished width. */
export const tucksWords = {
  title: CALCULATION_NAMES.tucks,
  labels: {
    finished: 'Finished width',
    by: 'Given',
    gap: 'Clear between tucks',
    spacing: 'From stitch line to stitch line',
    count: 'How many',
    groups: 'Groups',
    each: 'Tucks in a group',
    fit: 'Gaps come out',
    first: 'First edge to stitch line',
    last: 'Last stitch line to edge',
    depth: 'Depth of a tuck',
    step: 'Each one deeper by',
    anew: 'They grow',
    lies: 'Pressed towards',
    radius: 'On a curve, its radius',
    seam: 'Seam, each edge',
  },
  by: { gap: 'Gap', spacing: 'Spacing', count: 'Number', groups: 'Groups' },
  fit: { nearest: 'Nearest', 'no-closer': 'No closer', 'no-wider': 'No wider' },
  anew: { all: 'Through all groups', group: 'Anew in each group' },
  lies: { last: 'The last edge', first: 'The first edge' },
  asFirst: 'as the first',
  alike: 'nothing, all alike',
  none: 'none',
  straight: 'straight',
  about: 'about',
  after: 'of cloth to cut across',
  sentence: (count: number, spacing: string) =>
    `${count} ${count === 1 ? 'tuck' : 'tucks'}${spacing === '' ? '' : `, one every ${spacing}`}. Mark every line from the same cut end. Fold each tuck so that its two stitch lines meet; press, stitch, then cut to shape.`,
  spacing: 'From stitch line to stitch line',
  gap: 'Clear between',
  between: 'From group to group, stitch lines',
  taken: 'In the tucks: what letting them out gains',
  gain: 'Letting one out gains',
  gainOf: (first: string, last: string) => (first === last ? first : `${first} to ${last}`),
  curve: 'Under side of a tuck is fuller by',
  offer: (count: number, spacing: string, cut: string) =>
    `Or ${count}, each ${spacing} from the next: cut ${cut}`,
  blind: 'Each tuck just meets the next stitch line: blind tucks.',
  covers:
    'Each tuck covers the next stitch line: stitch from the far edge, and try a few on a scrap.',
  noGroups: 'The groups hardly stand apart: they won’t be seen as groups.',
  card: 'Mark from the cut end, not with a card moved from tuck to tuck: its error adds up.',
  trim: 'Cut to shape only after tucking. Before you press: fold, pin and measure across.',
  line: 'Line',
  lines: 'Lines on the cloth',
  figure: 'The cloth flat above, tucked below, layers drawn apart',
  counted: (count: number) => `${count} ${count === 1 ? 'tuck' : 'tucks'}`,
  groupsCount: (count: number) => `${count} groups`,
  eachCount: (count: number) => `${count} in one`,
  source: `${says('takes', 'tucks-worked', 'card')}`,
  groupSource: says('groups'),
  formula: {
    spacing: (gap: string, depth: string, spacing: string) => `${gap} + ${depth} = ${spacing}. `,
    room: (finished: string, first: string, last: string, room: string) =>
      `${finished} − ${first} − ${last} = ${room}. `,
    gaps: (room: string, wanted: string, exact: string, gaps: number, count: number) =>
      `${room} ÷ ${wanted} = ${exact}, so ${gaps} ${gaps === 1 ? 'gap' : 'gaps'} and ${count} tucks. `,
    each: (room: string, gaps: number, spacing: string) => `${room} ÷ ${gaps} = ${spacing} each. `,
    between: (room: string, groups: number, each: number, spacing: string, between: string) =>
      `(${room} − ${groups} × ${each - 1} × ${spacing}) ÷ ${groups - 1} = ${between}. `,
    taken: (count: number, depth: string, step: string, taken: string) =>
      step === ''
        ? `${count} × 2 × ${depth} = ${taken}. `
        : `${count} × 2 × ${depth} + ${count} × ${count - 1} × ${step} = ${taken}. `,
    takenAnew: (groups: number, each: number, depth: string, step: string, taken: string) =>
      `${groups} × (${each} × 2 × ${depth} + ${each} × ${each - 1} × ${step}) = ${taken}. `,
    cut: (finished: string, taken: string, seam: string, cut: string) =>
      `${finished} + ${taken}${seam === '' ? '' : ` + 2 × ${seam}`} = ${cut}.`,
    curve: (depth: string, radius: string, percent: string) =>
      `2 × ${depth} ÷ ${radius} = ${percent} %.`,
  },
};
