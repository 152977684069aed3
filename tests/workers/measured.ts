import { bandHeight } from '../../src/drawing/paper-band.ts';
import { bandsOf } from '../../src/drawing/paper-bands.ts';
import { PAPER, type PaperStrip } from '../../src/drawing/paper-job.ts';
import { linesAt, linesDown, type RenderedPage } from './rendered.ts';

/** What stands over and under the work on every page, in mm. */
const HEAD = 12;
const FOOT = 16;
/** From the top of a band to its strip. */
const ABOVE = 8;
/** Beside a hole's middle its cross hair is alone. */
const BESIDE = 1.5;

/** How far from its place each mark is, in mm. */
export interface Errors {
  marks: Set<string>;
  /** Along the strip, and across it, from the corner of the page. */
  onPage: number[];
  down: number[];
  /** Along the strip, once its bands are laid upon each other by their joining marks. */
  joined: number[];
}

/** @param scanAt how far down the strip each row is looked at */
export function errorsOf(
  strip: PaperStrip,
  pages: readonly RenderedPage[],
  scanAt: readonly number[],
  margin: number,
): Errors {
  const errors: Errors = { marks: new Set(), onPage: [], down: [], joined: [] };
  const reach = strip.hole === undefined ? 0 : strip.hole;
  let before = 0;
  let joinBefore: number | undefined;
  for (const band of bandsOnPages(strip, margin)) {
    const page = pages[band.page];
    if (!page) throw new Error(`no page ${band.page}`);
    const expected = (at: number) => margin + at - band.from;
    const joins = linesAt(page, band.top - 3);
    const { start, end } = band.joinedAt;
    const startSeen = start === undefined ? margin : nearest(joins, expected(start));
    // The place along the strip of this page's left edge, by what was measured alone.
    const origin = joinBefore === undefined ? -margin : before + joinBefore - startSeen;
    for (const [row, { marks, across }] of strip.rows.entries()) {
      const lines = linesAt(page, band.top + (scanAt[row] ?? 0));
      for (const { at } of marks) {
        if (at < band.from + (start === undefined ? 0 : reach)) continue;
        if (at > band.to - (end === undefined ? 0 : reach)) continue;
        const seen = nearest(lines, expected(at));
        errors.marks.add(`${row} ${at}`);
        errors.onPage.push(Math.abs(seen - expected(at)));
        errors.joined.push(Math.abs(origin + seen - at));
        if (strip.hole === undefined) continue;
        const level = nearest(linesDown(page, expected(at) + BESIDE), band.top + across);
        errors.down.push(Math.abs(level - band.top - across));
      }
    }
    before = origin;
    joinBefore = end === undefined ? undefined : nearest(joins, expected(end));
  }
  return errors;
}

/** Bands as they come on the pages: which page, and how far down its strip begins. */
function bandsOnPages(strip: PaperStrip, margin: number) {
  const { width, height } = PAPER.a4;
  const each = Math.floor((height - 2 * margin - HEAD - FOOT) / bandHeight(strip));
  return bandsOf(strip.length, width - 2 * margin).map((band, i) => ({
    ...band,
    page: Math.floor(i / each),
    top: margin + HEAD + (i % each) * bandHeight(strip) + ABOVE,
  }));
}

function nearest(lines: readonly number[], x: number): number {
  return lines.reduce((best, one) => (Math.abs(one - x) < Math.abs(best - x) ? one : best), -1e9);
}
