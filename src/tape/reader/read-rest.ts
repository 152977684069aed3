import type { ReadRows } from '../characters/read-cells.ts';
import type { PlacedNumber } from '../claims/claim.ts';
import type { ClaimOfRow } from '../claims/claimed-row.ts';
import { mmAt } from '../claims/comparisons.ts';
import { doubtsOf } from '../claims/doubts.ts';
import { extent, toFrame, toImage } from '../frame/frame.ts';
import type { FollowedRow } from '../graduations/followed-row.ts';
import { trustedRange } from '../graduations/sheet.ts';
import { mmPerUnit } from '../graduations/tape-unit.ts';
import type { Field } from '../picture/field.ts';
import { type AlongRow, alongRow, type Place } from '../picture/space.ts';
import { alongAt, fromCentre, tickAlong } from '../pitch/along.ts';
import { pitchSeeds } from '../pitch/pitch-seeds.ts';
import { densityAt } from '../pitch/position.ts';
import { refine } from '../pitch/refine.ts';
import { FORETOLD, LEAST_ROOM, LIKE_PITCH, MOSTLY_NEW } from './limits.ts';
import { claimed, polarities, readFreely, readStrictly } from './read-stretch.ts';

/**
 * Reads the same lines again beyond what hides them: past fingers, pins or a fold a row goes on
 * with numbers of its own, though no one can tell how many lines lie between.
 */
export async function readRest(
  work: Field<'measuring'>,
  known: ClaimOfRow,
  readRows: ReadRows,
  mayReadWords: () => boolean,
): Promise<ClaimOfRow[]> {
  const rest: ClaimOfRow[] = [];
  for (const side of [-1, 1] as const) {
    const found = await readBeyond(work, known.row, side, readRows, mayReadWords);
    if (found) rest.push(withForetelling(known, found));
  }
  return rest;
}

/** A few numbers are enough where the lines before the gap, themselves in no doubt, go on to the same. */
function withForetelling(known: ClaimOfRow, rest: ClaimOfRow): ClaimOfRow {
  const { claim, row } = known;
  if (claim.unit !== rest.claim.unit || doubtsOf(claim).size > 0) return rest;
  const mm = mmPerUnit[claim.unit];
  const foretold = rest.claim.agreeing.every((number) => {
    const [u] = toFrame(row.frame, placeOn(rest, number));
    const tick = tickAlong(row.pitch, u);
    return Math.abs(mmAt(claim, tick) - number.value * mm) < FORETOLD * claim.step * mm;
  });
  return foretold ? { ...rest, claim: { ...rest.claim, foretold } } : rest;
}

/** Where the line of a number stands in the picture, by the row that it was read on. */
function placeOn({ row, claim }: ClaimOfRow, { value }: PlacedNumber): Place<'measuring'> {
  const ticks =
    (claim.direction * (value - claim.anchorValue)) / (claim.step / claim.ticksPerNumber);
  return toImage(row.frame, alongAt(row.pitch, claim.anchorTick + ticks), 0);
}

async function readBeyond(
  work: Field<'measuring'>,
  known: FollowedRow,
  side: -1 | 1,
  readRows: ReadRows,
  mayReadWords: () => boolean,
): Promise<ClaimOfRow | undefined> {
  const { frame, pitch } = known;
  const end = placeOf(known, side);
  const [first, last] = extent(frame, work);
  const due = (u: AlongRow<'measuring'>) => 1 / densityAt(pitch.model, fromCentre(pitch, u));
  const room = side > 0 ? last - end : end - first;
  if (!(room > LEAST_ROOM * Math.abs(due(end)))) return undefined;
  const isLikely = (u: AlongRow<'measuring'>, px: number) =>
    side * (u - end) > 0 && Math.abs(Math.log(px / due(u))) < LIKE_PITCH;
  const [seed] = pitchSeeds(work, frame, 1, isLikely);
  if (!seed) return undefined;
  const refined = refine(work, frame, seed);
  const range = trustedRange(refined.pitch);
  if (!range) return undefined;
  const rows = polarities(work, refined.frame, refined.pitch, range);
  for (const row of rows.filter((one) => one.pitch.ink === pitch.ink && isNew(one, end, side))) {
    const strict = row.pattern.valid ? await readStrictly(work, row, readRows) : undefined;
    if (strict?.ok) return claimed(work, row, strict.claim);
    if (!mayReadWords()) return undefined;
    const free = await readFreely(work, row, readRows);
    if (free.ok) return claimed(work, row, free.claim);
  }
  return undefined;
}

/** Px along the row of its last graduation on one side. */
function placeOf({ pitch, range: [from, to] }: FollowedRow, side: -1 | 1): AlongRow<'measuring'> {
  const places = [from, to].map((tick) => alongAt(pitch, tick));
  return alongRow(side > 0 ? Math.max(...places) : Math.min(...places));
}

function isNew(row: FollowedRow, end: number, side: -1 | 1): boolean {
  const [low, high] = [placeOf(row, -1), placeOf(row, 1)];
  const beyond = side > 0 ? high - Math.max(low, end) : Math.min(high, end) - low;
  return beyond > MOSTLY_NEW * (high - low);
}
