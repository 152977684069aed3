import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { decide, waysOutOf } from '../../src/garment/actions/decide.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { withKeys } from '../../src/garment/actions/with-keys.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { placesOf, pointsOf } from '../../src/garment/rows/points.ts';
import type { MadeMark } from '../../src/garment/rows/row.ts';
import { ranksOf } from '../../src/garment/rows/which-mark.ts';
import { mm } from '../../src/lengths/length.ts';
import { garmentOf, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const now = 5;
const tape = 8000;
const HOOKS = homeOf('hooks', '', 'marks');

const made = (id: string, at: number, rank: number, of: number): MadeMark => {
  return { id, at, plan: at, rank, of, asked: at, slack: 0.5 };
};

test('while the count is the same a made mark is the one it was, wherever it was made', () => {
  const all = [made('a', 0, 0, 4), made('b', 12, 2, 4)];
  expect(ranksOf(all, [0, 10, 20, 30])).toEqual([0, 2]);
});

test('more marks go where something was still to come, into the widest space, never between neighbours', () => {
  const neighbours = [made('a', 0, 0, 5), made('b', 30, 1, 5)];
  expect(ranksOf(neighbours, [0, 8, 16, 24, 32, 40])).toEqual([0, 1]);
  // Between the first and the third one was to come, and after the third two: 40 is wider than 20.
  const apart = [made('a', 0, 0, 5), made('b', 20, 2, 5)];
  expect(ranksOf(apart, [0, 12, 24, 36, 48, 60])).toEqual([0, 2]);
});

test('places as points give the places again', () => {
  const place = fc.integer({ min: 0, max: 1000 });
  fc.assert(
    fc.property(fc.array(place, { minLength: 1, maxLength: 40 }), fc.nat(50), (some, even) => {
      const places = [...some, ...Array.from({ length: even }, (_, i) => 1000 + 7 * i)];
      const again = placesOf(pointsOf(places));
      expect(again).toHaveLength(places.length);
      for (const [i, at] of places.entries()) expect(again[i]).toBeCloseTo(at, 2);
    }),
    { numRuns: 200, seed: 1440 },
  );
  expect(pointsOf(Array.from({ length: 2000 }, (_, i) => i * 8)).points).toHaveLength(2);
});

/** Seven hooks with one on the waist, the second of which is made elsewhere. */
function underWay(measured: number): State {
  const fields = {
    opening: typed('46.3'),
    count: typed('7'),
    top: typed('1.2'),
    bottom: typed('2.5'),
    level: typed('20'),
  };
  const hooks = { name: 'Hooks', calculation: 'closures', rank: 1, fields };
  const press = (id: string, more: object): Action => {
    return { do: 'make', home: HOOKS, id, tape, now, ...more };
  };
  const first = act(begin(garmentOf({ works: { hooks } }), KNOWN), press('a', {})).state;
  return act(first, press('b', { measured })).state;
}

/** 12 × 18 with the holes 0.5 from its edge and apart: a corner's hole 11 from the first. By hand. */
function outlineMadeAt(measured: number) {
  const outline = { name: 'Bag', calculation: 'outline', rank: 1, fields: {} };
  const home = homeOf('bag', '', 'holes');
  const filled = withKeys(garmentOf({ works: { bag: { ...outline, older: 2 } } }), KNOWN);
  const press = (id: string, more: object): Action => ({
    do: 'make',
    home,
    id,
    tape,
    now,
    ...more,
  });
  const four = act(begin(filled, KNOWN), press('a', { upTo: 4 })).state;
  return waysOutOf(act(four, press('b', { measured })).state, home);
}

test('as begun goes on to the next corner, whose hole stays in it; where that leaves no room it is not offered', () => {
  const begun = outlineMadeAt(mm(22)).find(({ way }) => way === 'as-begun');
  const places = begun?.row?.run.marks.map(({ at }) => at) ?? [];
  expect(places.slice(3, 7)).toEqual([mm(15), mm(22), mm(27), mm(32)]);
  expect(places.slice(21, 24)).toEqual([mm(107), mm(110), mm(115)]);
  expect(outlineMadeAt(mm(23)).map(({ way }) => way)).not.toContain('as-begun');
});

test('spread keeps the mark on a level where it is, and the ends', () => {
  const state = underWay(mm(70));
  const spread = waysOutOf(state, HOOKS).find(({ way }) => way === 'spread');
  const places = spread?.row?.run.marks.map(({ at }) => at) ?? [];
  expect(places).toContain(mm(200));
  expect(places.at(-1)).toBe(mm(438));
});

test('a way that would leave less than the least gap, or run off the end, isn’t offered', () => {
  const near = underWay(mm(125));
  expect(waysOutOf(near, HOOKS).map(({ way }) => way)).not.toContain('asked');
  const far = underWay(mm(460));
  expect(waysOutOf(far, HOOKS).map(({ way }) => way)).not.toContain('as-begun');
});

test('a decision holds within half a graduation of what it answered', () => {
  const state = underWay(mm(70));
  const decided = decide(state, HOOKS, 'spread', { now }).state;
  const place = { work: 'hooks', field: 'bottom' };
  const asked = (text: string) => act(decided, { do: 'choose', place, parts: typed(text), now });
  expect(asked('2.54').state.answer.conflicts).toEqual([]);
  expect(asked('2.8').state.answer.conflicts).toHaveLength(1);
});

test('taking back that a mark was taken back is refused once it is made again', () => {
  const state = underWay(mm(70));
  const gone = act(state, { do: 'unmake', fact: 'b', now }).state;
  const undoing = { do: 'undo', change: gone.log.at(-1)?.id ?? 0, now } as const;
  expect(act(gone, undoing).refused).toBeUndefined();
  const again = act(gone, { do: 'make', home: HOOKS, id: 'c', tape, now }).state;
  expect(act(again, undoing).refused).toEqual({ why: 'made again', home: HOOKS });
});

test('made as shown, mark by mark, the rest stays where the way put it: no rounding is handed on', () => {
  const length = fc.integer({ min: 5000, max: 7000 });
  fc.assert(
    fc.property(length, fc.integer({ min: -9, max: 9 }), (opening, off) => {
      const fields = {
        opening: typed(String(opening / 100)),
        ...{ count: typed('6'), top: typed('1.2'), bottom: typed('2.5') },
      };
      const hooks = { name: 'Hooks', calculation: 'closures', rank: 1, fields };
      const press = (state: State, id: string, more = {}) =>
        act(state, { do: 'make', home: HOOKS, id, tape, now, ...more }).state;
      const places = (state: State) => {
        const result = state.answer.values.get(HOOKS);
        if (!result?.ok || typeof result.value !== 'object') throw new Error('no row');
        return result.value.marks.map(({ at }) => at);
      };
      const begun = press(begin(garmentOf({ works: { hooks } }), KNOWN), 'a');
      const second = (places(begun)[1] ?? 0) + off * tape;
      const state = press(begun, 'b', { measured: Math.round(second) });
      for (const { way } of waysOutOf(state, HOOKS)) {
        let going = decide(state, HOOKS, way, { now }).state;
        const shown = places(going);
        for (let rank = 2; rank < shown.length; rank++) {
          const open = places(going).slice(rank);
          for (const [i, at] of open.entries()) expect(at).toBeCloseTo(shown[rank + i] ?? 0, 0);
          going = press(going, `m${rank}`);
        }
      }
    }),
    { numRuns: 60, seed: 1441 },
  );
});
