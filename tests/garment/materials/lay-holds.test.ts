import { describe, expect, test } from 'vitest';
import type { State } from '../../../src/garment/actions/state.ts';
import { cutSize, layNow } from '../../../src/garment/materials/lay-now.ts';
import type { FoundLay, PlacedPiece } from '../../../src/garment/record/cloth-lay.ts';
import { homeOf } from '../../../src/garment/record/home.ts';
import type { PieceForm, PieceSaid } from '../../../src/garment/record/piece-said.ts';
import type { Work } from '../../../src/garment/record/record.ts';
import { mm } from '../../../src/lengths/length.ts';
import { typed } from '../trial/garments.ts';
import { doing, garment, one, work } from './garments.ts';

const now = 5;
const cm = (amount: number) => mm(10 * amount);
const piece = (wide: number | string, long: number, more = 'count=1', set?: Partial<Work>) =>
  work('piece', `width=${wide}&length=${long}&top=0&bottom=0&side=0&${more}`, set);
const FRONT = homeOf('front', '', 'count');
const SIDES = ['left', 'right'];
const at = (id: string, x: number, y: number): PlacedPiece => ({ id, turn: 0, x: cm(x), y: cm(y) });
const of = (state: State) => one(state, 'cloth').lay?.of;
const pieces = (state: State) => of(state)?.pieces ?? {};
const keep = (state: State, long: number, more?: Partial<FoundLay>) =>
  doing(state, {
    ...{ do: 'lay', id: 'cloth', now },
    found: { length: cm(long), laid: [], of: of(state)!, ...more },
  });
const say = (state: State, set: PieceSaid, work = 'front') =>
  doing(state, { do: 'lay', id: 'cloth', piece: homeOf(work, '', 'count'), set, now });
const make = (of: string, key: string, more: object = {}) =>
  ({ do: 'make', home: homeOf(of, '', key), id: `${of}${key}`, tape: 8000, now, ...more }) as const;

describe('left and right of a pair', () => {
  const pair = (works: Readonly<Record<string, Work>>, cloth: object = {}) =>
    Object.keys(works).reduce(
      (state, work) => say(state, { pair: true }, work),
      garment(works, { cloth: { width: cm(140), ...cloth } }),
    );
  /** What is laid, by side: how many at once. */
  const laid = (state: State) =>
    Object.entries(pieces(state)).map(([home, { count, mirrored }]) => [home, count, mirrored]);
  const home = (side: string, work = 'front') => homeOf(work, side, 'count');

  test('are two by two through folded cloth, each with its own other', () => {
    const sides = ['a', 'b', 'c', 'd', 'e'];
    const works = { back: piece(20, 30, 'count=1', { sides }), front: piece(20, 30) };
    const front = { ...works.front, sides: SIDES };
    expect(laid(pair({ ...works, front }, { folded: true }))).toEqual([
      [home('a', 'back'), 2, undefined],
      [home('c', 'back'), 2, undefined],
      [home('e', 'back'), 1, undefined],
      [home('left'), 2, undefined],
    ]);
  });

  test('are each laid by itself where nobody said they are a pair, or on open cloth', () => {
    const front = piece(20, 30, 'count=1', { sides: SIDES });
    const back = piece(30, 30);
    const folded = garment({ back, front }, { cloth: { width: cm(140), folded: true } });
    expect(laid(folded)).toEqual([
      [homeOf('back', '', 'count'), 1, undefined],
      [home('left'), 1, undefined],
      [home('right'), 1, undefined],
    ]);
    // The other of the pair is its mirror image, whatever else lies on the cloth.
    expect(laid(pair({ back, front }))).toEqual([
      [homeOf('back', '', 'count'), 1, undefined],
      [home('left'), 1, undefined],
      [home('right'), 1, true],
    ]);
    // Of each side two, that are a pair already.
    const twice = pair({ front: piece(20, 30, 'count=2', { sides: SIDES }) });
    expect(Object.values(pieces(twice))).toMatchObject([{ pair: true }, { pair: true }]);
    expect(laid(twice).map(([, , mirrored]) => mirrored)).toEqual([undefined, undefined]);
  });

  const EACH: readonly [string, string, string, number][] = [
    ['alike', '', '', 1],
    ['two of each', 'count=2', 'count=2', 2],
    ['two of one', 'count=2', '', 2],
    ['two of the other', '', 'count=2', 2],
    ['one on the fold', 'fold=side', '', 2],
    ['the other on the fold', '', 'fold=side', 2],
    ['both on the fold', 'fold=side', 'fold=side', 2],
    ['one longer', 'length=35', '', 2],
    ['one wider', '', 'width=25', 2],
    // 1/16 in: no cut is known better.
    ['one wider by no more than cutting is', '', 'width=20.15875', 1],
    ['one wider by more', '', 'width=20.159', 2],
  ];
  test.each(EACH)('are cut at once where they are alike: %s', (_, left, right, places) => {
    const own = Object.fromEntries(
      [left, right].map((query, i) => {
        const pairs = query.split('&').filter(Boolean);
        const fields = pairs.map((one) => one.split('=') as [string, string]);
        return [SIDES[i], Object.fromEntries(fields.map(([key, text]) => [key, typed(text)]))];
      }),
    );
    const front = piece(20, 30, 'count=1&fold=', { sides: SIDES, own });
    expect(laid(pair({ front }, { folded: true }))).toHaveLength(places);
  });
});

describe('what is cut counts as it was laid', () => {
  const cut = (state: State, more?: object) =>
    doing(state, make('front', 'cut-width', more), make('front', 'cut-length'));
  const laid = [at(FRONT, 30, 20)];
  const begin = (query?: string) =>
    keep(garment({ front: piece(40, 60, query) }, { cloth: { width: cm(140) } }), 60, { laid });
  const stale = (state: State) => one(state, 'cloth').lay?.stale?.pieces;

  test('unless it took more cloth than cutting may be off', () => {
    expect(stale(cut(begin()))).toBeUndefined();
    // Half a millimetre of it is the tape’s.
    const most = cm(40) + 12_700 - 4000;
    expect(stale(cut(begin(), { measured: most }))).toBeUndefined();
    expect(stale(cut(begin(), { measured: most + 1 }))).toEqual([FRONT]);
  });

  test.each([
    ['how many', 'count=1', 'count', '2'],
    // The half of 20 that was cut is the whole of it then.
    ['no longer on the fold', 'count=1&fold=side', 'fold', 'none'],
  ])('unless it is otherwise: %s', (_, query, field, text) => {
    const parts = [{ text, unit: 'cm' as const }];
    const place = { work: 'front', field };
    const other = doing(cut(begin(query)), { do: 'choose', place, parts, now });
    expect(one(other, 'cloth').lay?.needs.size).toBe(1);
    expect(stale(other)).toEqual([FRONT]);
  });

  test('where it was cut, though the maker had put it elsewhere', () => {
    const held = [at(FRONT, 30, 100), at('gone||count', 30, 50)];
    const put = doing(begin(), { do: 'lay', id: 'cloth', set: { held }, now });
    expect(one(put, 'cloth').lay?.fixed).toEqual(held.slice(0, 1));
    expect(one(cut(put), 'cloth').lay).toMatchObject({ fixed: laid, stale: undefined });
  });
});

test('a lay stays where it isn’t known any more how wide the cloth is, and doesn’t hold', () => {
  const state = keep(garment({ front: piece(40, 60) }, { cloth: { width: cm(140) } }), 60);
  const none = doing(state, { do: 'material', id: 'cloth', set: { width: undefined }, now });
  const { lay, bound, net } = one(none, 'cloth');
  expect(lay?.of).toBeUndefined();
  expect(lay?.stale).toEqual({ pieces: [FRONT], cloth: false, held: false });
  expect([bound, net]).toEqual([true, 0]);
});

describe('no lay is believed that is shorter than its pieces can be', () => {
  /** Whether a lay of so many cm counts. */
  const holds = (state: State, long: number) => !one(keep(state, long), 'cloth').bound;
  const on = (width: number, front: Work) => garment({ front }, { cloth: { width: cm(width) } });

  test('than all of them together on its width', () => {
    // 3 × 30 × 40 on 60 are 60, though none is longer than 40.
    const state = on(60, piece(30, 40, 'count=3'));
    expect([holds(state, 59.9), holds(state, 60)]).toEqual([false, true]);
  });

  const skirt: PieceForm = {
    ...{ kind: 'four', long: cm(40), top: cm(10), bottom: cm(30), slant: 'both' },
  };
  test('of an outline its own cloth counts, and not the rectangle round it', () => {
    const state = say(on(60, piece(30, 44, 'count=6')), { outline: { form: skirt } });
    // 6 × 40 × (10 + 30)/2 on 60.
    expect([holds(state, 79.9), holds(state, 80)]).toEqual([false, true]);
    // Half of it is entered where it is on the fold.
    const fold = on(60, piece(60, 44, 'count=6&fold=side'));
    const both = say(fold, { outline: { form: skirt } });
    expect([holds(both, 159.9), holds(both, 160)]).toEqual([false, true]);
    const single = say(on(60, piece(30, 44, 'count=1')), { outline: { form: skirt } });
    expect([holds(single, 39.9), holds(single, 40)]).toEqual([false, true]);
  });

  test('than the longest of them, that may lie a little off the grain where that is said', () => {
    const straight = on(140, piece(30, 100));
    expect([holds(straight, 99.9), holds(straight, 100)]).toEqual([false, true]);
    // 100 × cos 5° is 99.62.
    const tilted = say(straight, { tilt: 2 });
    expect([holds(tilted, 99.6), holds(tilted, 99.63)]).toEqual([false, true]);
  });
});

describe('what has no place in any lay', () => {
  test('is what is sold by length: nobody looks for one', () => {
    const strip = work('edging', 'length=62.4&width=1.2&pitch=8 mm&end=0.4');
    const served = one(garment({ strip }), 'strip|strip||cut-strip');
    const { of, needs } = layNow(served, {});
    expect([of, needs.size]).toEqual([undefined, 0]);
  });

  test('is what isn’t known to be of any size, or of which there is none', () => {
    const served = one(garment({ front: piece(40, 60) }, { cloth: {} }), 'cloth');
    const [need] = served.needs;
    if (!need?.size) throw new Error('no piece');
    const sized = (set: object) => cutSize(served, { ...need, size: { ...need.size!, ...set } });
    expect(sized({})).toEqual({ count: 1, along: cm(60), across: cm(40), fold: false });
    // Never smaller than it is.
    expect(sized({ along: cm(60) + 0.5 })?.along).toBe(cm(60) + 1);
    for (const none of [{ count: 0 }, { along: undefined }, { across: undefined }]) {
      expect(sized(none)).toBeUndefined();
    }
    expect(cutSize(served, { ...need, size: undefined })).toBeUndefined();
  });
});
