import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { act } from '../../../src/garment/actions/act.ts';
import { begin, type State } from '../../../src/garment/actions/state.ts';
import { laidOutline } from '../../../src/garment/materials/lay-now.ts';
import { layIn, saidOfPiece } from '../../../src/garment/record/cloth-lay.ts';
import { homeOf } from '../../../src/garment/record/home.ts';
import {
  leastArea,
  leastLong,
  type PieceForm,
  type PieceSaid,
} from '../../../src/garment/record/piece-said.ts';
import { readRecord } from '../../../src/garment/record/read-record.ts';
import { sharedGarment } from '../../../src/garment/share/shared.ts';
import { mm } from '../../../src/lengths/length.ts';
import { fixture } from '../../fixtures/fixture.ts';
import { KNOWN } from '../trial/known.ts';
import { doing, garment, one, work } from './garments.ts';

const now = 5;
const cm = (amount: number) => mm(10 * amount);
/** Cut 43 × 65.5 (worked by hand): 1.5 either side, 1.5 above and 4 below. */
const front = work('piece', 'width=40&length=60&top=1.5&bottom=4&side=1.5&count=2');
const cloth = { width: cm(140) };
const FRONT = homeOf('front', '', 'count');
const skirt: PieceForm = {
  ...{ kind: 'four', long: cm(60), top: cm(20), bottom: cm(40) },
  slant: 'both',
};
type Set = { [Key in keyof PieceSaid]?: PieceSaid[Key] | undefined };
const say = (state: State, set: Set, need = FRONT) =>
  doing(state, { do: 'lay', id: 'cloth', piece: need, set, now });
const plain = () => garment({ front }, { cloth });
const of = (state: State) => one(state, 'cloth').lay?.of;

describe('what is said of laying a piece', () => {
  test('is what a lay is found for; without it all is as before', () => {
    const before = of(plain());
    const said = say(plain(), { outline: { form: skirt }, oneWay: true, tilt: 3, pair: true });
    expect(of(said)?.pieces[FRONT]).toEqual({
      ...{ count: 2, along: cm(65.5), across: cm(43), fold: false },
      ...{ outline: { form: skirt }, oneWay: true, tilt: 3, pair: true },
    });
    const back = { outline: undefined, oneWay: undefined, tilt: undefined, pair: undefined };
    const none = doing(said, { do: 'lay', id: 'cloth', piece: FRONT, set: back, now });
    expect(of(none)).toEqual(before);
    expect(none.record).not.toHaveProperty('lays');
  });

  test('what its edges take stands at the sides they are on: left, bottom, right, top', () => {
    const said = say(plain(), { outline: { form: skirt, adds: 'edges' } });
    const { outline } = of(said)?.pieces[FRONT] ?? {};
    expect(outline?.adds).toEqual([1.5, 4, 1.5, 1.5].map(cm));
    const points: PieceForm = {
      ...{ kind: 'points' },
      points: [
        [0, 0],
        [cm(60), 0],
        [0, cm(40)],
      ],
    };
    const all = say(plain(), { outline: { form: points, adds: 'edges' } });
    expect(of(all)?.pieces[FRONT]?.outline?.adds).toEqual([4, 4, 4].map(cm));
    const own = say(plain(), { outline: { form: points, adds: cm(1) } });
    expect(of(own)?.pieces[FRONT]?.outline?.adds).toEqual([1, 1, 1].map(cm));
  });

  test('where nobody knows what they take, a piece has no place in the lay, and comes on top of it', () => {
    // 15 × 17 with a hem of 2.5 and seams of 1 are cut 17 × 21.5; what is on which edge isn't known.
    const state = garment({ front, patch: work('pocket') }, { cloth });
    const patch = homeOf('patch', '', 'deep');
    expect(Object.keys(of(state)?.pieces ?? {})).toEqual([FRONT, patch]);
    const said = say(state, { outline: { form: skirt, adds: 'edges' } }, patch);
    expect(Object.keys(of(said)?.pieces ?? {})).toEqual([FRONT]);
    expect(laidOutline({ form: skirt, adds: 'edges' }, undefined)).toEqual({ form: skirt });
    const found = { length: cm(65.5), laid: [], of: of(said)! };
    const kept = doing(said, { do: 'lay', id: 'cloth', found, now });
    expect(one(kept, 'cloth')).toMatchObject({ bound: false, net: cm(65.5 + 21.5) });
  });

  test('another outline, or another hem, makes the lay that was found stale, with the piece named', () => {
    const said = say(plain(), { outline: { form: skirt, adds: 'edges' } });
    const found = { length: cm(70), laid: [], of: of(said)! };
    const kept = doing(said, { do: 'lay', id: 'cloth', found, now });
    expect(one(kept, 'cloth')).toMatchObject({ bound: false, net: cm(70) });
    const other = say(kept, { outline: { form: { ...skirt, top: cm(21) }, adds: 'edges' } });
    expect(one(other, 'cloth').lay?.stale?.pieces).toEqual([FRONT]);
    const parts = [{ text: '5', unit: 'cm' as const }];
    const hem = { do: 'choose', place: { work: 'front', field: 'bottom' }, parts, now } as const;
    expect(one(doing(kept, hem), 'cloth').lay?.stale?.pieces).toEqual([FRONT]);
  });

  describe('of a work done left and right', () => {
    const sides = ['left', 'right'];
    const single = work('piece', 'width=40&length=60&top=0&bottom=0&side=0&count=1', { sides });
    const [LEFT, RIGHT] = sides.map((side) => homeOf('front', side, 'count')) as [string, string];
    const both = (folded: boolean) =>
      say(garment({ front: single }, { cloth: { ...cloth, ...(folded && { folded }) } }), {
        pair: true,
      });
    const cut = (state: State, side: string) =>
      ['cut-width', 'cut-length'].reduce(
        (so, key) =>
          doing(so, { do: 'make', home: homeOf('front', side, key), id: key, tape: 8000, now }),
        state,
      );

    test('the second is the mirror image, also where the first was cut before', () => {
      const pieces = of(both(false))?.pieces ?? {};
      expect([pieces[LEFT]?.mirrored, pieces[RIGHT]?.mirrored]).toEqual([undefined, true]);
      const after = of(cut(both(false), 'left'))?.pieces ?? {};
      expect(Object.keys(after)).toEqual([RIGHT]);
      expect(after[RIGHT]?.mirrored).toBe(true);
    });

    test('on folded cloth both are one placing, cut at once, and nothing is wasted', () => {
      const state = both(true);
      expect(Object.entries(of(state)?.pieces ?? {})).toMatchObject([[LEFT, { count: 2 }]]);
      expect(one(state, 'cloth').lay?.needs.size).toBe(2);
      const laid = [{ id: LEFT, turn: 0, x: cm(30), y: cm(20) }];
      const found = { length: cm(60), laid, of: of(state)! };
      const kept = doing(state, { do: 'lay', id: 'cloth', found, now });
      expect(one(kept, 'cloth')).toMatchObject({ bound: false, net: cm(60) });
      // Whichever is said to be cut, its place stays, and it is not cut apart.
      for (const side of sides) {
        const { lay, net } = one(cut(kept, side), 'cloth');
        expect([lay?.fixed, lay?.gone, lay?.stale, net]).toEqual([laid, [], undefined, cm(60)]);
      }
      const near = doing(kept, {
        ...({
          do: 'choose',
          now,
          place: { work: 'front', field: 'width', side: 'right' },
        } as const),
        parts: [{ text: '40.1', unit: 'cm' }],
      });
      expect(of(near)?.pieces[LEFT]).toMatchObject({ count: 2, across: cm(40.1) });
      // Cut without a lay, the other is laid by itself.
      expect(Object.keys(of(cut(state, 'left'))?.pieces ?? {})).toEqual([RIGHT]);
      // Of different sizes each is laid by itself.
      const place = { work: 'front', field: 'width', side: 'right' };
      const parts = [{ text: '41', unit: 'cm' as const }];
      const wider = doing(kept, { do: 'choose', place, parts, now });
      expect(Object.keys(of(wider)?.pieces ?? {})).toEqual([LEFT, RIGHT]);
    });
  });

  test('what falls on the pattern, and one that comes again across it, are what a lay is found for', () => {
    const striped = garment({ front }, { cloth: { ...cloth, repeat: cm(8) } });
    const across = doing(striped, { do: 'lay', id: 'cloth', set: { repeatAcross: cm(6) }, now });
    const said = say(across, { match: [cm(10), 0] });
    expect(of(said)).toMatchObject({ repeat: cm(8), repeatAcross: cm(6) });
    const found = { length: cm(72), laid: [], of: of(said)! };
    const kept = doing(said, { do: 'lay', id: 'cloth', found, now });
    // One repeat more is bought.
    expect(one(kept, 'cloth')).toMatchObject({ bound: false, net: cm(80) });
    expect(one(say(kept, { match: undefined }), 'cloth').lay?.stale?.pieces).toEqual([FRONT]);
    const wide = doing(kept, { do: 'lay', id: 'cloth', set: { repeatAcross: cm(7) }, now });
    expect(one(wide, 'cloth').lay?.stale?.cloth).toBe(true);
  });

  test('what can’t be kept is refused, and nothing is written', () => {
    const state = plain();
    const point = [0, 0] as const;
    const points = Array.from({ length: 201 }, () => point);
    for (const set of [
      { outline: { form: { kind: 'points', points } } },
      { outline: { form: { ...skirt, long: -1 } } },
      { tilt: 6 },
      { match: [0.5, 0] },
    ] as unknown as PieceSaid[]) {
      const done = act(state, { do: 'lay', id: 'cloth', piece: FRONT, set, now });
      expect(done.refused).toEqual({ why: 'limit', limit: 'outline' });
      expect(done.state).toBe(state);
    }
  });

  test('what a newer build wrote stays and is handed back; what can’t be read is not worked with', () => {
    const newer = { outline: { form: { kind: 'spline', knots: [1] } }, oneWay: true, fur: 'long' };
    const record = { ...plain().record, lays: { cloth: { pieces: { [FRONT]: newer } } } };
    const read = readRecord(JSON.parse(JSON.stringify(record)));
    if (!read.ok) throw new Error('refused');
    expect(saidOfPiece(layIn(read.value, 'cloth'), FRONT)).toEqual({ oneWay: true });
    const state = say({ ...plain(), record: read.value }, { tilt: 2 });
    expect(state.record.lays).toEqual({ cloth: { pieces: { [FRONT]: { ...newer, tilt: 2 } } } });
    for (const pieces of [[7], { [FRONT]: 'spline' }, { [FRONT]: [7] }]) {
      const odd = { ...plain(), record: { ...record, lays: { cloth: { pieces } } } };
      const done = act(odd, { do: 'lay', id: 'cloth', piece: FRONT, set: { tilt: 2 }, now });
      expect(done.refused).toEqual({ why: 'not there', what: 'work' });
    }
  });

  test('a link has it, without what isn’t known of it', () => {
    const newer = { ...skirt, secret: 1 } as PieceForm;
    const outline = { form: newer, adds: cm(1), secret: 2 };
    const said = say(plain(), { outline, pair: true });
    const wish = { bodies: false, notes: false, times: false, goOn: false, knownOnly: true };
    const { lays } = sharedGarment(said, wish, 'c', () => '');
    expect(lays).toEqual({
      cloth: { pieces: { [FRONT]: { outline: { form: skirt, adds: cm(1) }, pair: true } } },
    });
  });
});

describe('no less cloth than an outline takes', () => {
  test('a trapezoid: half the sum of its widths times its length; bowed in, less', () => {
    expect(leastArea(skirt)).toBe(cm(60) * cm(30));
    expect(leastLong(skirt)).toBe(cm(60));
    // A hollow of 2 over a top of 20 takes less than 2 × 20 away.
    expect(leastArea({ ...skirt, bows: [0, 0, 0, -cm(2)] })).toBe(cm(60) * cm(30) - cm(2) * cm(20));
    expect(leastArea({ kind: 'points', points: [[0, 0]] })).toBe(0);
  });

  test('turned or begun elsewhere it is as much', () => {
    const place = fc.tuple(fc.integer({ min: 0, max: 9e6 }), fc.integer({ min: 0, max: 9e6 }));
    fc.assert(
      fc.property(fc.array(place, { minLength: 3, maxLength: 9 }), fc.nat(8), (points, by) => {
        const on = by % points.length;
        const other = [...points.slice(on), ...points.slice(0, on)].reverse();
        const [one, two] = [points, other].map((of) => leastArea({ kind: 'points', points: of }));
        expect(two).toBeCloseTo(one ?? 0, 0);
      }),
    );
  });
});

test('a lay that an earlier build found still holds, with all that was said of it', () => {
  const read = readRecord(fixture('lay-91076c1.json'));
  if (!read.ok) throw new Error('refused');
  const state = begin(read.value, KNOWN);
  const { net, bound, lay } = one(state, 'cloth');
  expect([net, bound, lay?.stale, lay?.fixed.length]).toEqual([cm(115.5), false, undefined, 1]);
  expect(lay?.of).toMatchObject({ nap: true, flaws: [{ along: cm(100) }] });
  const shaped = say(state, { tilt: 2 });
  expect(one(shaped, 'cloth').lay?.stale?.pieces).toEqual([FRONT]);
});
