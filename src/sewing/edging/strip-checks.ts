import { exactLength, type Length } from '../../lengths/length.ts';
import { mustBePositive, mustBePositiveIfGiven, mustNotBeNegative } from '../length-checks.ts';
import type { Problem } from '../problem.ts';
import type { StripInput } from './strip.ts';
import { halfHole, touchingPitch } from './strip-room.ts';

/** Sharper or blunter corners are not edged in one strip. Ours, no source. */
const CORNER = { least: 20, most: 160 };

/** What is wrong with a strip whatever is done with it. */
export function stripProblems(input: StripInput): Problem[] {
  const { length, pitch, end, radius } = input;
  const alone = [
    ...(['length', 'width', 'pitch', 'margin', 'hole'] as const).flatMap((field) =>
      mustBePositive(field, input[field]),
    ),
    ...(end === undefined ? [] : mustNotBeNegative('end', end)),
    ...mustBePositiveIfGiven('radius', radius),
  ];
  if (alone.length > 0) return alone;
  const shape = [...acrossProblems(input), ...bendProblems(input), ...angleProblems(input)];
  const long: Problem[] =
    pitch > length ? [{ kind: 'too-long', field: 'pitch', most: length, given: pitch }] : [];
  return [...long, ...shape, ...(shape.length > 0 ? [] : alongProblems(input))];
}

/** Holes must not break an edge, nor the two rows each other. */
function acrossProblems({ width, margin, hole, rows, corners }: StripInput): Problem[] {
  const half = (hole / 2) as Length;
  if (margin <= half) return [{ kind: 'not-over', field: 'margin', over: half, given: margin }];
  // Along corners each row is filled by itself: anywhere two holes may stand side by side.
  const level = rows === 'level' || corners.length > 0;
  const under = rows === 'one' ? width - half : (width - (level ? hole : 0)) / 2;
  return margin >= under
    ? [{ kind: 'not-under', field: 'margin', under: exactLength(under), given: margin }]
    : [];
}

/** Bent round less than half its width a strip has no inner edge; past once round it lies on itself. */
function bendProblems({ radius, width, length, corners }: StripInput): Problem[] {
  if (radius === undefined) return [];
  if (corners.length > 0) return [{ kind: 'bent-and-turned', field: 'radius' }];
  const half = (width / 2) as Length;
  if (radius <= half) return [{ kind: 'not-over', field: 'radius', over: half, given: radius }];
  const least = exactLength(length / 2 / Math.PI);
  return radius < least ? [{ kind: 'too-short', field: 'radius', least, given: radius }] : [];
}

function angleProblems({ corners, angle }: StripInput): Problem[] {
  return corners.length === 0 || (angle >= CORNER.least && angle <= CORNER.most)
    ? []
    : [{ kind: 'out-of-range', field: 'angle', given: angle, ...CORNER }];
}

/** Holes must not break each other, nor a cut end. */
function alongProblems(input: StripInput): Problem[] {
  const { pitch, end, fit } = input;
  const touching = touchingPitch(input);
  const half = exactLength(halfHole(input));
  const isCut = fit !== 'loop';
  return [
    ...(pitch <= touching
      ? [{ kind: 'not-over' as const, field: 'pitch', over: touching, given: pitch }]
      : []),
    ...(isCut && end !== undefined && end <= half
      ? [{ kind: 'not-over' as const, field: 'end', over: half, given: end }]
      : []),
  ];
}
