import { seamWords as words } from '#words/calculations/seam-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Line } from '../../calculation/calculation.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { showExact, shownText } from '../../lengths/show-length.ts';
import { guideFor } from '../../sewing/seams/seam-guide.ts';

/** The distance from the needle in both units, and the nearest plate line. */
export function guideLines(distance: ExactLength, bench: Bench): Line[] {
  const guide = guideFor(distance);
  const text = (unit: 'mm' | 'in') => shownText(showExact(distance, unit, 3), bench.decimalMark);
  const inInches = guide.line % 127 === 0;
  const line = shownText(showExact(guide.line, inInches ? 'in' : 'mm'), bench.decimalMark);
  const off = showExact(exactLength(Math.abs(guide.off)), 'mm', 2);
  const on = off.whole === '0' && !off.decimals;
  const beside = words.plateBeside(line, shownText(off, bench.decimalMark), guide.off < 0);
  return [
    { label: words.guide, value: words.guideAt(text('mm'), text('in')) },
    { label: words.plate, value: on ? words.plateOn(line) : beside },
  ];
}
