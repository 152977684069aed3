import type { FollowedRow } from '../graduations/followed-row.ts';
import { mmPerUnit } from '../graduations/tape-unit.ts';
import { tooFarForTenths } from '../numbering/unit.ts';
import { alongAt, fromCentre } from '../pitch/along.ts';
import { densityAt } from '../pitch/position.ts';
import { type Claim, type Doubt, isSparse } from './claim.ts';
import type { ClaimOfRow } from './claimed-row.ts';
import { type Comparison, comparisons } from './comparisons.ts';
import { doubtsOf } from './doubts.ts';
import { joinSameLines } from './join-claims.ts';
import {
  END_LINES,
  FEWEST_TO_SAY,
  INCHES_TO_A_FOOT,
  LIKE_SIZE,
  MANY_NUMBERS,
  MOST_LEAN,
  MOST_LEAN_BORNE,
  MOST_LEAN_UNSHOWN,
  OTHER_EDGE_MM,
  OTHER_SIZE,
  RECONCILE_END_TICKS,
  RECONCILE_SAME_SIZE,
  SAME_LINES_TICKS,
  SAME_MM,
  SHARED_PRINT_ENOUGH,
  SHOWS_LEAN,
  WHOLE_NUMBERS,
} from './limits.ts';
import { millimetresByOtherEdge, tenthsByOtherEdge } from './other-edge.ts';
import { ownNumbersOnly, samePrint, withoutEclipsed } from './shared-print.ts';

/** A row that was followed, and what its numbers claim, if anything. */
export interface ClaimedRow {
  readonly row: FollowedRow;
  readonly claim?: Claim;
}

/** A claim with all that is doubtful about it. */
export interface DoubtedClaim extends ClaimOfRow {
  readonly doubts: Set<Doubt>;
}

/**
 * Weighs the claims of one picture against each other: two scales of one tape confirm each
 * other's unit by the 25.4 between them, and which line is which by one zero; two readings of
 * the same lines, or of one unit on one tape, that differ can't both be right.
 */
export function reconcileClaims(rows: readonly ClaimedRow[]): DoubtedClaim[] {
  const followed = rows.map(({ row }) => row);
  const claims = rows.flatMap(({ row, claim }) =>
    claim ? [{ row, claim: byOtherEdge(row, claim, followed) }] : [],
  );
  const own = ownNumbersOnly(withoutEclipsed(claims, ({ claim }) => isSparse(claim)));
  const apart = joinSameLines(withoutEclipsed(own, () => true)).map(
    (one): Weighed => ({ ...one, settled: new Set(), raised: new Set() }),
  );
  for (const [index, one] of apart.entries()) {
    for (const other of apart.slice(index + 1)) weigh(one, other);
  }
  return apart.map((one) => ({ row: one.row, claim: one.claim, doubts: remainingDoubts(one) }));
}

/** The 25.4 between its lines and those of the other edge settles what a claim counts, or how far it goes. */
function byOtherEdge(row: FollowedRow, claim: Claim, followed: readonly FollowedRow[]): Claim {
  const tenLines = claim.unit === 'cm' && claim.step === 1 && claim.ticksPerNumber === 10;
  if (!tenLines || !claim.doubts.has('unit')) return claim;
  const doubts = new Set([...claim.doubts].filter((doubt) => doubt !== 'unit'));
  if (millimetresByOtherEdge(row, followed)) return { ...claim, doubts };
  if (tenthsByOtherEdge(row, followed))
    return { ...claim, unit: 'inch', mmPerTick: mmPerUnit.inch / 10, doubts };
  const { zoneFrom, zoneTo } = claim.pattern;
  const values = claim.agreeing.map(({ value }) => value);
  return tooFarForTenths(values, zoneTo - zoneFrom) ? { ...claim, doubts } : claim;
}

/** What is doubtful about a claim by itself, less what the others settled, plus what they raised. */
function remainingDoubts({ row, claim, settled, raised }: Weighed): Set<Doubt> {
  const doubts = doubtsOf(claim);
  if (mayCountFromAFoot(claim, row)) doubts.add('line');
  const own = [...doubts].filter((doubt) => !settled.has(doubt));
  const leaning: Doubt[] = leansFar(row) && !bearsLean(row, claim, own) ? ['line'] : [];
  return new Set([...own, ...raised, ...leaning]);
}

/**
 * More than a tape's lines do. At a slant they fan out towards the ends of their row, but only lines that
 * are long enough show that they do: shorter ones were laid askew, and look short for it.
 */
function leansFar({ frame, pitch, pattern, range }: FollowedRow): boolean {
  if (Math.abs(frame.shear) > MOST_LEAN) return true;
  if (pattern.zoneTo - pattern.zoneFrom > SHOWS_LEAN) return false;
  return range.some((tick) => {
    const lean = frame.shear + frame.shearRate * alongAt(pitch, tick);
    return Math.abs(lean) > MOST_LEAN_UNSHOWN;
  });
}

/** So many numbers, each with its long line where the pattern has one, are on no row that runs across a tape. */
function bearsLean({ frame }: FollowedRow, claim: Claim, doubts: readonly Doubt[]): boolean {
  const { agreeing, contrary, pattern, ticksPerNumber, placing } = claim;
  return (
    Math.abs(frame.shear) < MOST_LEAN_BORNE &&
    new Set(agreeing.map(({ value }) => value)).size >= MANY_NUMBERS &&
    contrary.length === 0 &&
    doubts.length === 0 &&
    placing !== 'unsure' &&
    pattern.valid &&
    pattern.subdivisions === ticksPerNumber
  );
}

/** Inches below twelve are the same on every foot of some tapes, unless the tape begins with them. */
function mayCountFromAFoot(claim: Claim, { range, lines, pitch }: FollowedRow): boolean {
  const [from, to] = lines ?? range;
  const { unit, agreeing, anchorTick, anchorValue, direction, mmPerTick } = claim;
  if (unit !== 'inch' || agreeing.some(({ value }) => value >= INCHES_TO_A_FOOT)) return false;
  const zeroTick = anchorTick - (direction * anchorValue * mmPerUnit.inch) / mmPerTick;
  const near = lines ? END_LINES : RECONCILE_END_TICKS;
  if (Math.abs(zeroTick - (direction > 0 ? from : to)) > near) return true;
  // Lines that end where the picture does may go on outside it.
  const u = alongAt(pitch, zeroTick);
  const edge = (RECONCILE_END_TICKS + 1) / Math.abs(densityAt(pitch.model, fromCentre(pitch, u)));
  return u - pitch.from < edge || pitch.to - u < edge;
}

interface Weighed extends ClaimOfRow {
  readonly settled: Set<Doubt>;
  readonly raised: Set<Doubt>;
}

function weigh(one: Weighed, other: Weighed): void {
  const places = comparisons(one, other);
  const pair = places[places.length >> 1];
  if (!pair) return;
  const sameLines = places.filter(
    ({ apartTicks, apartMm, within }) =>
      within && apartTicks < SAME_LINES_TICKS && apartMm < OTHER_EDGE_MM,
  );
  if (sameLines.some(({ differsMm }) => differsMm > 2)) {
    contradict(one, other, 'line');
    return;
  }
  const size = Math.abs(Math.log(pair.sizeRatio));
  if (!pair.parallel) {
    // Rows that cross the same lines at a slant, or follow a bend; apart from each other they are two tapes.
    if (sameLines.some(({ differsMm }) => differsMm > SAME_MM)) contradict(one, other, 'line');
    // A millimetre is as large on the one as on the other all the same.
    else if (pair.converging && size < LIKE_SIZE) confirmUnits(one, other);
  } else if (size > OTHER_SIZE) contradict(one, other, 'unit');
  else {
    if (size < LIKE_SIZE) confirmUnits(one, other);
    if (size < RECONCILE_SAME_SIZE && pair.sameWay) weighLines(one, other, pair);
  }
}

function isInchesBesideMetric(one: Weighed, other: Weighed): boolean {
  return (one.claim.unit === 'inch') !== (other.claim.unit === 'inch');
}

/** Two scales of one tape show a millimetre equally large: what each counts may settle the other's unit. */
function confirmUnits(one: Weighed, other: Weighed): void {
  // Only inches beside centimetres show the 25.4: two edges misread alike agree just as well.
  const proven = isInchesBesideMetric(one, other);
  // Half millimetres leave no doubt what tens count, and so what those along the other edge do.
  const metric = one.claim.unit === other.claim.unit;
  const tells = (teller: Claim, asked: Claim) =>
    proven || (metric && countsHalves(teller)) || tellsTens(teller, asked);
  if (tells(one.claim, other.claim)) other.settled.add('unit');
  if (tells(other.claim, one.claim)) one.settled.add('unit');
}

/** Lines that stand as near as the millimetres of sure centimetres are no stake's: tens among them are millimetres. */
function tellsTens(teller: Claim, { unit, step }: Claim): boolean {
  return teller.unit === 'cm' && !teller.doubts.has('unit') && unit === 'mm' && step === 10;
}

/** Two scales of one tape that run the same way: one zero settles which line is which. */
function weighLines(one: Weighed, other: Weighed, pair: Comparison): void {
  if (pair.differsMm < SAME_MM && isInchesBesideMetric(one, other)) {
    for (const side of [one, other]) if (hasNumbersEnough(side.claim)) side.settled.add('line');
  } else if (one.claim.unit === other.claim.unit && isWholeNumbers(pair.differsMm, one.claim)) {
    if (!readForThemselves(one, other)) contradict(one, other, 'line');
  }
}

function readForThemselves(one: Weighed, other: Weighed): boolean {
  const many = [one, other].every(({ claim }) => claim.agreeing.length >= MANY_NUMBERS);
  return many && samePrint(one, other).length === 0;
}

/** Tens whose own lines leave no doubt of their unit: they have half millimetres. */
function countsHalves({ unit, step, doubts }: Claim): boolean {
  return unit === 'mm' && step === 10 && !doubts.has('unit');
}

/** Enough numbers to say something, though not by themselves which line is meant. */
function hasNumbersEnough({ agreeing, contrary }: Claim): boolean {
  return agreeing.length >= FEWEST_TO_SAY && contrary.length < 0.5 * agreeing.length;
}

/** Off by whole numbered intervals: one of the two has its numbers on the wrong lines. */
function isWholeNumbers(mm: number, { mmPerTick, ticksPerNumber }: Claim): boolean {
  const numbers = mm / (mmPerTick * ticksPerNumber);
  return mm > SAME_MM && Math.abs(numbers - Math.round(numbers)) < WHOLE_NUMBERS;
}

/** The far better supported of two stands; two of like support are both doubted. */
function contradict(one: Weighed, other: Weighed, doubt: Doubt): void {
  const isSure = ({ claim }: Weighed) => doubtsOf(claim).size === 0;
  const [weak, strong] = [one, other].sort(
    (a, b) =>
      Number(isSure(a)) - Number(isSure(b)) || a.claim.agreeing.length - b.claim.agreeing.length,
  ) as [Weighed, Weighed];
  weak.raised.add(doubt);
  // What doubts itself is no witness against what doesn't, unless it has read far more.
  if (
    !isSure(weak) &&
    isSure(strong) &&
    weak.claim.agreeing.length * SHARED_PRINT_ENOUGH <= strong.claim.agreeing.length
  )
    return;
  if (strong.claim.agreeing.length < 2 * weak.claim.agreeing.length) strong.raised.add(doubt);
}
