import type { Field } from '../picture/field.ts';
import { placeIn } from '../picture/space.ts';
import {
  BEND_CENTRINGS,
  BEND_LEAST_QUALITY,
  BEND_MEMORY,
  BEND_MISSED,
  BEND_MOST_ASIDE,
  BEND_MOST_PHASE,
  BEND_MOST_STEPS,
  BEND_SAME_PITCH,
  BEND_STRIDE,
  ON_CENTRE,
} from './limits.ts';
import { type Aim, type LocalLines, localLines } from './local-lines.ts';

/** Lines found about one place of a tape that bends. */
export interface BendPlace extends Aim {
  /** Graduations from where the walk began. */
  readonly tick: number;
  readonly quality: number;
}

/**
 * Follows the lines of a tape from a place both ways, each few sought where the last ones foretell
 * them: their direction, lean and pitch are handed on. It ends where the lines do, at a fold, and
 * where something covers them. In order along the aim's direction; empty where no lines are.
 *
 * @param log the logarithm of the picture.
 */
export function walkBend(log: Field<'measuring'>, aim: Aim): BendPlace[] {
  const start = centredOn(log, aim);
  if (!start) return [];
  const behind = walk(log, start, -1);
  return [...behind.slice(1).reverse(), ...walk(log, start, 1)];
}

/** The aim brought onto a line and the middle of its row. */
function centredOn(log: Field<'measuring'>, start: Aim): BendPlace | null {
  let aim = start;
  for (let round = 0; round < BEND_CENTRINGS; round++) {
    const lines = localLines(log, aim);
    if (!lines || lines.quality < BEND_LEAST_QUALITY) return null;
    const isOn = Math.max(Math.abs(lines.aside) / aim.pitch, Math.abs(lines.phase)) < ON_CENTRE;
    aim = movedOnto(aim, lines);
    if (isOn) return { ...aim, tick: 0, quality: lines.quality };
  }
  return null;
}

function movedOnto({ at: [x, y], angle, lean, pitch }: Aim, lines: LocalLines): Aim {
  const leaning = lean + lines.lean;
  const [u, v] = [lines.phase * pitch + lines.aside * leaning, lines.aside];
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  return {
    at: placeIn(x + u * cosine - v * sine, y + u * sine + v * cosine),
    angle,
    lean: leaning,
    pitch: lines.pitch,
  };
}

function walk(log: Field<'measuring'>, start: BendPlace, side: 1 | -1): BendPlace[] {
  const found: BendPlace[] = [start];
  let missed = 0;
  while (found.length < BEND_MOST_STEPS && missed <= BEND_MISSED) {
    const ticks = BEND_STRIDE * (missed + 1);
    const aim = foretold(found, side, ticks);
    const lines = localLines(log, aim);
    if (lines && isDue(aim, lines)) {
      const { tick } = found[found.length - 1] as BendPlace;
      const there = movedOnto(aim, lines);
      found.push({ ...there, tick: tick + side * ticks, quality: lines.quality });
      missed = 0;
    } else missed++;
  }
  return found;
}

function isDue(aim: Aim, { quality, phase, aside, pitch }: LocalLines): boolean {
  return (
    quality > BEND_LEAST_QUALITY &&
    Math.abs(phase) < BEND_MOST_PHASE &&
    Math.abs(aside) < BEND_MOST_ASIDE * aim.pitch &&
    Math.abs(Math.log(pitch / aim.pitch)) < BEND_SAME_PITCH
  );
}

/** Where the lines so many graduations on are due: the course turns, and the pitch changes, as they last did. */
function foretold(found: readonly BendPlace[], side: 1 | -1, ticks: number): Aim {
  const back = (places: number) => found[Math.max(0, found.length - 1 - places)] as BendPlace;
  const [last, middle, first] = [back(0), back(BEND_MEMORY), back(2 * BEND_MEMORY)];
  const isTold = found.length > BEND_MEMORY;
  const way = isTold ? directionFrom(middle, last, side) : last.angle;
  const isTurnTold = found.length > 2 * BEND_MEMORY;
  // The two directions are those in the middles of their halves.
  const turn = isTurnTold
    ? turnedFrom(directionFrom(first, middle, side), way) / (BEND_MEMORY * BEND_STRIDE)
    : 0;
  const angle = way + (isTold ? (turn * BEND_MEMORY * BEND_STRIDE) / 2 : 0);
  const passed = Math.abs(last.tick - middle.tick);
  const growth = passed > 0 ? Math.log(last.pitch / middle.pitch) / passed : 0;
  const pitch = last.pitch * Math.exp(growth * ticks);
  const px = (side * ticks * (last.pitch + pitch)) / 2;
  const between = angle + (turn * ticks) / 2;
  return {
    at: placeIn(last.at[0] + px * Math.cos(between), last.at[1] + px * Math.sin(between)),
    angle: angle + turn * ticks,
    lean: last.lean,
    pitch,
  };
}

function directionFrom({ at: from }: BendPlace, { at: to }: BendPlace, side: 1 | -1): number {
  return Math.atan2(side * (to[1] - from[1]), side * (to[0] - from[0]));
}

function turnedFrom(one: number, other: number): number {
  const turned = other - one;
  return turned - 2 * Math.PI * Math.round(turned / (2 * Math.PI));
}
