import { bandHeight, bandShapes, text } from './paper-band.ts';
import { type Band, bandsOf, OVERLAP } from './paper-bands.ts';
import {
  PAPER,
  type PaperJob,
  type PaperOutcome,
  type PaperPage,
  type PaperSetting,
  type PaperShape,
  type PaperStrip,
  type PaperWords,
} from './paper-job.ts';

/** Longer than this, in mm, nothing is printed: 20 m of paper strip fit no table. */
const LONGEST = 20_000;
/** Room for what stands over and under the bands, in mm. */
const HEAD = 12;
const FOOT = 16;
/** The least room for a band, in mm. */
const LEAST_ACROSS = 100;
const TITLE = 4;
const SMALL = 3;
/** The bars a print is checked by, in mm. */
const BARS = [50, 50.8] as const;

interface Placed {
  strip: PaperStrip;
  band: Band;
  /** Of the joining mark at its end, counted over all pages. */
  letter: number;
}

/**
 * Lays strips out on pages at true size: in bands across the page, one under the other, in
 * order; with joining marks, the order of pages, and bars to check the print by on every page.
 */
export function pagesOf(job: PaperJob, setting: PaperSetting, words: PaperWords): PaperOutcome {
  const { width, height } = PAPER[setting.size];
  const room = {
    across: width - 2 * setting.margin,
    down: height - 2 * setting.margin - HEAD - FOOT,
  };
  const strips = job.strips.filter(({ rows }) => rows.some(({ marks }) => marks.length > 0));
  const least = bandHeight({ ...NO_STRIP, width: undefined });
  if (!(setting.margin >= 0) || room.across < LEAST_ACROSS || room.down < least) {
    const most = Math.min((width - LEAST_ACROSS) / 2, (height - HEAD - FOOT - least) / 2);
    return { ok: false, problem: { kind: 'no-room', most: Math.floor(most) } };
  }
  if (strips.length === 0) return { ok: false, problem: { kind: 'nothing' } };
  for (const strip of strips) {
    if (!(strip.length <= LONGEST)) {
      return { ok: false, problem: { kind: 'too-long', length: strip.length, most: LONGEST } };
    }
    if (bandHeight(strip) > room.down) {
      const most = Math.floor(room.down - bandHeight({ ...strip, width: 0 }));
      return { ok: false, problem: { kind: 'too-wide', width: strip.width ?? 0, most } };
    }
  }
  const sheets = onSheets(strips, room);
  return {
    ok: true,
    pages: sheets.map((bands, i): PaperPage => {
      return { width, height, shapes: pageShapes(job, setting, words, bands, i, sheets.length) };
    }),
  };
}

const NO_STRIP: PaperStrip = {
  name: '',
  datum: '',
  length: 0,
  width: undefined,
  hole: undefined,
  rows: [],
};

/** The bands of all strips in order, as many to a page as there is room for. */
function onSheets(
  strips: readonly PaperStrip[],
  room: { across: number; down: number },
): Placed[][] {
  const sheets: Placed[][] = [];
  let left = 0;
  let letter = 0;
  for (const strip of strips) {
    const high = bandHeight(strip);
    for (const band of bandsOf(strip.length, room.across)) {
      if (high > left || sheets.length === 0) {
        sheets.push([]);
        left = room.down;
      }
      sheets.at(-1)?.push({ strip, band, letter });
      left -= high;
      if (band.joinedAt.end !== undefined) letter++;
    }
  }
  return sheets;
}

function pageShapes(
  { title }: PaperJob,
  { size, margin }: PaperSetting,
  words: PaperWords,
  bands: readonly Placed[],
  page: number,
  pages: number,
): PaperShape[] {
  const { width, height } = PAPER[size];
  const shapes: PaperShape[] = [
    text({ x: margin, y: margin + TITLE }, title, TITLE),
    text({ x: margin, y: margin + TITLE + SMALL + 2 }, words.actualSize, SMALL),
    text({ x: width - margin - 30, y: margin + TITLE }, words.pageOf(page + 1, pages), TITLE),
  ];
  let y = margin + HEAD;
  for (const { strip, band, letter } of bands) {
    shapes.push(...bandShapes(strip, band, { at: { x: margin, y }, letter }, words));
    y += bandHeight(strip);
  }
  return [...shapes, ...barShapes(margin, height - margin, words)];
}

/** A bar of 50 mm and one of 2 in, side by side above the lower margin. */
function barShapes(left: number, bottom: number, { bars }: PaperWords): PaperShape[] {
  return BARS.flatMap((long, i): PaperShape[] => {
    const x = left + i * (BARS[0] + OVERLAP + 10);
    const y = bottom - 4;
    const tick = (at: number): PaperShape => ({
      kind: 'line',
      from: { x: at, y: y - 3 },
      to: { x: at, y: y + 3 },
      weight: 0.2,
    });
    return [
      { kind: 'line', from: { x, y }, to: { x: x + long, y }, weight: 0.2 },
      tick(x),
      tick(x + long),
      text({ x, y: y - 4 }, bars[i] ?? '', SMALL),
    ];
  });
}
