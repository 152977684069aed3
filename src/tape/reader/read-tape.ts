import { pageReader } from '../characters/read-cells.ts';
import type { ReadPage } from '../characters/read-page.ts';
import { laterReason, type NoClaim } from '../claims/claim.ts';
import { type ClaimedRow, reconcileClaims } from '../claims/reconcile.ts';
import { tiltOf } from '../claims/tilt.ts';
import { type RowFrame, rowFrame, scaledFrame, toFrame, toImage } from '../frame/frame.ts';
import type { FollowedRow } from '../graduations/followed-row.ts';
import type { GreyImage } from '../picture/grey-image.ts';
import { alongRow, placeIn } from '../picture/space.ts';
import { alongAt } from '../pitch/along.ts';
import { candidateRows } from '../rows/candidate-rows.ts';
import { fitRow } from '../rows/row-fit.ts';
import { questionFor } from '../scales/question.ts';
import { placeOn, type ReadScale } from '../scales/scale.ts';
import { geometryOf, scaleOf } from '../scales/scale-of.ts';
import type { CannotReason, TapeReading } from '../scales/tape-reading.ts';
import { type Copies, copiesOf } from './copies.ts';
import {
  CANDIDATES,
  CHECKED_AT,
  ENOUGH_READ,
  LEAST_PX,
  MOST_ROWS,
  MOST_ROWS_AFTER_ONE,
  MOST_WORD_READINGS,
  SAME_LINES_MM,
  SAME_ROW_PX,
  WEAK_CANDIDATE,
  WEAK_FROM,
} from './limits.ts';
import { readRest } from './read-rest.ts';
import { readRow } from './read-row.ts';

/**
 * Finds the printed scales in a picture and reads their numbers.
 *
 * @param image upright and grey.
 * @param readPage the character reader; what it throws is passed on.
 * @param onProgress called with the share done, from 0 to 1, now and then.
 */
export async function readTape(
  image: GreyImage,
  readPage: ReadPage,
  onProgress: (done: number) => void = () => {},
): Promise<TapeReading> {
  const { width, height } = image;
  if (Math.max(width, height) < LEAST_PX) {
    return { width, height, outcome: 'cannot', reason: 'too-small', scales: [] };
  }
  const copies = copiesOf(image);
  const found = await readRows(copies, readPage, onProgress);
  onProgress(1);
  const claims = reconcileClaims(found.read);
  const scales = claims
    .map(({ row, claim, doubts }) =>
      scaleOf(copies.measuring, row, claim, doubts, copies.toPicture),
    )
    .filter((scale): scale is ReadScale => scale !== undefined)
    .sort(
      (one, other) =>
        Number(other.sure) - Number(one.sure) || other.numbers.length - one.numbers.length,
    );
  if (scales.length === 0) {
    return { width, height, outcome: 'cannot', reason: found.why, scales: [] };
  }
  const unread = found.read.flatMap(({ row, claim }) =>
    claim || scales.some((scale) => sameLines(copies, row, scale))
      ? []
      : [geometryOf(row, row.pattern.zoneMiddle, copies.toPicture)],
  );
  const tilt = tiltOf(claims, copies.measuring);
  const tiltDegrees = tilt === undefined ? {} : { tiltDegrees: tilt };
  if (scales.some(({ sure }) => sure))
    return { width, height, outcome: 'read', scales, unread, ...tiltDegrees };
  return {
    width,
    height,
    outcome: 'ask',
    question: questionFor(scales),
    scales,
    unread,
    ...tiltDegrees,
  };
}

interface FoundRows {
  readonly read: readonly ClaimedRow[];
  readonly why: CannotReason;
}

async function readRows(
  { search: small, measuring: work, toMeasuring }: Copies,
  readPage: ReadPage,
  onProgress: (done: number) => void,
): Promise<FoundRows> {
  const candidates = candidateRows(small, CANDIDATES);
  const best = candidates[0]?.score ?? 0;
  const { readRows: read } = pageReader(readPage);
  const frames: RowFrame<'measuring'>[] = [];
  const claimed: ClaimedRow[] = [];
  let why: CannotReason = 'no-tape';
  let [words, got] = [0, 0];
  for (const candidate of candidates) {
    if (frames.length >= WEAK_FROM && candidate.score < WEAK_CANDIDATE * best) break;
    const fitted = fitRow(small, startOf(candidate));
    if (!fitted) continue;
    const frame = scaledFrame(fitted, toMeasuring);
    if (frames.some((other) => sameRow(other, frame))) continue;
    frames.push(frame);
    onProgress(frames.length / (MOST_ROWS + 1));
    const mayReadWords = () => ++words <= MOST_WORD_READINGS;
    const result = await readRow(work, frame, read, mayReadWords);
    if (result.row && result.claim) {
      got++;
      const known = { row: result.row, claim: result.claim };
      claimed.push(known, ...(await readRest(work, known, read, mayReadWords)));
    } else {
      why = furtherReason(why, result.why);
      if (result.row) claimed.push({ row: result.row });
    }
    if (got >= ENOUGH_READ || frames.length >= (got > 0 ? MOST_ROWS_AFTER_ONE : MOST_ROWS)) break;
  }
  return { read: claimed, why };
}

/** Whether an unread row runs over the lines of a scale that was read. */
function sameLines({ toPicture }: Copies, row: FollowedRow, scale: ReadScale): boolean {
  const [from, to] = row.range;
  const [x, y] = toImage(row.frame, alongAt(row.pitch, (from + to) / 2), 0);
  const place = placeOn(scale.geometry, { x: x * toPicture, y: y * toPicture });
  return (place.away / Math.abs(place.pitch)) * scale.mmPerTick < SAME_LINES_MM;
}

function startOf({ angle, offset, centreX, centreY }: ReturnType<typeof candidateRows>[number]) {
  const [right, down] = [-Math.sin(angle) * offset, Math.cos(angle) * offset];
  return rowFrame(placeIn<'search'>(centreX + right, centreY + down), angle);
}

function sameRow(one: RowFrame<'measuring'>, other: RowFrame<'measuring'>): boolean {
  return CHECKED_AT.every(
    (u) => Math.abs(toFrame(one, toImage(other, alongRow(u), 0))[1]) < SAME_ROW_PX,
  );
}

function furtherReason(one: CannotReason, other: NoClaim | 'no-graduations'): CannotReason {
  if (one === 'no-tape' || one === 'no-graduations') return other;
  return other === 'no-graduations' ? one : laterReason(one as NoClaim, other);
}
