import { pageReader } from '../characters/read-cells.ts';
import type { ReadPage } from '../characters/read-page.ts';
import { laterReason, type NoClaim } from '../claims/claim.ts';
import { agreeTogether, type ClaimedRow } from '../claims/reconcile.ts';
import { tiltOf } from '../claims/tilt.ts';
import { type RowFrame, rowFrame, scaledFrame, toFrame, toImage } from '../frame/frame.ts';
import type { FollowedRow } from '../graduations/followed-row.ts';
import type { Field } from '../picture/field.ts';
import { boxDown, doubled, fieldOf } from '../picture/field.ts';
import type { GreyImage } from '../picture/grey-image.ts';
import { distanceAt } from '../pitch/position.ts';
import { candidateRows } from '../rows/candidate-rows.ts';
import { fitRow } from '../rows/row-fit.ts';
import { questionFor } from '../scales/question.ts';
import { placeOn, type ReadScale } from '../scales/scale.ts';
import { geometryOf, scaleOf } from '../scales/scale-of.ts';
import type { CannotReason, TapeReading } from '../scales/tape-reading.ts';
import { readRest } from './read-rest.ts';
import { readRow } from './read-row.ts';

/** Long side of the copy rows are sought in, and of the one they are measured in, in px. */
const SEARCH_PX = 1300;
const MEASURE_PX = 2000;
/** A smaller picture is doubled, so that its strokes have room. */
const SMALL_PX = 1100;
/** Below this no printed digit is left. */
const LEAST_PX = 160;

const CANDIDATES = 14;
/** Rows followed: fewer once something was read. */
const MOST_ROWS = 9;
const MOST_ROWS_AFTER_ONE = 6;
const ENOUGH_READ = 3;
/** A candidate this much weaker than the best, after five were tried, is cloth. */
const WEAK_CANDIDATE = 0.06;
const WEAK_FROM = 5;
/** Px in the measured copy: rows nearer than this are one. */
const SAME_ROW_PX = 10;
/** Word readings a picture may cost. */
const MOST_WORD_READINGS = 11;

interface Copies {
  readonly small: Field;
  readonly work: Field;
  /** Px of `work` to one of `small`, and px of the picture to one of `work`. */
  readonly smallToWork: number;
  readonly workToPicture: number;
}

/**
 * Finds the printed scales in a picture and reads their numbers.
 *
 * @param image upright and grey.
 * @param readPage the character reader; what it throws is passed on.
 * @param onProgress told the share done, from 0 to 1, now and then.
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
  const claims = agreeTogether(found.read);
  const scales = claims
    .map(({ row, claim, doubts }) => scaleOf(copies.work, row, claim, doubts, copies.workToPicture))
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
      : [geometryOf(row, row.pattern.zoneMiddle, copies.workToPicture)],
  );
  const tilt = tiltOf(claims, copies.work);
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

function copiesOf(image: GreyImage): Copies {
  const plain = fieldOf(image);
  const enlarged = Math.max(image.width, image.height) < SMALL_PX;
  const source = enlarged ? doubled(plain) : plain;
  const long = Math.max(source.width, source.height);
  const small = Math.max(1, Math.round(long / SEARCH_PX));
  const work = Math.max(1, Math.floor(long / MEASURE_PX));
  const workField = boxDown(source, work);
  return {
    small: small === work ? workField : boxDown(source, small),
    work: workField,
    smallToWork: small / work,
    workToPicture: work / (enlarged ? 2 : 1),
  };
}

interface FoundRows {
  readonly read: readonly ClaimedRow[];
  readonly why: CannotReason;
}

async function readRows(
  { small, work, smallToWork }: Copies,
  readPage: ReadPage,
  onProgress: (done: number) => void,
): Promise<FoundRows> {
  const candidates = candidateRows(small, CANDIDATES);
  const best = candidates[0]?.score ?? 0;
  const { readRows: read } = pageReader(readPage);
  const frames: RowFrame[] = [];
  const claimed: ClaimedRow[] = [];
  let why: CannotReason = 'no-tape';
  let [words, got] = [0, 0];
  for (const candidate of candidates) {
    if (frames.length >= WEAK_FROM && candidate.score < WEAK_CANDIDATE * best) break;
    const fitted = fitRow(small, startOf(candidate));
    if (!fitted) continue;
    const frame = scaledFrame(fitted, smallToWork);
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

/** Long and short lines of one scale may be found as two rows; they stand less apart than two edges. */
const SAME_LINES_MM = 5;

/** Whether an unread row runs over the lines of a scale that was read. */
function sameLines({ workToPicture }: Copies, row: FollowedRow, scale: ReadScale): boolean {
  const [from, to] = row.range;
  const t = distanceAt(row.pitch.model, (from + to) / 2);
  const [x, y] = toImage(row.frame, t + row.pitch.centre, 0);
  const place = placeOn(scale.geometry, x * workToPicture, y * workToPicture);
  return (place.away / Math.abs(place.pitch)) * scale.mmPerTick < SAME_LINES_MM;
}

function startOf({ angle, offset, centreX, centreY }: ReturnType<typeof candidateRows>[number]) {
  const origin = [centreX - Math.sin(angle) * offset, centreY + Math.cos(angle) * offset] as const;
  return rowFrame(origin, angle);
}

/** Three places of a row, px apart along it: rows that agree there are the same. */
const CHECKED_AT = [-300, 0, 300];

function sameRow(one: RowFrame, other: RowFrame): boolean {
  return CHECKED_AT.every((u) => Math.abs(toFrame(one, ...toImage(other, u, 0))[1]) < SAME_ROW_PX);
}

function furtherReason(one: CannotReason, other: NoClaim | 'no-graduations'): CannotReason {
  if (one === 'no-tape' || one === 'no-graduations') return other;
  return other === 'no-graduations' ? one : laterReason(one as NoClaim, other);
}
