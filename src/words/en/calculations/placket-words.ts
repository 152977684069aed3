import type { PlacketQuote } from '../../../sewing/sources/plackets.ts';
import { placketQuotes } from '../published/published-placket-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

const says = (...quotes: PlacketQuote[]) =>
  `${quotes.map((quote) => quoted(placketQuotes[quote])).join('; ')}.`;

/** An opening’s strips, or its zip. */
export const placketWords = {
  title: CALCULATION_NAMES.placket,
  labels: {
    way: 'Finished with',
    by: 'The opening',
    body: 'What passes, round: head, hand, hip',
    edge: 'Edge all round, closed',
    ease: 'To spare',
    open: 'Opening, finished',
    width: 'Strip, finished width',
    seam: 'Seam of the strip',
    extra: 'Strip beyond each end',
    zip: 'Zip there is, stop to stop',
    allow: 'Seam allowance there',
    row: 'Stitched from the centre',
    split: 'Where it lies',
  },
  way: { lap: 'One strip', strips: 'Lap and facing', zip: 'Zip' },
  by: { passes: 'What passes', given: 'Its length' },
  split: { edge: 'From an edge', waist: 'Dress side, over the waist' },
  nothing: 'nothing',
  toBuy: 'to buy',
  strip: 'of strip, one round both edges',
  twoStrips: 'of strip, a lap and a facing',
  pair: (inch: number, cm: number) => `${inch} in (${cm} cm)`,
  zip: (shortened: boolean) => (shortened ? 'zip, to be shortened' : 'zip'),
  zipOpening: 'to open by the zip',
  sentence: {
    lap: (open: string) =>
      `The opening is ${open}. Stay it and cut it, sew the strip to both edges spread into one line, fold it over, and tack the lap at its end.`,
    strips: (open: string) =>
      `The opening is ${open}. The lap folds over to the upper edge, the facing is turned under on the lower one; tack both at the end.`,
    zip: (open: string) =>
      `Leave ${open} of the seam open, the pull at the top; what is left of the zip lies below it, not stitched from outside.`,
    shorten: (open: string) =>
      `Leave ${open} of the seam open. Sew a new stop across the teeth there, and only then cut the zip below it.`,
  },
  opening: 'Opening, at least',
  wide: 'Strip cut wide',
  facing: 'Facing cut wide',
  left: 'Zip below the opening',
  leftOf: (left: string) => `${left}, left unstitched from outside`,
  newStop: 'New stop, from the top stop',
  cutOff: 'Cut the zip',
  cutOffOf: (at: string) => `at ${at}, after the stop is sewn`,
  row: 'Stitched from the centre',
  atWaist: 'Above and below the waist',
  atWaistOf: (above: string, below: string) => `${above} and ${below}`,
  noneSoLong:
    'No zip of the list is sold so long: take one off a reel, or a longer one, and give it.',
  extend: 'The seam is narrower than a zip needs: extend it with a strip or tape before you sew.',
  narrow: `That is enough where the garment below the opening is by itself as round as what passes. Where it widens slowly, as from waist to hip, it would jam at the end: work it out in “${CALCULATION_NAMES.opening}”, and give its length here.`,
  tryOn:
    'Try it over the head, the hand or the hips with the edge basted before you cut to its end.',
  stop: 'Cut to 1 mm (1/32 in) short of the end, with small blades; stay it first, so that it can’t tear on.',
  tryZip:
    'Baste the zip and try it on before you sew: the seam is opened again, a cut zip isn’t joined.',
  cutZip:
    'Never cut metal teeth with cloth shears, and keep your eyes away: bits fly. Cut below them, or pull teeth first.',
  figure: 'The opening, and what goes into it beside it',
  formula: {
    open: (body: string, ease: string, edge: string, open: string) =>
      `(${body} + ${ease} − ${edge}) ÷ 2 = ${open}.`,
    long: (openings: number, open: string, extra: string, long: string) =>
      `${openings} × ${open} + 2 × ${extra} = ${long}. `,
    wide: (width: string, seam: string, wide: string) => `2 × ${width} + 2 × ${seam} = ${wide}.`,
    facing: (width: string, seam: string, wide: string) => ` ${width} + 2 × ${seam} = ${wide}.`,
    pair: (inch: number, cm: number, sure: string) =>
      `A zip of ${inch} in or ${cm} cm is surely ${sure}. `,
    left: (zip: string, open: string, left: string) => `${zip} − ${open} = ${left}.`,
    cut: (stop: string, tail: string, cut: string) => ` ${stop} + ${tail} = ${cut}.`,
    split: (open: string, parts: number, above: string) => `${open} ÷ ${parts} = ${above}.`,
  },
  geometry: 'Geometry: a slit adds twice its length.',
  stripSource: {
    lap: says('lap-strip'),
    strips: says('two-strips'),
  },
  zipSource: `${says('zip-pairs', 'zip-left', 'zip-seam')} What is left below a new stop: common practice, no source.`,
  splitSource: says('side-split'),
};
