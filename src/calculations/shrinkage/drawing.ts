import { shrinkageAnswerWords as words } from '#words/calculations/shrinkage-answer-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong, lengthAt } from '../../calculation/drawing.ts';
import type { Dimension, DimensionOf } from '../../drawing/dimension.ts';
import type { FigureShape, LineStyle } from '../../drawing/figure.ts';
import { lineThrough } from '../../drawing/figure-line.ts';
import { type ExactLength, exactLength, toMm, ZERO } from '../../lengths/length.ts';
import { cutFor } from '../../sewing/cloth/shrinkage.ts';
import { type ShrinkageAsked, shrinkageFields } from './fields.ts';
import { type Kept, shrinkageOf } from './worked.ts';

/** How wide what has no width is drawn, and how far apart sample and piece lie, in parts of their lengths. */
const NARROW = 0.2;
const APART = 0.25;

/** A rectangle of the drawing: how it is drawn, from where across, how wide and how long. */
interface Box {
  style: LineStyle;
  from: number;
  wide: ExactLength;
  long: ExactLength;
}

/** The sample before and after, and beside it the piece as it is cut and as it comes out; lengths along the grain upright. */
export const shrinkageDrawing: Drawing = {
  id: 'shrinkage',
  // Other cloth, which is already there.
  unplaced: () => ['there', 'thereWide'],
  draw(draft, bench) {
    const read = shrinkageFields.read(draft, bench);
    if (!read.ok) return undefined;
    const kept = shrinkageOf(read.value);
    if (!kept.ok) return undefined;
    const boxes = boxesOf(read.value, kept.value);
    return {
      name: words.figure,
      toScale: true,
      shapes: boxes.map(shapeOf),
      dimensions: dimensions(read.value, boxes, bench),
    };
  },
};

/** Before and after; where something is cut, the piece as well. */
function boxesOf(asked: ShrinkageAsked, kept: Kept): Box[] {
  const { alongBefore, alongAfter, acrossBefore, acrossAfter, long, wide, growth } = asked;
  const narrow = exactLength(NARROW * Math.max(alongBefore, long ?? ZERO));
  const sample = acrossBefore ?? narrow;
  const washed = (readings: readonly ExactLength[], other: ExactLength) => readings[0] ?? other;
  const from = sample + APART * Math.max(sample, wide ?? ZERO);
  const cutLong = long === undefined ? undefined : cutFor(long, kept.along, growth);
  const cutWide =
    wide === undefined || kept.across === undefined ? undefined : cutFor(wide, kept.across, growth);
  const boxes: Box[] = [
    { style: 'cloth', from: 0, wide: sample, long: alongBefore },
    {
      ...{ style: 'stitch', from: 0, wide: washed(acrossAfter, sample) },
      long: washed(alongAfter, alongBefore),
    },
  ];
  if (cutLong === undefined && cutWide === undefined) return boxes;
  const [high, broad] = [cutLong ?? narrow, cutWide ?? narrow];
  return [
    ...boxes,
    { style: 'cut', from, wide: broad, long: high },
    { style: 'placement', from, wide: wide ?? narrow, long: long ?? narrow },
  ];
}

function shapeOf({ style, from, wide, long }: Box): FigureShape {
  const [left, right] = [from, from + wide].map((x) => toMm(exactLength(x))) as [number, number];
  const low = toMm(long);
  return lineThrough(
    style,
    { x: left, y: 0 },
    { x: right, y: 0 },
    { x: right, y: low },
    { x: left, y: low },
    { x: left, y: 0 },
  );
}

/** What is asked for and found, on the sides of the rectangles. */
function dimensions(asked: ShrinkageAsked, boxes: readonly Box[], bench: Bench): Dimension[] {
  const { acrossBefore, long, wide } = asked;
  const [before, after, cut, wanted] = boxes;
  const isAcross = acrossBefore !== undefined;
  return [
    ...upright(before, { given: 'alongBefore' }, bench),
    ...upright(after, { given: 'alongAfter' }, bench),
    ...(isAcross ? level(before, { given: 'acrossBefore' }, bench) : []),
    ...(isAcross ? level(after, { given: 'acrossAfter' }, bench) : []),
    ...(long === undefined
      ? []
      : [
          ...upright(cut, { found: 'cut-along' }, bench),
          ...upright(wanted, { given: 'long' }, bench),
        ]),
    ...(wide === undefined
      ? []
      : [
          ...level(cut, { found: 'cut-across' }, bench),
          ...level(wanted, { given: 'wide' }, bench),
        ]),
  ];
}

function upright(box: Box | undefined, by: DimensionOf, bench: Bench): Dimension[] {
  if (!box) return [];
  const x = toMm(exactLength(box.from));
  return [
    lengthAt(
      [
        { x, y: 0 },
        { x, y: toMm(box.long) },
      ],
      box.long,
      by,
      bench,
    ),
  ];
}

function level(box: Box | undefined, by: DimensionOf, bench: Bench): Dimension[] {
  if (!box) return [];
  return [lengthAlong(toMm(box.long), [box.from, box.from + box.wide], by, bench)];
}
