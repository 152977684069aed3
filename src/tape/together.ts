import { type Claim, type Doubt, isSparse, type PlacedNumber } from './claim.ts';
import { doubtsOf } from './doubts.ts';
import { toFrame, toImage } from './frame.ts';
import { millimetresByOtherEdge, tenthsByOtherEdge } from './other-edge.ts';
import { densityAt, distanceAt, graduationAt } from './position.ts';
import type { FollowedRow } from './read-row.ts';
import { mmPerUnit } from './reading.ts';

/** A row that was followed, and what its numbers claim, if anything. */
export interface ClaimedRow {
  readonly row: FollowedRow;
  readonly claim?: Claim;
}

/** A claim with all that is doubtful about it. */
export interface DoubtedClaim {
  readonly row: FollowedRow;
  readonly claim: Claim;
  readonly doubts: Set<Doubt>;
}

/** Rows farther apart than this are not on one tape. */
const ONE_TAPE_MM = 45;
const PARALLEL = 0.08;
/** Two scales of one tape show a millimetre equally large, up to this share. */
const SAME_SIZE = 0.025;
/** At a slant the nearer edge is larger; units differ by far more than this. */
const LIKE_SIZE = 0.06;
const OTHER_SIZE = 0.12;
/** Values that differ by less are one; by more, two. */
const SAME_MM = 0.8;
/** Rows nearer than this many graduations read the same lines. */
const SAME_LINES_TICKS = 9;

/**
 * Weighs the claims of one picture against each other: two scales of one tape confirm each
 * other's unit by the 25.4 between them, and which line is which by one zero; two readings of
 * the same lines, or of one unit on one tape, that differ can't both be right.
 */
export function agreeTogether(rows: readonly ClaimedRow[]): DoubtedClaim[] {
  const followed = rows.map(({ row }) => row);
  const claims = rows.flatMap(({ row, claim }) =>
    claim ? [{ row, claim: byOtherEdge(row, claim, followed) }] : [],
  );
  const own = ownNumbersOnly(withoutEclipsed(claims, ({ claim }) => isSparse(claim)));
  const apart = joinSameLines(withoutEclipsed(own, () => true));
  for (const [index, one] of apart.entries()) {
    for (const other of apart.slice(index + 1)) weigh(one, other);
  }
  return apart.map((one) => ({ ...one, doubts: standing(one) }));
}

/** The 25.4 between its lines and those of the other edge settles what a claim counts. */
function byOtherEdge(row: FollowedRow, claim: Claim, followed: readonly FollowedRow[]): Claim {
  const tenLines = claim.unit === 'cm' && claim.step === 1 && claim.ticksPerNumber === 10;
  if (!tenLines || !claim.doubts.has('unit')) return claim;
  const doubts = new Set([...claim.doubts].filter((doubt) => doubt !== 'unit'));
  if (millimetresByOtherEdge(row, followed)) return { ...claim, doubts };
  if (!tenthsByOtherEdge(row, followed)) return claim;
  return { ...claim, unit: 'inch', mmPerTick: mmPerUnit.inch / 10, doubts };
}

/** What is doubtful about a claim by itself, less what the others settled, plus what they raised. */
function standing({ row, claim, settled, raised }: Weighed): Set<Doubt> {
  const doubts = doubtsOf(claim);
  if (mayCountFromAFoot(claim, row)) doubts.add('line');
  const own = [...doubts].filter((doubt) => !settled.has(doubt));
  const leaning: Doubt[] = Math.abs(row.frame.shear) > MOST_LEAN ? ['line'] : [];
  return new Set([...own, ...raised, ...leaning]);
}

const INCHES_TO_A_FOOT = 12;
/** The first line may be cut off, or the followed stretch a line too long. */
const END_TICKS = 2;

/** Inches below twelve are the same on every foot of some tapes, unless the tape begins with them. */
function mayCountFromAFoot(claim: Claim, { range: [from, to], pitch }: FollowedRow): boolean {
  const { unit, agreeing, anchorTick, anchorValue, direction, mmPerTick } = claim;
  if (unit !== 'inch' || agreeing.some(({ value }) => value >= INCHES_TO_A_FOOT)) return false;
  const zeroTick = anchorTick - (direction * anchorValue * mmPerUnit.inch) / mmPerTick;
  if (Math.abs(zeroTick - (direction > 0 ? from : to)) > END_TICKS) return true;
  // Lines that end where the picture does may go on outside it.
  const u = distanceAt(pitch.model, zeroTick) + pitch.centre;
  const edge = (END_TICKS + 1) / Math.abs(densityAt(pitch.model, u - pitch.centre));
  return u - pitch.from < edge || pitch.to - u < edge;
}

/** Lines that lean more than this (tangent) aren't those of a tape seen from above: the row may run across it. */
const MOST_LEAN = 0.22;

interface Weighed {
  readonly row: FollowedRow;
  readonly claim: Claim;
  readonly settled: Set<Doubt>;
  readonly raised: Set<Doubt>;
}

/** Two numbers nearer than this share of a digit's height, in px, are the same print. */
const SAME_PRINT = 0.7;
/** A row this much nearer to the numbers is the one they label. */
const CLEARLY_NEARER = 0.67;

/**
 * Numbers belong to the nearest row of lines: a claim that rests on numbers printed for another
 * row is no claim.
 */
function ownNumbersOnly(rows: readonly Required<ClaimedRow>[]): Required<ClaimedRow>[] {
  return rows.filter((one) => !rows.some((other) => other !== one && borrows(one, other)));
}

/** A claim that doubts itself says nothing where one without doubts read most of its numbers, and the same. */
function withoutEclipsed(
  rows: readonly Required<ClaimedRow>[],
  which: (row: Required<ClaimedRow>) => boolean,
): Required<ClaimedRow>[] {
  const sure = rows.filter(({ claim }) => doubtsOf(claim).size === 0);
  return rows.filter(
    (one) => sure.includes(one) || !which(one) || !sure.some((other) => eclipses(other, one)),
  );
}

/** A sure claim needn't have read all of the numbers to stand for them. */
const ENOUGH = 0.6;

function eclipses(sure: Required<ClaimedRow>, one: Required<ClaimedRow>): boolean {
  const { agreeing, unit } = one.claim;
  const alike = samePrint(one, sure).filter(([own, other]) => own.value === other.value);
  const enough = sure.claim.counted || sure.claim.agreeing.length >= ENOUGH * agreeing.length;
  return enough && unit === sure.claim.unit && alike.length > 0.5 * agreeing.length;
}

/** The numbers that both claims rest on, as each of them has them. */
function samePrint(
  one: Required<ClaimedRow>,
  other: Required<ClaimedRow>,
): [own: PlacedNumber, other: PlacedNumber][] {
  const near = SAME_PRINT * heightPx(one);
  return one.claim.agreeing.flatMap((number) => {
    const same = other.claim.agreeing.find(
      ({ x, y }) => Math.hypot(x - number.x, y - number.y) < near,
    );
    return same ? [[number, same] as [PlacedNumber, PlacedNumber]] : [];
  });
}

function borrows(one: Required<ClaimedRow>, other: Required<ClaimedRow>): boolean {
  if (one.claim.counted) return false;
  const shared = samePrint(one, other).map(([number]) => number);
  const some = shared[shared.length >> 1];
  if (!some || shared.length < 0.5 * one.claim.agreeing.length) return false;
  const away = ({ row }: Required<ClaimedRow>) => Math.abs(toFrame(row.frame, some.x, some.y)[1]);
  return away(other) < CLEARLY_NEARER * away(one);
}

function heightPx({ row, claim }: Required<ClaimedRow>): number {
  const { model } = row.pitch;
  const pitch = 1 / densityAt(model, distanceAt(model, claim.agreeing[0]?.tick ?? 0));
  return claim.digitShare * claim.ticksPerNumber * Math.abs(pitch);
}

/** Readings of the same lines that differ by less are one reading, made twice. */
const SAME_READING_MM = 0.6;

/**
 * The same lines are often found as several rows, each with other numbers of theirs read: those
 * that say the same become one claim with all its numbers, on the best of the rows.
 */
function joinSameLines(rows: readonly Required<ClaimedRow>[]): Weighed[] {
  const joined: Weighed[] = [];
  const best = [...rows].sort((one, other) => support(other.claim) - support(one.claim));
  for (const { row, claim } of best) {
    const fresh: Weighed = { row, claim, settled: new Set(), raised: new Set() };
    const at = joined.findIndex((one) => saysTheSame(one, fresh));
    const same = joined[at];
    if (same) joined[at] = { ...same, claim: withNumbersOf(same, fresh) };
    else joined.push(fresh);
  }
  return joined;
}

/** Different numbers read, and then a known pattern of lines. */
function support({ agreeing, contrary, pattern, doubts }: Claim): number {
  const distinct = new Set(agreeing.map(({ value }) => value)).size;
  return distinct - 0.5 * contrary.length + (pattern.valid ? 1 : 0) - doubts.size;
}

function saysTheSame(one: Weighed, other: Weighed): boolean {
  if (one.claim.unit !== other.claim.unit) return false;
  const places = comparisons(one, other);
  return (
    places.length > 0 &&
    places.some(({ apartTicks }) => apartTicks < SAME_LINES_TICKS) &&
    places.every(({ differsMm }) => differsMm < SAME_READING_MM)
  );
}

function withNumbersOf({ row, claim }: Weighed, other: Weighed): Claim {
  const known = new Set(claim.agreeing.map(({ value }) => value));
  const more = other.claim.agreeing
    .filter(({ value }) => !known.has(value))
    .map((number) => {
      const [u] = toFrame(row.frame, number.x, number.y);
      return { ...number, tick: graduationAt(row.pitch.model, u - row.pitch.centre) };
    });
  const contrary = claim.contrary.filter(
    ({ tick }) => !more.some((one) => Math.abs(one.tick - tick) < 0.3 * claim.ticksPerNumber),
  );
  return { ...claim, agreeing: [...claim.agreeing, ...more], contrary };
}

function weigh(one: Weighed, other: Weighed): void {
  const places = comparisons(one, other);
  const pair = places[places.length >> 1];
  if (!pair) return;
  const sameLines = readForThemselves(one, other)
    ? []
    : places.filter(({ apartTicks, within }) => within && apartTicks < SAME_LINES_TICKS);
  if (sameLines.some(({ differsMm }) => differsMm > 2)) {
    contradict(one, other, 'line');
    return;
  }
  const size = Math.abs(Math.log(pair.sizeRatio));
  if (!pair.parallel) {
    // Rows that cross the same lines at a slant, or follow a bend; apart from each other they are two tapes.
    if (sameLines.some(({ differsMm }) => differsMm > SAME_MM)) contradict(one, other, 'line');
  } else if (size > OTHER_SIZE) contradict(one, other, 'unit');
  else {
    if (size < LIKE_SIZE) confirmUnits(one, other);
    if (size < SAME_SIZE && pair.sameWay) weighLines(one, other, pair);
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
  if (proven || (metric && countsHalves(one.claim))) other.settled.add('unit');
  if (proven || (metric && countsHalves(other.claim))) one.settled.add('unit');
}

/** Two scales of one tape that run the same way: one zero settles which line is which. */
function weighLines(one: Weighed, other: Weighed, pair: Comparison): void {
  if (pair.differsMm < SAME_MM && isInchesBesideMetric(one, other)) {
    for (const side of [one, other]) if (standsOnItsOwn(side.claim)) side.settled.add('line');
  } else if (one.claim.unit === other.claim.unit && isWholeNumbers(pair.differsMm, one.claim)) {
    if (!readForThemselves(one, other)) contradict(one, other, 'line');
  }
}

/** So many numbers of its own, each read by itself, are not by mistake on a row's lines: they are two tapes. */
const MANY_NUMBERS = 8;

function readForThemselves(one: Weighed, other: Weighed): boolean {
  const many = [one, other].every(({ claim }) => claim.agreeing.length >= MANY_NUMBERS);
  return many && samePrint(one, other).length === 0;
}

/** Tens whose own lines leave no doubt of their unit: they have half millimetres. */
function countsHalves({ unit, step, doubts }: Claim): boolean {
  return unit === 'mm' && step === 10 && !doubts.has('unit');
}

/** Enough numbers to say something, though not by themselves which line is meant. */
function standsOnItsOwn({ agreeing, contrary }: Claim): boolean {
  return agreeing.length >= 3 && contrary.length < 0.5 * agreeing.length;
}

/** Off by whole numbered intervals: one of the two has its numbers on the wrong lines. */
function isWholeNumbers(mm: number, { mmPerTick, ticksPerNumber }: Claim): boolean {
  const numbers = mm / (mmPerTick * ticksPerNumber);
  return mm > SAME_MM && Math.abs(numbers - Math.round(numbers)) < 0.1;
}

/** The far better supported of two stands; two of like support fall together. */
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
    weak.claim.agreeing.length * ENOUGH <= strong.claim.agreeing.length
  )
    return;
  if (strong.claim.agreeing.length < 2 * weak.claim.agreeing.length) strong.raised.add(doubt);
}

interface Comparison {
  readonly parallel: boolean;
  readonly sameWay: boolean;
  readonly apartTicks: number;
  readonly apartMm: number;
  /** Px to a millimetre on the one over px to a millimetre on the other. */
  readonly sizeRatio: number;
  readonly differsMm: number;
  /** The place lies where both rows were followed, not beyond the end of one. */
  readonly within: boolean;
}

const COMPARED_AT = [0.1, 0.3, 0.5, 0.7, 0.9];

/** Compares two claims at places of the second that lie beside the first. */
function comparisons(one: Weighed, other: Weighed): Comparison[] {
  const [from, to] = other.row.range;
  return COMPARED_AT.flatMap((share) => {
    const found = beside(one, other, from + share * (to - from));
    return found && found.apartMm < ONE_TAPE_MM ? [found] : [];
  });
}

function beside(
  one: Required<ClaimedRow>,
  other: Required<ClaimedRow>,
  tick: number,
): Comparison | null {
  const { frame, pitch } = other.row;
  const t = distanceAt(pitch.model, tick);
  const at = toImage(frame, t + pitch.centre, 0);
  const next = toImage(frame, t + pitch.centre + 1, 0);
  const [u, v] = toFrame(one.row.frame, at[0], at[1]);
  const [nextU, nextV] = toFrame(one.row.frame, next[0], next[1]);
  const ownT = u - one.row.pitch.centre;
  const ownTick = graduationAt(one.row.pitch.model, ownT);
  const [first, last] = one.row.range;
  const slack = 0.3 * (last - first);
  if (!(ownTick > first - slack && ownTick < last + slack)) return null;
  const density = densityAt(one.row.pitch.model, ownT);
  const apartTicks = Math.abs(v * density);
  const pxPerMm = 1 / (density * one.claim.mmPerTick);
  const otherPxPerMm = 1 / (densityAt(pitch.model, t) * other.claim.mmPerTick);
  const turn = Math.atan2(nextV - v, nextU - u);
  const along = Math.cos(turn) > 0 ? 1 : -1;
  return {
    parallel: Math.abs(Math.sin(turn)) < PARALLEL,
    sameWay: one.claim.direction === other.claim.direction * along,
    apartTicks,
    apartMm: apartTicks * one.claim.mmPerTick,
    sizeRatio: pxPerMm / otherPxPerMm,
    within: ownTick > first - END_TICKS && ownTick < last + END_TICKS,
    differsMm: Math.abs(mmAt(one.claim, ownTick) - mmAt(other.claim, tick)),
  };
}

function mmAt(claim: Claim, tick: number): number {
  return (
    claim.anchorValue * mmPerUnit[claim.unit] +
    claim.direction * claim.mmPerTick * (tick - claim.anchorTick)
  );
}
