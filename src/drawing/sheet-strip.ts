import type { Point } from './figure.ts';
import { textWidth } from './helvetica.ts';
import { type Band, bandsOf, letterOf } from './paper-bands.ts';
import type { PaperShape } from './paper-job.ts';
import { FINE, line, text } from './paper-shapes.ts';
import type { Piece, SheetSetting, SheetStrip, SheetWords } from './sheet-job.ts';
import { highOf, LETTERING, lettered, linesOf } from './sheet-text.ts';

/** How high a strip is drawn, and how heavy its edges and what is made are; in mm. */
const HIGH = 7;
const EDGE = 0.3;
const MADE = 0.6;
/** Marks nearer to each other than this on the paper are no marks any more, in mm. */
const LEAST_APART = 0.8;
/** Between one label and the next. */
const BESIDE = 1;
/** An arrow beside what is said of a strip, with the room after it. */
const ARROW = 9.5;
const ABOVE = LETTERING.label.size + 1.6;

/** A row of marks as a strip with its numbers: at true size where it is as long as the page is wide, or in parts. */
export function stripPieces(
  strip: SheetStrip,
  across: number,
  { long }: Pick<SheetSetting, 'long'>,
  words: SheetWords,
): Piece[] {
  const places = strip.marks.map(({ at }) => at);
  const { from, to } = endsOf(strip);
  if (to - from <= 0) return [];
  const fits = to - from <= across;
  if (!fits && long === 'scale') {
    const times = (to - from) / across;
    const scaled = (at: number) => (at - from) / times;
    const drawn = { marks: strip.marks, edges: [0, strip.length].map(scaled), place: scaled };
    const dense = isDense(places.map(scaled));
    const marks = dense ? drawn.marks.filter(({ ticked }) => ticked) : drawn.marks;
    const said = [words.toScale(strip.datum, times), ...(dense ? [words.someDrawn] : [])].join(' ');
    const band = { from: 0, to: across, joinedAt: { start: undefined, end: undefined } };
    return [bandPiece({ ...drawn, marks }, { band, letter: 0 }, { said, across }, words)];
  }
  const place = (at: number) => at - from;
  const drawn = { marks: strip.marks, edges: [0, strip.length].map(place), place };
  const bands = bandsOf(to - from, across);
  return bands.map((band, i): Piece => {
    const part = bands.length > 1 ? ([i + 1, bands.length] as const) : undefined;
    const said = words.trueSize(strip.datum, part);
    return { ...bandPiece(drawn, { band, letter: i }, { said, across }, words), trueSize: true };
  });
}

/** How long a row is with the marks beside it, in mm. */
export function spanOf(strip: SheetStrip): number {
  const { from, to } = endsOf(strip);
  return to - from;
}

function endsOf({ marks, length }: SheetStrip): { from: number; to: number } {
  const [least = 0, most = 0] = extent(marks.map(({ at }) => at));
  return { from: least, to: Math.max(length, most) };
}

/** The least and the most of any number of places, with the datum. */
function extent(places: readonly number[]): number[] {
  let [least, most] = [0, 0];
  for (const at of places) {
    least = Math.min(least, at);
    most = Math.max(most, at);
  }
  return [least, most];
}

function isDense(places: readonly number[]): boolean {
  const sorted = [...places].sort((a, b) => a - b);
  return sorted.some((at, i) => i > 0 && at - (sorted[i - 1] ?? 0) < LEAST_APART);
}

interface Drawn {
  marks: SheetStrip['marks'];
  /** Where it begins and ends. */
  edges: readonly number[];
  /** From mm of the row to mm along the strip. */
  place(at: number): number;
}

function bandPiece(
  { marks, edges, place }: Drawn,
  { band, letter }: { band: Band; letter: number },
  { said, across }: { said: string; across: number },
  words: SheetWords,
): Piece {
  const { start, end } = band.joinedAt;
  const joined = start !== undefined || end !== undefined;
  const head = ABOVE + (joined ? LETTERING.label.line : 0);
  const caption = linesOf(said, LETTERING.small, across - ARROW);
  const on = marks
    .map((mark) => ({ ...mark, x: place(mark.at) - band.from }))
    .filter(({ x }) => x >= -0.001 && x <= band.to - band.from + 0.001);
  return {
    high: head + HIGH + 1.5 + highOf(caption.length, LETTERING.small) + 1.8,
    shapesAt(corner) {
      const top = corner.y + head;
      const foot = top + HIGH;
      const upright = (x: number, from: number, to: number, weight: number) =>
        line({ x: corner.x + x, y: from }, { x: corner.x + x, y: to }, weight);
      const level = (y: number) =>
        line({ x: corner.x, y }, { x: corner.x + band.to - band.from, y }, EDGE);
      const ends = edges
        .map((x) => x - band.from)
        .filter((x) => x >= -0.001 && x <= band.to - band.from + 0.001);
      return [
        ...[top, foot].map(level),
        ...ends.map((x) => upright(x, top - 1, foot + 1, EDGE)),
        ...on.map(({ x, made }) => upright(x, top, foot, made ? MADE : FINE)),
        ...labels(on, across).map(({ x, label }) =>
          text({ x: corner.x + x, y: top - 1.4 }, label, LETTERING.label.size),
        ),
        ...joins([start, end], band, letter, words).flatMap(({ x, said: join, left }) => [
          upright(x, corner.y, corner.y + LETTERING.label.size, FINE),
          // Between, where the numbers stand, it would strike one out.
          upright(x, top - 1, foot + 1, FINE),
          ...lettered([join], { x: corner.x + left, y: corner.y }, LETTERING.label),
        ]),
        ...captionShapes(caption, { x: corner.x, y: foot + 1.5 }),
      ];
    },
  };
}

/** The joining marks of a band, and where their words stand. */
function joins(
  ats: readonly (number | undefined)[],
  band: Band,
  letter: number,
  words: SheetWords,
) {
  return ats.flatMap((at, i) => {
    if (at === undefined) return [];
    const said = words.join(letterOf(letter - 1 + i));
    const x = at - band.from;
    const wide = textWidth(said, LETTERING.label.size) + 0.8;
    return [{ x, said, left: i === 0 ? x + 0.8 : x - wide }];
  });
}

/** Under a strip: an arrow the way it is measured, and what it is. */
function captionShapes(lines: readonly string[], { x, y }: Point): PaperShape[] {
  const middle = y + LETTERING.small.size / 2;
  const tip = { x: x + ARROW - 1.5, y: middle };
  return [
    line({ x, y: middle }, tip, EDGE),
    line({ x: tip.x - 1.6, y: middle - 0.8 }, tip, EDGE),
    line({ x: tip.x - 1.6, y: middle + 0.8 }, tip, EDGE),
    ...lettered(lines, { x: x + ARROW, y }, LETTERING.small),
  ];
}

/** The numbers over a strip that have room: of the ends and of what is ticked first. */
function labels(
  marks: readonly { x: number; label: string; ticked: boolean }[],
  across: number,
): { x: number; label: string }[] {
  const taken: { x: number; to: number; label: string }[] = [];
  const put = ({ x: middle, label }: { x: number; label: string }) => {
    const wide = textWidth(label, LETTERING.label.size);
    const x = Math.min(Math.max(0, middle - wide / 2), across - wide);
    const to = x + wide;
    if (taken.every((one) => one.to + BESIDE <= x || to + BESIDE <= one.x)) {
      taken.push({ x, to, label });
    }
  };
  const ends = [marks[0], marks.at(-1)].filter((one) => one !== undefined);
  for (const mark of [...ends, ...marks.filter(({ ticked }) => ticked), ...marks]) put(mark);
  return taken;
}
