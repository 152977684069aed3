import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { RowFrame } from '../../../src/tape/frame/frame.ts';
import { fitRow } from '../../../src/tape/rows/row-fit.ts';
import { number } from '../made/even-numbers.ts';
import { rowFrame, toFrame } from '../made/plain-places.ts';
import { drawScene, placeOf, type Scene } from '../made/stroke-scene.ts';

/** About as high as the band that strokes are looked for in: a longer stroke may hold it anywhere. */
const STROKE_MM = 1.6;

const PLAIN: Scene = {
  width: 800,
  height: 560,
  turn: 0,
  pxPerMm: 7,
  strokeLength: STROKE_MM,
  at: [400, 280],
  noise: 20,
};

/** A frame as the search leaves it: some px beside the row and a little turned. */
function roughFrame(scene: Scene, beside: number, turned: number): RowFrame<never> {
  const [x, y] = placeOf(scene, 0, STROKE_MM / 2);
  const [x1, y1] = placeOf(scene, 1, STROKE_MM / 2);
  const angle = Math.atan2(y1 - y, x1 - x);
  return rowFrame([x - beside * Math.sin(angle), y + beside * Math.cos(angle)], angle + turned);
}

/** Places along the tape, in mm, that lie in the picture with room around. */
function visible(scene: Scene): number[] {
  return Array.from({ length: 161 }, (_, i) => i - 80).filter((along) => {
    const [x, y] = placeOf(scene, along, STROKE_MM / 2);
    return x > 40 && y > 40 && x < scene.width - 40 && y < scene.height - 40;
  });
}

/** How far the strokes lie across the row, and how far each leans in the frame, in px. */
function misfit(scene: Scene, frame: RowFrame) {
  const across = visible(scene).map(
    (along) => toFrame(frame, ...placeOf(scene, along, STROKE_MM / 2))[1],
  );
  const lean = visible(scene).map((along) => {
    const foot = toFrame(frame, ...placeOf(scene, along, 0))[0];
    const head = toFrame(frame, ...placeOf(scene, along, STROKE_MM))[0];
    return Math.abs(head - foot);
  });
  return { across: Math.max(...across.map(Math.abs)), lean: Math.max(...lean) };
}

function fitted(scene: Scene, beside = 9, turned = 0.02): RowFrame<'search'> {
  const frame = fitRow(drawScene(scene), roughFrame(scene, beside, turned));
  if (!frame) throw new Error('no row found');
  return frame;
}

describe('a straight row', () => {
  test.each([
    ['level', {}],
    ['turned', { turn: 0.5 }],
    ['upright', { turn: Math.PI / 2 }],
    ['upside down', { turn: Math.PI - 0.2 }],
    ['tilted to the side', { tilt: [0.005, 0] }],
    ['tilted both ways', { tilt: [0.004, -0.006], turn: 0.3 }],
    ['noisy', { noise: 70, turn: 0.2 }],
    ['fine', { pxPerMm: 4, turn: 0.9 }],
  ] as const)('%s lies along the frame, and its strokes across', (_, changes) => {
    const scene: Scene = { ...PLAIN, ...changes };
    const { across, lean } = misfit(scene, fitted(scene));
    expect(across).toBeLessThan(2);
    expect(lean).toBeLessThan(0.6);
  });

  test('is given no bow', () => {
    expect(fitted({ ...PLAIN, turn: 0.3 })).toMatchObject({ bow2: 0, bow3: 0 });
  });

  test('is found from either side and either turn', () => {
    for (const [beside, turned] of [
      [-20, 0.03],
      [20, -0.03],
      [14, 0.05],
    ] as const) {
      expect(misfit(PLAIN, fitted(PLAIN, beside, turned)).across).toBeLessThan(2);
    }
  });
});

describe('a bent row', () => {
  // Half the curvature in mm: over the visible 50 mm to either side it sags 3·10⁻⁴·50² mm.
  const SAG_MM = 3e-4 * 50 ** 2;

  test.each([
    ['up', 3e-4, 0],
    ['down', -3e-4, 0],
    ['turned', 3e-4, 0.4],
    ['bent the more', 5e-4, 0.2],
  ])('%s: the frame bends with it', (_, bend, turn) => {
    const scene: Scene = { ...PLAIN, bend, turn };
    const frame = fitted(scene);
    expect(Math.sign(frame.bow2)).toBe(Math.sign(bend));
    const { across, lean } = misfit(scene, frame);
    expect(across).toBeLessThan(2);
    expect(lean).toBeLessThan(0.3);
    // Straight, it would miss by half the sag even at its best.
    expect((SAG_MM * PLAIN.pxPerMm) / 2).toBeGreaterThan(2);
  });
});

describe('no row', () => {
  test('where nothing is printed', () => {
    const even = { width: 500, height: 300, values: new Float32Array(500 * 300).fill(150) };
    expect(fitRow(even, rowFrame([250, 150], 0.1))).toBeNull();
  });

  test('on a line that misses the picture', () => {
    expect(fitRow(drawScene(PLAIN), rowFrame([-900, 0], -0.8))).toBeNull();
  });

  test('on too short a piece, across a corner', () => {
    expect(fitRow(drawScene(PLAIN), rowFrame([40, 40], -Math.PI / 4))).toBeNull();
  });

  test('along stripes that run with it: no stroke stands across', () => {
    const values = Float32Array.from({ length: 500 * 300 }, (_, i) =>
      Math.floor(i / 500) % 8 < 3 ? 40 : 200,
    );
    expect(fitRow({ width: 500, height: 300, values }, rowFrame([250, 150], 0))).toBeNull();
  });
});

test('the fit does not hang on where it began', () => {
  const field = drawScene({ ...PLAIN, turn: 0.2, tilt: [0.003, 0.003] });
  const scene = { ...PLAIN, turn: 0.2, tilt: [0.003, 0.003] as const };
  const begin = number(-15, 15);
  const turn = number(-0.03, 0.03);
  fc.assert(
    fc.property(begin, turn, (beside, turned) => {
      const frame = fitRow(field, roughFrame(scene, beside, turned));
      expect(frame && misfit(scene, frame).across).toBeLessThan(2);
    }),
    { numRuns: 15 },
  );
});
