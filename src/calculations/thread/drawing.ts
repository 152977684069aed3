import { threadAnswerWords as words } from '#words/calculations/thread-answer-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Drawing, lengthAlong } from '../../calculation/drawing.ts';
import type { Dimension } from '../../drawing/dimension.ts';
import type { FigureShape } from '../../drawing/figure.ts';
import { lineThrough } from '../../drawing/figure-line.ts';
import { type ExactLength, exactLength, toMm, ZERO } from '../../lengths/length.ts';
import type { Thread } from '../../sewing/seams/thread.ts';
import { THREADS } from '../../sewing/sources/thread.ts';
import { type ThreadAsked, threadFields } from './fields.ts';
import { threadOf } from './worked.ts';

/** Of more seams the first have their numbers; all are drawn. */
const NUMBERED = 3;
/** How far below the seams the thread lies, and how long a mark across is, in parts of all that is drawn. */
const BELOW = 0.15;
const MARK = 0.02;

/** The seams as one line, and below it, at the same scale, the thread they take. */
export const threadDrawing: Drawing = {
  id: 'thread',
  // Of one stitch, of a sample, of what is bought and wound: none of it is as long as seams are.
  unplaced: () => [
    ...['thickness', 'stitchLong', 'zigWide', 'sampleSeam', 'sampleNeedle', 'sampleOther'],
    ...['passes', 'end', 'spool', 'bobbin', 'working', 'tail'],
  ],
  draw(draft, bench) {
    const read = threadFields.read(draft, bench);
    if (!read.ok) return undefined;
    const found = threadOf(read.value);
    if (!found.ok) return undefined;
    const { thread } = found.value;
    return {
      name: words.figure,
      toScale: true,
      shapes: shapes(read.value, thread),
      dimensions: dimensions(read.value, thread, bench),
    };
  },
};

/** Where each seam ends, and the last of all. */
function endsOf({ seams }: ThreadAsked): number[] {
  let at = 0;
  return seams.map((one) => {
    at += one;
    return at;
  });
}

/** How wide all of it is, in mm; something, also where there is no seam. */
function wideOf(asked: ThreadAsked, { all }: Thread): number {
  return Math.max(toMm(all), toMm(exactLength(endsOf(asked).at(-1) ?? 0)), 1);
}

function shapes(asked: ThreadAsked, thread: Thread): FigureShape[] {
  const wide = wideOf(asked, thread);
  const low = BELOW * wide;
  const across = (units: number, y: number) => {
    const x = toMm(exactLength(units));
    const half = MARK * wide;
    return lineThrough('cut', { x, y: y - half }, { x, y: y + half });
  };
  const ends = endsOf(asked);
  const long = (units: number) => toMm(exactLength(units));
  return [
    lineThrough('stitch', { x: 0, y: 0 }, { x: long(ends.at(-1) ?? 0), y: 0 }),
    ...[0, ...ends].map((end) => across(end, 0)),
    lineThrough('cloth', { x: 0, y: low }, { x: long(thread.all), y: low }),
    ...[ZERO, ...partsOf(asked, thread)].map((end) => across(end, low)),
  ];
}

/** Where the needle's thread ends, where that is known of several, and all of it. */
function partsOf({ stitch }: ThreadAsked, { byNeedle, all }: Thread): ExactLength[] {
  return byNeedle === undefined || THREADS[stitch] === 1 ? [all] : [byNeedle, all];
}

function dimensions(asked: ThreadAsked, thread: Thread, bench: Bench): Dimension[] {
  const low = BELOW * wideOf(asked, thread);
  const ends = [0, ...endsOf(asked)];
  const seams = asked.seams.slice(0, NUMBERED).map((_, i) => {
    const [from = 0, to = 0] = ends.slice(i);
    return lengthAlong(0, [from, to], { given: 'seams' }, bench);
  });
  const [needle, all] = partsOf(asked, thread);
  const parts =
    needle === undefined || all === undefined
      ? []
      : [
          lengthAlong(low, [0, needle], { found: 'needle' }, bench),
          lengthAlong(low, [needle, all], { found: 'other' }, bench),
        ];
  return [...seams, ...parts, lengthAlong(low, [0, thread.all], { found: 'thread' }, bench)];
}
