import { lacingWords } from '#words/calculations/lacing-words.ts';
import type { Line } from '../../calculation/calculation.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import type { HolePlace } from '../../sewing/hole-place.ts';
import { otherFace } from '../../sewing/lacing/lacing-halves.ts';
import { isPass, type LacePoint, pathOf, type Repeat } from '../../sewing/lacing/lacing-repeat.ts';

const words = lacingWords.steps;

type Show = (x: ExactLength) => string;

/**
 * One repeat told step by step, from the first hole it comes near; or, written so, from
 * just before that hole is passed.
 */
export function stepLines(repeat: Repeat, before: boolean, show: Show): Line[] {
  const path = pathOf(repeat, repeat.advance);
  const reach = Math.ceil(-Math.min(...path.map(({ along }) => along), 0));
  const placed = path.map((point) => ({ ...point, along: point.along + reach }));
  const [first] = placed;
  if (!first) return [];
  const told = before
    ? [{ ...first, face: otherFace(first.face), turns: 0 }, ...placed.slice(0, -1)]
    : placed;
  const row = first.across;
  return told.map((point, i) => ({
    label: words.step(i + 1),
    value: stepWords(told[i - 1], point, row, before, show),
  }));
}

function stepWords(
  from: LacePoint | undefined,
  to: LacePoint,
  row: ExactLength,
  before: boolean,
  show: Show,
): string {
  if (!from) return words.from(to.face, placeWords(to, row, show), before);
  const turn = words.turn.repeat(to.turns ?? 0);
  if (!isPass(from, to)) return words.straight(to.face, placeWords(to, row, show)) + turn;
  if (to.across <= 0) return words.edge(to.face) + turn;
  return (isHole(to, row) ? words.hole(to.face) : words.strip(to.face)) + turn;
}

function placeWords(point: LacePoint, row: ExactLength, show: Show): string {
  const { along, across } = point;
  const whole = Math.floor(along);
  const at: HolePlace = { hole: whole + 1, beyond: along - whole };
  if (isHole(point, row)) return words.atHole(at);
  if (across === 0) return words.atEdge(at);
  return across < 0
    ? words.outside(show(exactLength(-across)), at)
    : words.inside(show(across), at);
}

function isHole({ along, across }: LacePoint, row: ExactLength): boolean {
  return across === row && Number.isInteger(along);
}
