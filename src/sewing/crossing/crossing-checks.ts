import { exactLength, type Length } from '../../lengths/length.ts';
import { mustBePositive } from '../length-checks.ts';
import type { Problem } from '../problem.ts';
import { type Crossed, holesAcross, type StripAcross } from './crossing-holes.ts';

/** At a sharper crossing the strips lie nearly along each other. */
const SHARPEST = 20;
const BLUNTEST = 160;
/** More holes than this where two strips cross are no edging. */
const MOST_ACROSS = 400;

/** What is wrong with two crossing strips; fields of the upper one begin with 'upper'. */
export function crossingProblems({ lower, upper, angle, hole }: Crossed): Problem[] {
  const range = { given: angle, least: SHARPEST, most: BLUNTEST };
  const alone: Problem[] = [
    ...(angle >= SHARPEST && angle <= BLUNTEST
      ? []
      : [{ kind: 'out-of-range' as const, field: 'angle', ...range }]),
    ...mustBePositive('hole', hole),
    ...ofStrip(lower, (key) => key),
    ...ofStrip(upper, upperField),
  ];
  if (alone.length > 0) return alone;
  const holes = [...holesOf(lower, hole, (key) => key), ...holesOf(upper, hole, upperField)];
  if (holes.length > 0) return holes;
  return [
    ...crowded(lower, upper, angle, 'pitch'),
    ...crowded(upper, lower, angle, upperField('pitch')),
  ];
}

/** The upper strip's field of a name: `pitch` → `upperPitch`. */
function upperField(key: string): string {
  return `upper${key.charAt(0).toUpperCase()}${key.slice(1)}`;
}

function ofStrip({ width, pitch, margin }: StripAcross, name: (key: string) => string): Problem[] {
  return [
    ...mustBePositive(name('width'), width),
    ...mustBePositive(name('pitch'), pitch),
    ...mustBePositive(name('margin'), margin),
  ];
}

function holesOf(
  { width, pitch, margin, rows }: StripAcross,
  hole: Length,
  name: (key: string) => string,
): Problem[] {
  const half = (hole / 2) as Length;
  const most = exactLength(
    rows === 'one' ? width - half : (width - rowsApart(rows, pitch, hole)) / 2,
  );
  return [
    ...(pitch <= hole
      ? [{ kind: 'not-over' as const, field: name('pitch'), over: hole, given: pitch }]
      : []),
    ...(margin <= half
      ? [{ kind: 'not-over' as const, field: name('margin'), over: half, given: margin }]
      : margin >= most
        ? [{ kind: 'not-under' as const, field: name('margin'), under: most, given: margin }]
        : []),
  ];
}

/** From row to row, so that their holes just touch. */
function rowsApart(rows: StripAcross['rows'], pitch: Length, hole: Length): number {
  const along = rows === 'staggered' ? pitch / 2 : 0;
  return along < hole ? Math.sqrt(hole ** 2 - along ** 2) : 0;
}

function crowded(own: StripAcross, other: StripAcross, angle: number, field: string): Problem[] {
  const count = holesAcross(own, other, angle);
  if (count <= MOST_ACROSS) return [];
  const least = ((own.pitch * count) / MOST_ACROSS) as Length;
  return [{ kind: 'too-close', field, least, most: MOST_ACROSS }];
}
