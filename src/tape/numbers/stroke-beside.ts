import { ASIDE, BARE, CROSSED, INKED, REACH, THICKEST } from './limits.ts';
import type { NumberCell, NumberRows } from './number-row.ts';

/**
 * Whether a stroke as long as a digit is tall stands at either end of a number turned across the
 * tape, where a digit of it would be: a plain 1 that touches a line is wiped with that line.
 *
 * @param contrast of the graduations, in log-grey
 */
export function hasStrokeBeside(
  { sheet, ground }: Pick<NumberRows, 'sheet' | 'ground'>,
  { x0, x1, y0, y1 }: NumberCell,
  contrast: number,
): boolean {
  const { width, height, values } = sheet;
  const tall = x1 - x0 + 1;
  const isDark = (x: number, y: number) => {
    const at = y * width + x;
    return (ground[at] as number) - (values[at] as number) > INKED * contrast;
  };
  /** Light, then dark, then light again: a graduation, or what lies beside the tape, doesn't end. */
  const isCrossed = (x: number, end: number, way: 1 | -1) => {
    let [seenLight, dark] = [false, 0];
    for (let step = 1; step <= REACH * tall; step++) {
      const y = end + way * step;
      if (x < 0 || x >= width || y < 0 || y >= height) return false;
      if (isDark(x, y)) dark += seenLight ? 1 : 0;
      else if (dark > 0) return dark <= THICKEST * tall;
      else seenLight = true;
    }
    return false;
  };
  const share = (from: number, to: number, end: number, way: 1 | -1) => {
    let crossed = 0;
    for (let x = from; x <= to; x++) crossed += isCrossed(x, end, way) ? 1 : 0;
    return crossed / Math.max(1, to - from + 1);
  };
  const aside = Math.round(ASIDE * tall);
  return (
    [
      [y0, -1],
      [y1, 1],
    ] as const
  ).some(
    ([end, way]) =>
      share(x0, x1, end, way) >= CROSSED &&
      Math.min(share(x0 - aside, x0 - 2, end, way), share(x1 + 2, x1 + aside, end, way)) <= BARE,
  );
}
