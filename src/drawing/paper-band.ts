import type { Point } from './figure.ts';
import { type Band, letterOf, OVERLAP } from './paper-bands.ts';
import { type PaperShape, type PaperStrip, type PaperWords, widthOf } from './paper-job.ts';
import { FINE, HAIR, holeShapes, line, SMALL, text } from './paper-shapes.ts';

/** Room over a strip for numbers, and under it for what it is; in mm. */
const ABOVE = 8;
const BELOW = 8;
/** Height of numbers, in mm. */
const NUMBER = 2.4;
/** A letter is as wide as this share of its height, at the most on average. */
const LETTER = 0.75;
/** Numbers nearer to each other than this are left out, in mm. */
const LEAST_APART = 5;
const EDGE = 0.3;
/** A joining line runs beyond the strip by this much, in mm. */
const JOIN_BEYOND = 4;

/** How much of the page's height a band of a strip takes, in mm. */
export function bandHeight(strip: PaperStrip): number {
  return ABOVE + widthOf(strip) + BELOW;
}

/** Where a band lies on its page, and which letters its joining marks have. */
export interface BandPlace {
  /** Upper left corner of the room it takes, in mm. */
  at: Point;
  /** Of the joining mark at its end, counted over all pages. */
  letter: number;
}

/** One band of a strip, with its marks and joining marks, at true size. */
export function bandShapes(
  strip: PaperStrip,
  band: Band,
  { at: corner, letter }: BandPlace,
  words: PaperWords,
): PaperShape[] {
  const width = widthOf(strip);
  const top = corner.y + ABOVE;
  const bottom = top + width;
  const x = (at: number) => corner.x + at - band.from;
  const across = (at: number, from: number, to: number, weight: number) =>
    line({ x: x(at), y: from }, { x: x(at), y: to }, weight);
  const edge = (y: number) => line({ x: x(band.from), y }, { x: x(band.to), y }, EDGE);
  const { start, end } = band.joinedAt;
  const join = (at: number, index: number, side: 1 | -1): PaperShape[] => {
    const said = words.join(letterOf(index));
    const left = side > 0 ? 0.8 : -said.length * SMALL * LETTER - 0.8;
    return [
      across(at, top - JOIN_BEYOND, bottom + JOIN_BEYOND, FINE),
      text({ x: x(at) + left, y: top - JOIN_BEYOND }, said, SMALL),
    ];
  };
  return [
    edge(top),
    ...(strip.width === undefined ? [] : [edge(bottom)]),
    ...(band.from === 0 ? [across(0, top - 2, bottom + 2, EDGE)] : []),
    ...(band.to === strip.length ? [across(strip.length, top - 2, bottom + 2, EDGE)] : []),
    ...strip.rows.flatMap((row) => marksShapes(strip, row, band, { x, top, bottom })),
    ...(start === undefined ? [] : join(start, letter - 1, 1)),
    ...(end === undefined ? [] : join(end, letter, -1)),
    ...caption(words.bandOf(strip, band.from, band.to), { x: corner.x, y: bottom + BELOW - 2 }),
  ];
}

/** What the band is, after an arrow the way it is measured. */
function caption(said: string, at: Point): PaperShape[] {
  const y = at.y - SMALL / 2;
  const tip = { x: at.x + 10, y };
  return [
    line({ x: at.x, y }, tip, EDGE),
    line({ x: tip.x - 2, y: y - 1 }, tip, EDGE),
    line({ x: tip.x - 2, y: y + 1 }, tip, EDGE),
    text({ x: tip.x + 1.5, y: at.y }, said, SMALL),
  ];
}

interface Laid {
  x: (at: number) => number;
  top: number;
  bottom: number;
}

function marksShapes(
  { hole }: PaperStrip,
  { marks, across }: PaperStrip['rows'][number],
  band: Band,
  { x, top, bottom }: Laid,
): PaperShape[] {
  const shapes: PaperShape[] = [];
  let lettered = Number.NEGATIVE_INFINITY;
  for (const { at, label } of marks) {
    if (!isOn(band, at, reach(hole))) continue;
    const centre = { x: x(at), y: top + across };
    shapes.push(
      ...(hole === undefined
        ? [line({ x: centre.x, y: top }, { x: centre.x, y: bottom }, FINE)]
        : holeShapes(centre, hole, true)),
    );
    if (at - lettered < LEAST_APART) continue;
    lettered = at;
    const y = hole === undefined ? top - 1 : centre.y - hole / 2 - 1.2;
    shapes.push(text({ x: centre.x - label.length * NUMBER * 0.28, y }, label, NUMBER));
  }
  return shapes;
}

/** How far a mark reaches along the strip; no farther than to the joining mark of its neighbour. */
function reach(hole: number | undefined): number {
  return hole === undefined ? 0 : Math.min(HAIR * hole, OVERLAP / 2);
}

/** A mark that would reach over a joined end is left to the neighbour, which has all of it. */
function isOn({ from, to, joinedAt }: Band, at: number, reach: number): boolean {
  const first = joinedAt.start === undefined ? from : from + reach;
  const last = joinedAt.end === undefined ? to : to - reach;
  return at >= first && at <= last;
}
