import { modulo } from '../graduations/tick-classes.ts';
import { median } from '../numerics/order.ts';
import type { LinesBeside, LongLines, NumberedLine } from './beside-lines.ts';
import { type FoundProgression, placeOf } from './found-progression.ts';
import { type FullLines, fullLines } from './full-lines.ts';
import {
  BESIDE_ITS_LINE,
  FAR,
  IN_THE_WAY,
  NEAR,
  NUMBERED_LINE_ACROSS_FEWEST,
  ON_ITS_LINE,
  SCATTER,
  UNEQUAL,
} from './limits.ts';

/**
 * Which line numbers label that are turned across the tape. They are as wide as their digits are
 * tall, so that their own width tells nothing. What does: lines that cross the tape between them,
 * or one class of lines that is surely the longest. Of 38 scales 22 number the line after the
 * number and 16 the one it stands on, none the line before it (measured on photographs).
 */
export function numberedLineAcross(
  found: FoundProgression,
  { sheet, pattern }: LinesBeside,
  fold: number,
  lines: LongLines,
  identified: boolean,
): NumberedLine {
  const longest = identified ? modulo(lines.longAt, fold) : undefined;
  const full = fold > 1 ? fullLines(sheet, pattern, fold, found.row, longest) : null;
  if (full) return inBoxes(found, full, identified ? lines.longAt : full.longAt);
  const centre = placeOf(found, ({ middle }) => middle);
  const upwards = Math.sign(found.progression.perTick);
  if (!identified) {
    // Not the graduation that happens to be under the middle: the next long one, to be asked about.
    const next = upwards * nextLong(lines, upwards * centre, upwards);
    return { tick: next, placing: 'unsure', doubtful: true, counted: false };
  }
  const tick = lines.longAt + fold * Math.round((centre - lines.longAt) / fold);
  const off = (upwards * (centre - tick)) / fold;
  const doubtful = off > ON_ITS_LINE || off < -BESIDE_ITS_LINE;
  return { tick, placing: off < -ON_ITS_LINE ? 'before' : 'centred', doubtful, counted: false };
}

/** The first graduation of the longest class past a place, both counted in the direction of the values. */
function nextLong({ lengths, subdivisions: fold }: LongLines, place: number, upwards: number) {
  const longest = Math.max(...lengths);
  let tick = Math.ceil(place);
  for (let step = 0; step < fold; step++, tick++) {
    const length = lengths[(((upwards * tick) % fold) + fold) % fold] ?? 0;
    if (length >= longest - 1) return tick;
  }
  return Math.ceil(place);
}

/** Numbers between lines that cross the tape: each is that of the nearer one, where that is the higher. */
function inBoxes(
  { progression: rise }: FoundProgression,
  { longAt, fold, aside }: FullLines,
  longest: number,
): NumberedLine {
  const upwards = Math.sign(rise.perTick);
  const gaps = rise.agreeing.map(({ cell, value }) => {
    const [low, high] = [
      upwards > 0 ? cell.left : cell.right,
      upwards > 0 ? cell.right : cell.left,
    ];
    const inFold = (upwards * (cell.middle - aside - longAt)) / fold;
    const place = (tick: number) => (upwards * (tick - aside - longAt)) / fold;
    const last = Math.floor(inFold);
    return {
      value,
      line: longAt + upwards * fold * (last + 1),
      below: place(low) - last,
      above: last + 1 - place(high),
    };
  });
  const above = median(gaps.map((gap) => gap.above));
  const below = median(gaps.map((gap) => gap.below));
  const middles = gaps.map((gap) => gap.below - gap.above);
  const usual = median(middles);
  const scatter = Math.sqrt(
    middles.reduce((sum, middle) => sum + ((middle - usual) / 2) ** 2, 0) / middles.length,
  );
  const over = gaps.filter((gap) => Math.min(gap.above, gap.below) < 0).length;
  const clear =
    longest === longAt &&
    rise.distinct >= NUMBERED_LINE_ACROSS_FEWEST &&
    over <= IN_THE_WAY * gaps.length &&
    scatter <= SCATTER &&
    above <= NEAR &&
    below >= FAR &&
    below >= UNEQUAL * above;
  const firstValue = rise.agreeing[0]?.value ?? 0;
  const tick = Math.round(
    median(gaps.map(({ line, value }) => line - (value - firstValue) / rise.perTick)),
  );
  return { tick, placing: clear ? 'before' : 'unsure', doubtful: !clear, counted: false };
}
