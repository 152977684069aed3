import type { ReadRows } from '../characters/read-cells.ts';
import { type Claim, isSparse, laterReason, type NoClaim } from '../claims/claim.ts';
import type { ClaimOfRow } from '../claims/claimed-row.ts';
import type { RowFrame } from '../frame/frame.ts';
import type { FollowedRow } from '../graduations/followed-row.ts';
import { type TickRange, trustedRange } from '../graduations/sheet.ts';
import type { Field } from '../picture/field.ts';
import { centred } from '../picture/space.ts';
import { alongAt, fromCentre } from '../pitch/along.ts';
import { finerRows } from '../pitch/finer-row.ts';
import { pitchSeeds } from '../pitch/pitch-seeds.ts';
import { pitchBySpectra, type RowPitch } from '../pitch/pitch-spectrum.ts';
import { densityAt } from '../pitch/position.ts';
import { type Refined, refine } from '../pitch/refine.ts';
import { LEAST_PRESENCE, LEAST_SCORE, SAME_PITCH, SEEDS, WORD_READINGS } from './limits.ts';
import { ownLinesOf } from './own-lines.ts';
import { claimed, polarities, readFreely, readStrictly } from './read-stretch.ts';
import type { bendFollower } from './round-bends.ts';

/** A row with what its numbers say, or why they say nothing. */
export interface RowReading {
  readonly row?: FollowedRow;
  readonly claim?: Claim;
  readonly why: NoClaim | 'no-graduations';
}

/** What all rows of a picture share. */
export interface Means {
  readonly readRows: ReadRows;
  /** Whether one more reading of words may be paid for, straight on or round a bend. */
  readonly mayReadWords: (isBent: boolean) => boolean;
  /** A row that goes on round a bend. */
  readonly roundBend: ReturnType<typeof bendFollower>;
}

/**
 * Reads one candidate row: pitches by spectra first, then from seeds. One that runs between two
 * lengths of tape is read again on the lines of that whose numbers were read.
 */
export async function readRow(
  work: Field<'measuring'>,
  frame: RowFrame<'measuring'>,
  means: Means,
): Promise<RowReading> {
  const read = (starts: Iterable<Refined>) => readStarts(work, starts, means);
  const ownLines = ({ row, claim }: RowReading) => row && claim && ownLinesOf(work, row, claim);
  const found = await read(guesses(work, frame));
  const own = ownLines(found);
  if (!own) return found;
  const again = await read([own]);
  if (again.claim && !ownLines(again)) return again;
  return found.row ? { row: found.row, why: 'numbers-disagree' } : found;
}

/**
 * Reads a row from the first start that leads to numbers; dark print and light, by the pattern of
 * its lines where that is a tape's, and by its numbers alone where not.
 */
async function readStarts(
  work: Field<'measuring'>,
  starts: Iterable<Refined>,
  { readRows, mayReadWords, roundBend }: Means,
): Promise<RowReading> {
  const tried: Tried[] = [];
  let seen: FollowedRow | undefined;
  let sparse: ClaimOfRow | undefined;
  let why: RowReading['why'] = 'no-graduations';
  let words = 0;
  for (const { frame: start, pitch: guess } of starts) {
    if (guess.followed && tried.some((one) => sameStretch(one, guess))) continue;
    const refined = refine(work, start, guess);
    const range = trustedRange(refined.pitch);
    if (!range) continue;
    tried.push({ pitch: refined.pitch, range });
    for (const row of followedRows(work, refined, range, roundBend)) {
      if (row.pattern.presence < LEAST_PRESENCE && !row.pattern.valid) continue;
      seen = clearer(seen, row);
      const strict = row.pattern.valid ? await readStrictly(work, row, readRows) : undefined;
      if (strict?.ok) return { ...claimed(work, row, strict.claim), why: 'no-numbers' };
      if (strict) why = later(why, strict.why);
      const isBent = row.pitch.followed?.leanOff !== undefined;
      if (!isBent && ++words > WORD_READINGS) continue;
      if (!mayReadWords(isBent)) continue;
      const free = await readFreely(work, row, readRows);
      if (free.ok) {
        const found = claimed(work, row, free.claim);
        const more = found.claim.agreeing.length >= (sparse?.claim.agreeing.length ?? 0);
        if (!isSparse(found.claim) && more) return { ...found, why: 'no-numbers' };
        sparse ??= found;
        continue;
      }
      why = later(why, free.why);
    }
  }
  if (sparse) return { ...sparse, why: 'no-numbers' };
  return seen ? { row: seen, why } : { why };
}

/** The rows of both polarities, straight on; then, where the tape goes on round a bend, along that. */
function* followedRows(
  work: Field<'measuring'>,
  { frame, pitch }: Refined,
  range: TickRange,
  roundBend: Means['roundBend'],
): Generator<FollowedRow> {
  const straight = polarities(work, frame, pitch, range);
  yield* straight;
  const bent = straight[0] && roundBend(straight[0]);
  if (!bent) return;
  const refined = refine(work, bent.frame, bent.pitch);
  const farther = trustedRange(refined.pitch);
  if (farther) yield* polarities(work, refined.frame, refined.pitch, farther);
}

interface Tried {
  readonly pitch: RowPitch;
  readonly range: TickRange;
}

/** Pitches to try on a row, the likeliest first; made only as they are asked for. */
function* guesses(work: Field<'measuring'>, frame: RowFrame<'measuring'>): Generator<Refined> {
  const found = pitchBySpectra(work, frame);
  const clear = found !== null && found.score >= LEAST_SCORE;
  if (clear) {
    yield { frame, pitch: found };
    yield* finerRows(work, frame, 1 / densityAt(found.model, centred(0)));
  }
  for (const pitch of pitchSeeds(work, frame, SEEDS)) yield { frame, pitch };
}

/** A seed in a stretch that was already followed with the same pitch tells nothing new. */
function sameStretch({ pitch, range }: Tried, seed: RowPitch): boolean {
  const { model } = pitch;
  const low = alongAt(pitch, range[0]);
  const high = alongAt(pitch, range[1]);
  if (seed.centre < low || seed.centre > high) return false;
  const ratio =
    densityAt(model, fromCentre(pitch, seed.centre)) / densityAt(seed.model, centred(0));
  return Math.abs(Math.log(ratio)) < SAME_PITCH;
}

function clearer(seen: FollowedRow | undefined, row: FollowedRow): FollowedRow {
  if (!seen) return row;
  return row.pattern.valid && !seen.pattern.valid ? row : seen;
}

function later(one: RowReading['why'], other: NoClaim): RowReading['why'] {
  return one === 'no-graduations' ? other : laterReason(one, other);
}
