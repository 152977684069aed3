import { toFrame } from '../frame/frame.ts';
import { densityAt, distanceAt } from '../pitch/position.ts';
import type { PlacedNumber } from './claim.ts';
import type { ClaimOfRow } from './claimed-row.ts';
import { doubtsOf } from './doubts.ts';
import { CLEARLY_NEARER, SAME_PRINT, SHARED_PRINT_ENOUGH } from './limits.ts';

/**
 * Numbers belong to the nearest row of lines: a claim that rests on numbers printed for another
 * row is no claim.
 */
export function ownNumbersOnly(rows: readonly ClaimOfRow[]): ClaimOfRow[] {
  return rows.filter((one) => !rows.some((other) => other !== one && borrows(one, other)));
}

/** A claim that doubts itself says nothing where one without doubts read most of its numbers, and the same. */
export function withoutEclipsed(
  rows: readonly ClaimOfRow[],
  which: (row: ClaimOfRow) => boolean,
): ClaimOfRow[] {
  const sure = rows.filter(({ claim }) => doubtsOf(claim).size === 0);
  return rows.filter(
    (one) => sure.includes(one) || !which(one) || !sure.some((other) => eclipses(other, one)),
  );
}

function eclipses(sure: ClaimOfRow, one: ClaimOfRow): boolean {
  const { agreeing, unit } = one.claim;
  const alike = samePrint(one, sure).filter(([own, other]) => own.value === other.value);
  const enough =
    sure.claim.counted || sure.claim.agreeing.length >= SHARED_PRINT_ENOUGH * agreeing.length;
  return enough && unit === sure.claim.unit && alike.length > 0.5 * agreeing.length;
}

/** The numbers that both claims rest on, as each of them has them. */
export function samePrint(
  one: ClaimOfRow,
  other: ClaimOfRow,
): [own: PlacedNumber, other: PlacedNumber][] {
  const near = SAME_PRINT * heightPx(one);
  return one.claim.agreeing.flatMap((number) => {
    const same = other.claim.agreeing.find(
      ({ at: [x, y] }) => Math.hypot(x - number.at[0], y - number.at[1]) < near,
    );
    return same ? [[number, same] as [PlacedNumber, PlacedNumber]] : [];
  });
}

function borrows(one: ClaimOfRow, other: ClaimOfRow): boolean {
  if (one.claim.counted) return false;
  const shared = samePrint(one, other).map(([number]) => number);
  const some = shared[shared.length >> 1];
  if (!some || shared.length < 0.5 * one.claim.agreeing.length) return false;
  const away = ({ row }: ClaimOfRow) => Math.abs(toFrame(row.frame, some.at)[1]);
  return away(other) < CLEARLY_NEARER * away(one);
}

function heightPx({ row, claim }: ClaimOfRow): number {
  const { model } = row.pitch;
  const pitch = 1 / densityAt(model, distanceAt(model, claim.agreeing[0]?.tick ?? 0));
  return claim.digitShare * claim.ticksPerNumber * Math.abs(pitch);
}
