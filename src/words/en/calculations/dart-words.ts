import type { DartQuote } from '../../../sewing/sources/darts.ts';
import { dartQuotes } from '../published/published-dart-words.ts';
import { quoted } from '../published/published-words.ts';
import { CALCULATION_NAMES } from './calculation-names.ts';

const says = (...quotes: readonly DartQuote[]) =>
  `${quotes.map((quote) => quoted(dartQuotes[quote])).join('; ')}.`;

/** One dart: its legs, its edge, and what it may be turned into. */
export const dartWords = {
  title: CALCULATION_NAMES.dart,
  labels: {
    what: 'The dart is',
    by: 'Given',
    width: 'Width where it is widest',
    angle: 'Angle between its legs, °',
    leg: 'Leg, point to stitch line',
    above: 'Widest place up to its upper point',
    below: 'Widest place down to its lower point',
    seam: 'Seam at its edge',
    slant: 'Leg to edge, side it is pressed to, °',
    other: 'Leg to edge, other side, °',
    full: 'Edge to the fullest part',
    piece: 'Piece across, there',
    reach: 'Leg there, point to stitch line',
    parts: 'Darts there',
    zone: 'Edge it is drawn up over',
    part: 'Taken by the seam, %',
  },
  what: {
    edge: 'From an edge',
    two: 'Pointed at both ends',
    moved: 'Moved or split',
    gathers: 'Gathered or eased',
    seam: 'Partly in a seam',
  },
  by: { width: 'Width', angle: 'Angle' },
  none: 'none',
  notGiven: 'not given',
  smooth: 'so that it closes smooth',
  about: 'about',
  after: {
    edge: 'from the point to the tip of the raw edge',
    two: 'along each upper leg',
    moved: 'across, at the ends of its legs',
    gathers: 'of edge before it is drawn up',
    seam: 'across, left of the dart',
  },
  sentence: {
    edge: (width: string, point: string) =>
      `Mark the ends of its legs ${width} apart on the stitch line, and its point ${point} from there. Fold it as it will be pressed and pin it, then cut its edge along the piece’s: between the legs it runs out to the tip.`,
    two: (width: string, below: string) =>
      `Mark it ${width} across at its widest. Each lower leg is ${below}. Sew from the middle to each point; clip its fold if it pulls.`,
    moved: (count: number) =>
      `Cut from the new edge to the point, close the old dart: the new one opens by the same angle. ${count === 1 ? 'Make both its legs as long.' : `Share it over ${count}, each with its own point.`}`,
    gathers: (zone: string, times: string) =>
      `Leave the dart open, draw the edge up to ${zone}: ${times} times as full.`,
    seam: (taken: string) =>
      `The seam that runs through the point takes ${taken}, as far from the point as the leg is long.`,
  },
  angle: 'Angle between its legs',
  degrees: (angle: string) => `${angle}°`,
  width: 'Width where it is widest',
  cutLeg: 'Leg, point to raw edge',
  tip: 'Point to the tip of the stitch line',
  below: 'Each lower leg',
  each: 'Angle of each',
  short: 'Point short of the fullest part',
  shortOf: (short: string, least: string, most: string) =>
    `${short}; sources say ${least} to ${most}`,
  more: 'Taken up',
  moreOf: (percent: string) => `${percent} % of the edge`,
  left: 'Angle left of the dart',
  trim: 'Cut the edge only when the dart is folded and pinned as it will be pressed. Measure both legs first: they have to be equal.',
  tiny: 'So narrow a dart is better eased in (common practice, no source).',
  pointed: (cone: string) =>
    `Over 30° it stands out in a point, a cone of ${cone}° to each side: split it in two.`,
  past: 'The point lies past the fullest part.',
  unlike: (least: string, most: string) =>
    `Its point is not ${least} to ${most} short of the fullest part, as sources have it.`,
  kink: (by: string, dip: boolean, out: string, at: string) =>
    `Sewn, the edge has a ${dip ? 'dip' : 'peak'} of ${by}° at the dart: ${out} at ${at} to each side. Smooth, both angles make 180°.`,
  easy: 'So little is eased rather than gathered: try it on a scrap.',
  figure: 'The dart flat, its stitch line and its raw edge',
  figureBeside: 'The dart flat, and beside it what it becomes',
  figureTwo: 'The dart flat',
  count: (count: number) => `${count} ${count === 1 ? 'dart' : 'darts'}`,
  source: `Geometry, derived here. ${says('legs')}`,
  shortSource: says('short', 'cluster'),
  formula: {
    sine: (width: string, leg: string, sine: string, angle: string) =>
      `${width} ÷ (2 × ${leg}) = ${sine}, the sine of half of ${angle}°. `,
    width: (leg: string, half: string, width: string) => `2 × ${leg} × sin ${half}° = ${width}. `,
    point: (leg: string, half: string, middle: string) => `${leg} × cos ${half}° = ${middle}. `,
    leg: (leg: string, seam: string, slant: string, cut: string) =>
      `${leg} + ${seam} ÷ sin ${slant}° = ${cut}. `,
    tip: (leg: string, slant: string, both: string, tip: string) =>
      `${leg} × sin ${slant}° ÷ sin ${both}° = ${tip}.`,
    squared: (high: string, half: string, leg: string) =>
      `${high} × ${high} + ${half} × ${half} = ${leg} × ${leg}. `,
    split: (angle: string, parts: number, each: string) => `${angle} ÷ ${parts} = ${each}, in °. `,
    strip: (zone: string, width: string, strip: string, times: string) =>
      `${zone} + ${width} = ${strip}. ${strip} ÷ ${zone} = ${times}.`,
    part: (angle: string, percent: string, taken: string) =>
      `${angle} × ${percent} % = ${taken}, in °. `,
    less: (angle: string, taken: string, left: string) => `${angle} − ${taken} = ${left}, in °. `,
  },
};
