import type { BindingQuote } from '../../../sewing/sources/binding.ts';
import type { SeamQuote } from '../../../sewing/sources/seams.ts';
import { bindingQuotes } from '../published/published-binding-words.ts';
import { seamQuotes } from '../published/published-seam-words.ts';
import { quoted } from '../published/published-words.ts';

/** What is said of a binding. */
export const bindingAnswerWords = {
  after: 'wide to cut',
  sentence: {
    single:
      'Sew it on as far from the edge as it is wide when finished, fold it over the edge, turn its other edge in and sew it down.',
    double:
      'Press it in half lengthwise, sew both raw edges on as far from the edge as it is wide when finished, and fold it over.',
    band: 'Turn a quarter inch in at both edges, press it in half and sew it on with the edge inside.',
    seam: 'Sew it to the edge of the allowance an eighth of an inch in, wrap it round and sew beside the seam.',
    cord: 'Wrap it round the cord and sew close with a zip foot; sew it in between both layers as close again.',
    flat: 'Press it in half lengthwise and sew it in between both layers.',
  },
  long: 'How long',
  longFrom: 'Straight parts',
  curves: 'Curves, as they are cut',
  corner: (place: number) => `Corner ${place} takes`,
  ends: { open: 'Turned in at both ends', ring: 'In the join' },
  rule: 'By the rule alone',
  thick: 'Its thickness takes',
  thickOf: (size: string, less: boolean) =>
    less ? `${size} less: the rule is kept` : `${size} more`,
  stretch: 'The fold stretches outward',
  ease: 'The fold eases inward',
  share: (share: string) => `${share} % at the tightest curve`,
  eight: 'Eight cords, a trade rule',
  plus: 'An inch and a half more, another',
  leaves: (strip: string, seam: string, less: boolean) =>
    less ? `${strip}: too narrow to go round` : `${strip}, leaves ${seam} for each seam`,
  stretched:
    'A fold that has to give more than a tenth puckers or rolls: take a narrower binding, and try a piece of the curve.',
  sharp: 'A corner sharper than 45° has little room for its mitre: try it on paper first.',
  sample: 'Sew a hand’s length on a scrap of the same layers first: thickness is in no rule.',
  noLength: 'Give the edges to see how long it is.',
  corners:
    'Stop as far before a corner as the binding is wide, fold the strip up, then down on the next edge, and begin there anew. Begin on a straight part; no join within 5 cm of a corner.',
  pleats: (ends: 'open' | 'ring') =>
    ends === 'ring'
      ? 'Pleats at corners, from the join in the middle of the first straight part'
      : 'Pleats at corners, from the end',
  pleat: 'Corner',
  clip: 'At a corner clip the allowance of the piping to its stitching, and no further.',
  formula: {
    times: (times: number, width: string, cut: string) => `${times} × ${width} = ${cut}.`,
    band: (width: string, turns: string, cut: string) => `2 × ${width} + ${turns} = ${cut}.`,
    seam: (seam: string, wider: string, cut: string) => `${seam} + ${wider} = ${cut}.`,
    cord: (pi: string, cord: string, thick: string, seam: string, cut: string) =>
      `${pi} × ${thick === '' ? cord : `(${cord} + ${thick})`} + 2 × ${seam} = ${cut}.`,
    flat: (width: string, seam: string, cut: string) => `2 × (${width} + ${seam}) = ${cut}.`,
    more: (rule: string, thick: string, cut: string) => `${rule} + ${thick} = ${cut}.`,
    long: (terms: readonly string[], long: string) => `${terms.join(' + ')} = ${long}.`,
    corner: (inside: string, half: string, takes: string) =>
      `2 × ${inside} × cos ${half}° ÷ sin ${half}° = ${takes}.`,
    join: (root: string, seam: string, takes: string) => `2 × ${root} × ${seam} = ${takes}.`,
  },
  practice: 'Common practice, no source.',
  geometry: 'Geometry: half the cord’s round on each side, and both seams.',
  folds: 'Geometry, derived here: measures go to the outside of each fold; the greater is cut.',
  lengths:
    'Derived here: of every part the longer of edge and stitch line; a corner takes a pleat for its mitre.',
  published: ({ quote }: { quote: BindingQuote }) => `${quoted(bindingQuotes[quote])}.`,
  seamSource: ({ quote }: { quote: SeamQuote }) => `${quoted(seamQuotes[quote])}.`,
  figure: 'The strip across, flat, with its folds',
};
