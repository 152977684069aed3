import { type ExactLength, exactLength, type Length } from '../../lengths/length.ts';
import { answerUnless, type Outcome } from '../problem.ts';
import { crossingProblems } from './crossing-checks.ts';
import { type ClashRanges, clashRanges, fewestClashes, type Shifts } from './crossing-clear.ts';
import {
  type Crossed,
  type HoleLine,
  linesOver,
  linesUnder,
  nearestSquared,
} from './crossing-holes.ts';
import { type Meeting, meetingAt, NOISE, type Weighed, weigh } from './crossing-room.ts';

/** A hole of the upper strip over the lower one. */
export interface UpperHole {
  /** On the lower strip: along it from the crossing of the middle lines, and from its middle line. */
  along: ExactLength;
  across: ExactLength;
  /** The worst it meets. */
  meets: Meeting;
  /** It is nearer than one hole diameter, clear, to an edge of the lower strip. */
  nearEdge: boolean;
}

/** The upper strip laid with some shift. */
export interface Crossing {
  /** By how much the upper strip is moved along itself, from how it lies. */
  shift: ExactLength;
  pitch: ExactLength;
  clashes: number;
  shared: number;
  /** From the centre of a new hole to the nearest other one, new or made, at the least; undefined where none is new. */
  room: ExactLength | undefined;
  /** Holes of the upper strip over the lower one. Those that aren't shared are to be punched through it. */
  holes: readonly UpperHole[];
}

export interface CrossingPlan {
  /** As the strips lie. */
  asLaid: Crossing;
  /** With the shift that clears most. */
  best: Crossing;
  /** Where no shift is clear: with the nearest pitch of the upper strip within ±10 % that is, if any. */
  otherPitch: Crossing | undefined;
}

/** Shifts are tried this far apart, then again ten times as fine round the best. */
const STEP = exactLength(800);
const FINE = exactLength(80);
/** Other pitches tried: so many to either side, each this part of the wanted one further off. */
const OTHERS = 100;
const OTHER_STEP = 0.001;
/** A range of shifts less wide can't be told in hundredths of a millimetre. */
const NARROWEST = 160;
/** With another pitch it is to be wide enough to lay a strip by hand. */
const LAID_BY_HAND = 400;

/**
 * Where the holes of two crossing strips come to lie, and the shift of the upper
 * strip along itself that leaves most room.
 *
 * Two holes are *shared* when their centres are within a quarter of a hole, *clear*
 * when they are two holes or more apart (one diameter of material between), else
 * they *clash*. Of all shifts within one pitch, 0.1 mm apart and finer round the best:
 * no clash and the most room, else the fewest clashes; a narrower range with fewer is
 * found by working out where there is one. Derived here.
 *
 * Problems: an angle out of range, lengths of nothing, holes that break an edge or
 * overlap, more holes than are looked at.
 */
export function crossing(input: Crossed): Outcome<CrossingPlan> {
  return answerUnless(crossingProblems(input), () => {
    const { upper } = input;
    const asLaid = laid(input, upper.pitch, 0);
    const ranges = clashRanges(input);
    const best = bestShift(
      input,
      upper.pitch,
      fewestClashes(input, ranges, upper.pitch, NARROWEST),
    );
    const otherPitch = best.clashes === 0 ? undefined : clearPitch(input, ranges);
    return { ok: true, value: { asLaid, best, otherPitch } };
  });
}

/** Begun in the midst of the shifts with fewest clashes, however narrow beside the steps that are tried. */
function bestShift(input: Crossed, pitch: number, fewest: Shifts | undefined): Crossing {
  const below = linesUnder(input);
  const tried = (shift: number): Tried => ({
    shift,
    ...weigh(input, linesOver(input, pitch, shift), below),
  });
  const middle = fewest ? Math.round((fewest.from + fewest.to) / 2 / FINE) * FINE : 0;
  const rough = bestOf(tried, 0, pitch, STEP, tried(middle));
  const at = bestOf(tried, rough.shift - STEP, rough.shift + STEP, FINE, rough);
  return laid(input, pitch, ((at.shift % pitch) + pitch) % pitch);
}

interface Tried extends Weighed {
  shift: number;
}

function bestOf(
  tried: (shift: number) => Tried,
  from: number,
  to: number,
  step: number,
  start: Tried,
): Tried {
  let best = start;
  for (let shift = from; shift < to; shift += step) {
    const one = tried(shift);
    if (isBetter(one, best)) best = one;
  }
  return best;
}

/** Fewer clashes, then more room; where new holes are what is nearest to each other, more to those made. */
function isBetter(one: Tried, other: Tried): boolean {
  if (one.clashes !== other.clashes) return one.clashes < other.clashes;
  const more = one.room - other.room;
  return Math.abs(more) < NOISE ? one.toMade > other.toMade : more > 0;
}

function clearPitch(input: Crossed, ranges: ClashRanges): Crossing | undefined {
  const { upper } = input;
  for (let i = 1; i <= OTHERS; i++) {
    for (const off of [-i, i]) {
      // A whole number, so that it can be typed.
      const pitch = Math.round(upper.pitch * (1 + off * OTHER_STEP)) as Length;
      const fewest = fewestClashes(input, ranges, pitch, LAID_BY_HAND);
      if (fewest?.clashes !== 0) continue;
      const wrong = crossingProblems({ ...input, upper: { ...upper, pitch } });
      if (wrong.length === 0) return bestShift(input, pitch, fewest);
    }
  }
  return undefined;
}

function laid(input: Crossed, pitch: number, shift: number): Crossing {
  const over = linesOver(input, pitch, shift);
  const below = linesUnder(input);
  const { clashes, room } = weigh(input, over, below);
  const holes = over.flatMap((line) => upperHoles(input, line, below));
  return {
    shift: exactLength(shift),
    pitch: exactLength(pitch),
    clashes,
    shared: holes.filter(({ meets }) => meets === 'shared').length,
    room: Number.isFinite(room) ? exactLength(room) : undefined,
    holes,
  };
}

function upperHoles(
  { angle, hole, lower }: Crossed,
  { y: own, start, pitch, first, last }: HoleLine,
  below: readonly HoleLine[],
): UpperHole[] {
  const turn = (angle * Math.PI) / 180;
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => {
    const along = start + (first + i) * pitch;
    const x = along * Math.cos(turn) - own * Math.sin(turn);
    const y = along * Math.sin(turn) + own * Math.cos(turn);
    return {
      along: exactLength(x),
      across: exactLength(y),
      meets: meetingAt(nearestSquared(below, x, y), hole),
      nearEdge: lower.width / 2 - Math.abs(y) < 1.5 * hole - NOISE,
    };
  });
}
