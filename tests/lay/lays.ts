import fc from 'fast-check';
import { type Geom, intersection } from 'polyclip-ts';
import { outlineOf } from '../../src/lay/check-lay.ts';
import { type Outline, type Point, signedArea } from '../../src/lay/outline.ts';
import { problemOf } from '../../src/lay/problem.ts';
import { solve } from '../../src/lay/solve.ts';
import type { Lay, LayPiece, LayTask } from '../../src/lay/task.ts';

export const rectangle = (length: number, width: number): Outline => [
  [0, 0],
  [length, 0],
  [length, width],
  [0, width],
];

/** A piece of one outline, with what isn't said as the plainest. */
export const piece = (id: string, outline: Outline, more: Partial<LayPiece> = {}): LayPiece => ({
  id,
  outline,
  count: 1,
  turns: [0, 180],
  ...more,
});

/** A lay found within so many rounds of the search: with a seed it is the same each time. */
export function found(task: LayTask, { seed = 1, rounds = 300 } = {}): Lay | undefined {
  let round = 0;
  const elapsed = () => (round++ * 3) / rounds;
  return solve(problemOf(task), { seed, elapsed, seconds: 3, onBetter: () => undefined });
}

/** How much two outlines share, in mm²: by a general library, which knows nothing of lays. */
export function shared(one: Outline, other: Outline): number {
  const rings = intersection(asGeom(one), asGeom(other)).flatMap((polygon) =>
    polygon.map((ring, i) => (i === 0 ? 1 : -1) * Math.abs(signedArea(ring as Outline))),
  );
  return rings.reduce((sum, area) => sum + area, 0);
}

const asGeom = (outline: Outline): Geom => [
  [...outline, outline[0]!].map(([x, y]): [number, number] => [x, y]),
];

/** The most that two pieces of a lay share, or a piece and a flaw, in mm². */
export function mostShared(task: LayTask, lay: Lay): number {
  const outlines = lay.laid.map((laid) => {
    const own = task.pieces.find(({ id }) => id === laid.id)!;
    return outlineOf(own, laid);
  });
  const others = [...outlines, ...(task.flaws ?? [])];
  let most = 0;
  outlines.forEach((one, i) => {
    for (const other of others.slice(i + 1)) most = Math.max(most, shared(one, other));
  });
  return most;
}

/**
 * Outlines with corners at rising angles round a middle, in tenths of a millimetre: they never
 * cross themselves, and are as often hollow as full.
 */
export const outlines = (least = 3, most = 9): fc.Arbitrary<Outline> =>
  fc
    .array(fc.tuple(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 300, max: 2000 })), {
      minLength: least,
      maxLength: most,
    })
    .map((corners) => {
      const all = corners.reduce((sum, [step]) => sum + step, 0);
      let turn = 0;
      return corners.map(([step, far]): Point => {
        turn += step / all;
        const angle = turn * 2 * Math.PI;
        return [
          Math.round(far * Math.cos(angle)) / 10 + 200,
          Math.round(far * Math.sin(angle)) / 10,
        ];
      });
    })
    .filter((outline) => signedArea(outline) > 100 && starShaped(outline));

/** Whether every corner is passed in turn by less than half a round, so that the middle is seen. */
const starShaped = (outline: Outline) =>
  outline.every(([x, y], i) => {
    const [u, v] = outline[(i + 1) % outline.length]!;
    return (x - 200) * v - (u - 200) * y > 1;
  });
