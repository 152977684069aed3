import type { ReadRows } from '../characters/read-cells.ts';
import type { TickPattern } from '../graduations/tick-pattern.ts';
import { type DigitsBetween, digitsBetween } from '../numbering/digits-between.ts';
import type { FoundProgression } from '../numbering/found-progression.ts';
import { type Progression, progression } from '../numbering/progression.ts';
import { looksLikeNumbers, type NumberRow, type NumberRows } from '../numbers/number-row.ts';
import type { Claimed, NoClaim } from './claim.ts';
import { laterReason } from './claim.ts';
import {
  DIGITS_OF_THREE,
  DIGITS_OF_TWO,
  DIGITS_UNPROVEN,
  LIKE_DIGITS,
  MORE_THAN_CHANCE,
  MOST_OF_ROW,
  MOSTLY,
  NEARER,
  PAIR_BESIDE,
  REGULAR,
  REGULAR_ROW,
  ROWS_ACROSS,
  ROWS_ALONG,
  TELLING_PATTERN,
  WORD_NUMBERS_FEWEST,
  WORD_NUMBERS_PLENTY,
  WORDS_OUTVOTE,
} from './limits.ts';
import { wordClaim } from './word-claim.ts';

/**
 * Reads a scale by its numbers, where the lines alone don't tell how it is divided: an even
 * progression along a row gives the step, the subdivision, the direction and the unit.
 */
export async function wordNumbers(
  words: NumberRows,
  pattern: TickPattern,
  readRows: ReadRows,
): Promise<Claimed> {
  const along = words.rows.filter(({ turned }) => !turned).slice(0, ROWS_ALONG);
  const across = words.rows.filter(({ turned }) => turned).slice(0, ROWS_ACROSS);
  const tries = [
    [along, 0],
    [along, 2],
    [across, 1],
    [across, 3],
  ] as const;
  const found: FoundProgression[] = [];
  let between: DigitsBetween | undefined;
  for (const [rows, turns] of tries) {
    if (rows.length === 0) continue;
    const page = await readRows(words, rows, turns);
    for (const [row, reads] of page) {
      const digits = turns === 0 || turns === 2 ? digitsBetween(reads) : undefined;
      between ??= digits;
      const rise = digits ? null : progression(reads, row);
      if (rise) found.push({ row, turns, reads, progression: rise });
    }
    if (
      found.some(
        ({ progression: p }) =>
          p.distinct >= WORD_NUMBERS_PLENTY && p.distinct >= MOST_OF_ROW * p.total,
      )
    )
      break;
  }
  const best = speaking(found, pattern) ?? found.find((one) => isPair(one, pattern));
  if (!best) return { ok: false, why: found.length === 0 ? 'no-numbers' : furthest(found) };
  return wordClaim(words, best, hasNearerRow(words, best, found, pattern), pattern, between);
}

/** The best progression; of clear ones that of the numbers nearest to the graduations. */
function speaking(
  found: readonly FoundProgression[],
  pattern: TickPattern,
): FoundProgression | undefined {
  const away = (one: FoundProgression) => Math.abs(one.row.across - pattern.zoneMiddle);
  // Digits between the lines' numbers, some misread, may score more than the numbers, and are clear of nothing.
  const clear = found.filter((one) => isClear(one.progression));
  let best = clear[0];
  for (const one of clear) {
    if (best && one.progression.score > best.progression.score) best = one;
  }
  for (const one of clear) {
    if (!best || one.row === best.row) continue;
    const strong = one.progression.distinct >= 0.5 * best.progression.distinct;
    if (strong && away(one) < NEARER * away(best)) best = one;
  }
  return best;
}

/** Most numbers are of one progression, next to none with another rise, and they are not three short ones by chance. */
function isClear({ distinct, partial, total, second, digits }: Progression): boolean {
  if (distinct < WORD_NUMBERS_FEWEST || distinct + partial < MOSTLY * total) return false;
  if (second * WORDS_OUTVOTE > distinct + 0.5) return false;
  return distinct >= MORE_THAN_CHANCE || digits >= DIGITS_OF_THREE || distinct === total;
}

/**
 * Two numbers beside the lines that nothing else read speaks against, and that the lines divide
 * as they do a tape: too few to tell, enough to ask about the line of one. Where a short stretch
 * shows only that its lines are divided no other way, the numbers must have more digits.
 */
function isPair({ row, progression: rise }: FoundProgression, pattern: TickPattern): boolean {
  const { distinct, total, second, digits } = rise;
  const ticks = Math.round(rise.subdivisions);
  const { valid, subdivisions: fold, zoneMiddle } = pattern;
  const isAlone = distinct === 2 && second === 0 && distinct >= MOSTLY * total;
  const isProven = valid && ticks === fold;
  const mayBe = fold >= TELLING_PATTERN && ticks % fold === 0 && rise.step === 1;
  const isDivided = (isProven && digits >= DIGITS_OF_TWO) || (mayBe && digits >= DIGITS_UNPROVEN);
  return isAlone && isDivided && Math.abs(row.across - zoneMiddle) < PAIR_BESIDE * ticks;
}

function furthest(found: readonly FoundProgression[]): NoClaim {
  return found
    .map(
      ({ progression: p }): NoClaim =>
        p.distinct < WORD_NUMBERS_FEWEST ? 'few-numbers' : 'numbers-disagree',
    )
    .reduce(laterReason);
}

/** A regular row of like digits nearer to the lines that couldn't be read: the read one may be another scale's. */
function hasNearerRow(
  { rows }: NumberRows,
  best: FoundProgression,
  found: readonly FoundProgression[],
  pattern: TickPattern,
): boolean {
  const away = (row: NumberRow) => Math.abs(row.across - pattern.zoneMiddle);
  return rows.some((row) => {
    if (row === best.row || row.turned !== best.row.turned) return false;
    if (!row.turned && !looksLikeNumbers(row)) return false;
    const { height } = best.row;
    const like = row.height > LIKE_DIGITS.least * height && row.height < LIKE_DIGITS.most * height;
    const regular = row.cells.length >= REGULAR_ROW && (row.regularity ?? 0) > REGULAR;
    if (!like || !regular || away(row) >= NEARER * away(best.row)) return false;
    return !found.some((one) => one.row === row && isClear(one.progression));
  });
}
