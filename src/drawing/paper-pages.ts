import type { Point } from './figure.ts';
import { boundsOf } from './figure.ts';
import { bandHeight, bandShapes } from './paper-band.ts';
import { bandsOf } from './paper-bands.ts';
import {
  PAPER,
  type PaperJob,
  type PaperOutcome,
  type PaperProblem,
  type PaperSetting,
  type PaperShape,
  type PaperStrip,
  type PaperWords,
} from './paper-job.ts';
import { roomOn, sheetShapes } from './paper-sheet.ts';
import { laidOn, type Room, tileHeight, tileShapes, tilesOf } from './paper-tile.ts';

/** Longer than this, in mm, nothing is printed: 20 m of paper strip fit no table. */
const LONGEST = 20_000;
/** More pages than this are joined by nobody: a wall is papered with fewer. */
const MOST_PAGES = 200;
/**
 * The least room for the work on a page, in mm: across, for what stands over it side by side;
 * down, for overlaps at both ends and something between.
 */
const LEAST = { across: 180, down: 60 };

/** What is laid on a page as a whole. */
interface Block {
  high: number;
  shapesAt(corner: Point): PaperShape[];
}

/**
 * Lays strips and drawings out on pages at true size, in order: strips in bands across the page,
 * one under the other, drawings in tiles; with joining marks, the order of pages, and bars to
 * check the print by on every page.
 */
export function pagesOf(job: PaperJob, setting: PaperSetting, words: PaperWords): PaperOutcome {
  const strips = job.strips.filter(({ rows }) => rows.some(({ marks }) => marks.length > 0));
  const drawings = job.drawings.filter(({ figure }) => figure.length > 0);
  const problem = problemOf({ ...job, strips, drawings }, setting);
  if (problem) return { ok: false, problem };
  const room = roomOn(setting);
  const sheets = onSheets(blocksOf({ ...job, strips, drawings }, room, words), room.down);
  if (sheets.length > MOST_PAGES) {
    return { ok: false, problem: { kind: 'too-many', pages: sheets.length, most: MOST_PAGES } };
  }
  const { width, height } = PAPER[setting.size];
  const pages = sheets.map((blocks, i) => {
    const sheet = { title: job.title, page: i + 1, pages: sheets.length };
    const shapes = sheetShapes(sheet, setting, words);
    let y = room.top;
    for (const block of blocks) {
      shapes.push(...block.shapesAt({ x: room.left, y }));
      y += block.high;
    }
    return { width, height, shapes };
  });
  return { ok: true, pages };
}

function problemOf(
  { strips, drawings }: PaperJob,
  setting: PaperSetting,
): PaperProblem | undefined {
  const room = roomOn(setting);
  if (!(setting.margin >= 0) || room.across < LEAST.across || room.down < LEAST.down) {
    const bare = roomOn({ ...setting, margin: 0 });
    const most = Math.min(bare.across - LEAST.across, bare.down - LEAST.down) / 2;
    return { kind: 'no-room', most: Math.floor(most) };
  }
  if (strips.length + drawings.length === 0) return { kind: 'nothing' };
  const lengths = [
    ...strips.map(({ length }) => length),
    ...drawings.flatMap(({ figure }) => [boundsOf(figure).width, boundsOf(figure).height]),
  ];
  const tooLong = lengths.find((length) => !(length <= LONGEST));
  if (tooLong !== undefined) return { kind: 'too-long', length: tooLong, most: LONGEST };
  const wide = strips.find((strip) => bandHeight(strip) > room.down);
  return wide && { kind: 'too-wide', width: wide.width ?? 0, most: widest(wide, room.down) };
}

function widest(strip: PaperStrip, down: number): number {
  return Math.floor(down - bandHeight({ ...strip, width: 0 }));
}

/** All bands and tiles in order, their joining marks lettered through. */
function blocksOf({ strips, drawings }: PaperJob, room: Room, words: PaperWords): Block[] {
  const blocks: Block[] = [];
  let letter = 0;
  for (const strip of strips) {
    const first = letter;
    const bands = bandsOf(strip.length, room.across);
    for (const [i, band] of bands.entries()) {
      const shapesAt = (at: Point) => bandShapes(strip, band, { at, letter: first + i }, words);
      blocks.push({ high: bandHeight(strip), shapesAt });
    }
    letter += bands.length - 1;
  }
  for (const drawing of drawings) {
    const laid = laidOn(drawing.figure, room);
    for (const tile of tilesOf(laid.figure, room, letter)) {
      const shapesAt = (at: Point) => tileShapes(drawing, laid, tile, at, words);
      blocks.push({ high: tileHeight(tile), shapesAt });
      letter = Math.max(letter, ...tile.joints.map((joint) => joint.letter + 1));
    }
  }
  return blocks;
}

/** As many blocks to a page as there is room for. */
function onSheets(blocks: readonly Block[], room: number): Block[][] {
  const sheets: Block[][] = [];
  let left = 0;
  for (const block of blocks) {
    if (block.high > left || sheets.length === 0) {
      sheets.push([]);
      left = room;
    }
    sheets.at(-1)?.push(block);
    left -= block.high;
  }
  return sheets;
}
