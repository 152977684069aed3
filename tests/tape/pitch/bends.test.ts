import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toImage } from '../../../src/tape/frame/frame.ts';
import { type Field, logOf } from '../../../src/tape/picture/field.ts';
import { placeIn } from '../../../src/tape/picture/space.ts';
import { alongAt } from '../../../src/tape/pitch/along.ts';
import { type BendPlace, walkBend } from '../../../src/tape/pitch/bend-walk.ts';
import { bentRow } from '../../../src/tape/pitch/bent-row.ts';
import { number } from '../made/even-numbers.ts';

const SIDE = 420;
/** Px that lines are long, and pitches by which they are broad. */
const [LENGTH, BROAD] = [16, 0.24];

interface Arc {
  readonly radius: number;
  readonly pitch: number;
  /** Lines so far from the middle one, in graduations, that aren't there. */
  readonly hidden?: readonly [from: number, to: number];
}

/** Lines round an arc about the middle of the lower edge, the one upright above it being 0. */
function drawn({ radius, pitch, hidden = [1e3, 1e3] }: Arc): Field<'measuring'> {
  const values = Float32Array.from({ length: SIDE * SIDE }, (_, at) => {
    const { tick, away } = onArc({ radius, pitch }, [at % SIDE, Math.floor(at / SIDE)]);
    const isHidden = tick > hidden[0] && tick < hidden[1];
    const onLine = Math.abs(tick - Math.round(tick)) < BROAD / 2 && Math.abs(away) < LENGTH / 2;
    return onLine && !isHidden ? 60 : 200;
  });
  return { width: SIDE, height: SIDE, values };
}

/** The graduation at a place and px outwards from the arc. */
function onArc({ radius, pitch }: Arc, [x, y]: readonly [number, number]) {
  const [right, up] = [x - SIDE / 2, SIDE - 1 - y];
  const turned = Math.atan2(right, up);
  return { tick: (turned * radius) / pitch, away: Math.hypot(right, up) - radius };
}

function walked(arc: Arc, { off = 0, turned = 0 } = {}): BendPlace[] {
  const at = placeIn<'measuring'>(SIDE / 2, SIDE - 1 - arc.radius + off * arc.pitch);
  return walkBend(logOf(drawn(arc)), { at, angle: turned, lean: 0, pitch: arc.pitch });
}

/** As tight as round the base of a jar, to the millimetre: 30 to 60 graduations in radius. */
const arcs = fc.record({ radius: number(230, 330), pitch: number(5.5, 7.5) });

describe('lines round a bend', () => {
  test('are followed on their row from wherever the walk is set down near it', () => {
    fc.assert(
      fc.property(arcs, number(-0.8, 0.8), number(-0.15, 0.15), (arc, off, turned) => {
        const places = walked(arc, { off, turned });
        const half = (places.length - 1) / 2;
        expect((half * 2 * arc.pitch) / arc.radius).toBeGreaterThan(0.5);
        for (const { at, tick } of places) {
          const place = onArc(arc, at);
          expect(Math.abs(place.away)).toBeLessThan(0.2 * arc.pitch);
          expect(Math.abs(place.tick - tick)).toBeLessThan(0.1);
        }
      }),
      { numRuns: 6, seed: 16 },
    );
  });

  test('end where some are hidden, and are not counted past that', () => {
    const arc = { radius: 250, pitch: 8 };
    const whole = walked(arc).map(({ tick }) => tick);
    const parted = walked({ ...arc, hidden: [5.5, 14.5] }).map(({ tick }) => tick);
    expect(Math.max(...whole)).toBeGreaterThan(20);
    expect(Math.max(...parted)).toBeLessThanOrEqual(6);
    expect(Math.min(...parted)).toBe(Math.min(...whole));
  });

  test('are nowhere on bare ground', () => {
    const bare = { width: SIDE, height: SIDE, values: new Float32Array(SIDE * SIDE).fill(180) };
    const aim = { at: placeIn<'measuring'>(200, 200), angle: 0, lean: 0, pitch: 8 };
    expect(walkBend(bare, aim)).toEqual([]);
  });
});

test('a row round a bend has its graduations where they are drawn', () => {
  fc.assert(
    fc.property(arcs, (arc) => {
      const row = bentRow(drawn(arc), walked(arc));
      const { followed } = row?.pitch ?? {};
      if (!row || !followed) throw new Error('no row');
      expect(followed.count).toBeGreaterThan(24);
      for (let tick = -50; tick <= 50; tick++) {
        const u = alongAt(row.pitch, tick);
        // The walk's own places: a pitch inside of what is followed.
        if (u < followed.from + arc.pitch || u > followed.to - arc.pitch) continue;
        const place = onArc(arc, toImage(row.frame, u, 0));
        expect(Math.abs(place.tick - tick)).toBeLessThan(0.1);
        expect(Math.abs(place.away)).toBeLessThan(0.5 * arc.pitch);
      }
    }),
    { numRuns: 4, seed: 16 },
  );
});
