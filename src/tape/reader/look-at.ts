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
import { placeOn, type ReadScale, type ScaleGeometry } from '../scales/scale.ts';
import { geometryOf, scaleOf } from '../scales/scale-of.ts';
import type { CannotReason } from '../scales/tape-reading.ts';
import { type Copies, copiesOf } from './copies.ts';
import {
  CANDIDATES,
  CHECKED_AT,
  CONTESTED,
  ENOUGH_READ,
  MOST_BEND_READINGS,
  MOST_ROWS,
  MOST_ROWS_AFTER_ONE,
  MOST_WORD_READINGS,
  SAME_LINES_MM,
  SAME_ROW_PX,
  WEAK_CANDIDATE,
  WEAK_FROM,
  WINDOW_BEND_READINGS,
  WINDOW_ROWS,
  WINDOW_WORD_READINGS,
} from './limits.ts';
import { readRest } from './read-rest.ts';
import { readRow } from './read-row.ts';
import { bendFollower } from './round-bends.ts';

/** What was found in a picture or in a window of it. */
export interface Found {
  readonly scales: readonly ReadScale[];
  /** Those of them that too many numbers speak against for others to name them. */
  readonly contested: ReadonlySet<ReadScale>;
  readonly unread: readonly ScaleGeometry[];
  readonly tilt: number | undefined;
  readonly why: CannotReason;
}

/** How much of a picture is looked at before it is given up. */
interface Patience {
  readonly rows: number;
  readonly rowsAfterOne: number;
  readonly words: number;
  readonly bends: number;
}

/** For a whole picture. */
export const WHOLE: Patience = {
  rows: MOST_ROWS,
  rowsAfterOne: MOST_ROWS_AFTER_ONE,
  words: MOST_WORD_READINGS,
  bends: MOST_BEND_READINGS,
};
/** For a window. */
export const IN_WINDOW: Patience = {
  rows: WINDOW_ROWS,
  rowsAfterOne: WINDOW_ROWS,
  words: WINDOW_WORD_READINGS,
  bends: WINDOW_BEND_READINGS,
};

/** The scales of a picture, looked at as a whole. */
export async function lookAt(
  image: GreyImage,
  patience: Patience,
  readPage: ReadPage,
  onProgress: (done: number) => void,
): Promise<Found> {
  const copies = copiesOf(image);
  const found = await readRows(copies, patience, readPage, onProgress);
  const claims = reconcileClaims(found.read);
  const contested = new Set<ReadScale>();
  const scales = claims
    .flatMap(({ row, claim, doubts }) => {
      const scale = scaleOf(copies.measuring, row, claim, doubts, copies.toPicture);
      if (scale && claim.contrary.length > CONTESTED * claim.agreeing.length) contested.add(scale);
      return scale ? [scale] : [];
    })
    .sort(
      (one, other) =>
        Number(other.sure) - Number(one.sure) || other.numbers.length - one.numbers.length,
    );
  const unread = found.read.flatMap(({ row, claim }) =>
    claim || scales.some((scale) => sameLines(copies, row, scale))
      ? []
      : [geometryOf(row, row.pattern.zoneMiddle, copies.toPicture)],
  );
  return { scales, contested, unread, tilt: tiltOf(claims, copies.measuring), why: found.why };
}

interface FoundRows {
  readonly read: readonly ClaimedRow[];
  readonly why: CannotReason;
}

async function readRows(
  { search: small, measuring: work, toMeasuring }: Copies,
  patience: Patience,
  readPage: ReadPage,
  onProgress: (done: number) => void,
): Promise<FoundRows> {
  const candidates = candidateRows(small, CANDIDATES);
  const best = candidates[0]?.score ?? 0;
  const { readRows: read } = pageReader(readPage);
  const frames: RowFrame<'measuring'>[] = [];
  const claimed: ClaimedRow[] = [];
  let why: CannotReason = 'no-tape';
  let [words, bends, got] = [0, 0, 0];
  const mayReadWords = (isBent: boolean) =>
    isBent ? ++bends <= patience.bends : ++words <= patience.words;
  const roundBend = bendFollower(work);
  for (const candidate of candidates) {
    if (frames.length >= WEAK_FROM && candidate.score < WEAK_CANDIDATE * best) break;
    const fitted = fitRow(small, startOf(candidate));
    if (!fitted) continue;
    const frame = scaledFrame(fitted, toMeasuring);
    if (frames.some((other) => sameRow(other, frame))) continue;
    frames.push(frame);
    onProgress(frames.length / (MOST_ROWS + 1));
    const result = await readRow(work, frame, { readRows: read, mayReadWords, roundBend });
    if (result.row && result.claim) {
      got++;
      const known = { row: result.row, claim: result.claim };
      claimed.push(known, ...(await readRest(work, known, read, () => mayReadWords(false))));
    } else {
      why = furtherReason(why, result.why);
      if (result.row) claimed.push({ row: result.row });
    }
    if (got >= ENOUGH_READ || frames.length >= (got > 0 ? patience.rowsAfterOne : patience.rows))
      break;
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
