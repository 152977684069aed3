import { describe, expect, test } from 'vitest';
import { homeOf } from '../../../src/garment/record/home.ts';
import { MOST_SPARE } from '../../../src/garment/record/material.ts';
import { LONGEST, mm } from '../../../src/lengths/length.ts';
import { doing, garment, materials, one, work } from './garments.ts';

const now = 5;
const cm = (amount: number) => mm(10 * amount);
const cloth = { width: cm(140) };
const hooks = work('closures', 'opening=46.3&count=7&top=1.2&bottom=2.5');
const HOOKS = 'closure|hooks||count';
const front = work('piece', 'width=40&length=60&top=0&bottom=0&side=0&count=1');
const bound = work('seam', 'what=finish&given=1.5&finish=bound&edge=500');
const STRIP = homeOf('bound', '', 'strip');
const ids = (...given: Parameters<typeof garment>) =>
  materials(garment(...given)).all.map(({ id }) => id);

describe('the order they are listed in', () => {
  test('is cloth first, then as the work takes them, and last what none takes', () => {
    const said = { n1: { kind: 'other', rank: 1 }, lining: { kind: 'cloth', rank: 9 } };
    // Hooks are sewn on after the front is cut, whichever work was added first.
    expect(ids({ hooks, front }, said)).toEqual(['cloth', 'lining', HOOKS, 'n1']);
    const lace = work('edging', 'length=62.4&width=1.2');
    expect(ids({ hooks, lace }, { lining: said.lining })).toEqual([
      ...['lining', 'strip|lace||cut-strip', HOOKS],
    ]);
  });

  test('is that of what takes them, also where the maker added one later', () => {
    const other = work('closures', 'opening=30&count=5&top=1&bottom=2');
    const buttons = { kind: 'closure', rank: 4, serves: { [homeOf('hooks', '', 'count')]: true } };
    expect(ids({ hooks, other }, { buttons })).toEqual(['buttons', 'closure|other||count']);
  });

  test('of those the maker added is the one they were added in', () => {
    const added = (rank?: number) => ({ kind: 'other', ...(rank !== undefined && { rank }) });
    const said = { c: added(3), b: added(-1), a: added(3), z: added(), y: added() };
    const sorted = ['b', 'y', 'z', 'a', 'c'];
    expect(ids({}, said)).toEqual(sorted);
    expect(ids({}, Object.fromEntries(Object.entries(said).reverse()))).toEqual(sorted);
  });
});

describe('what could be taken of a material', () => {
  test('is what is measured as it is: pieces of cloth, and of what is sold by length their lengths', () => {
    const lace = work('lacing');
    const facing = work('facing', 'depth=4&seam=1&turn=0.6');
    const state = garment(
      { front, facing, hooks, lace },
      { cloth, n1: { kind: 'lace', rank: 1 }, n2: { kind: 'other', rank: 2 } },
    );
    const could = (id: string) => one(state, id).could.map((need) => need.work);
    expect(could('cloth')).toEqual(['front', 'facing']);
    expect(could('n1')).toEqual(['front', 'facing', 'lace']);
    expect(could('n2')).toEqual(['hooks']);
  });

  test('goes to it where that is said; what was its own and has more wanted is still shown', () => {
    const other = work('closures', 'opening=30&count=5&top=1&bottom=2');
    const own = 'closure|other||count';
    const serves = { [homeOf('other', '', 'count')]: true };
    expect(ids({ hooks, other }, { [HOOKS]: { serves } })).toEqual([HOOKS]);
    const state = garment({ hooks, other }, { [HOOKS]: { serves }, [own]: { more: 3 } });
    expect(one(state, own)).toMatchObject({ net: 3, needs: [] });
  });
});

describe('a tape has its own width, and is no cloth', () => {
  const tape = { kind: 'tape', rank: 1, width: cm(2), serves: { [STRIP]: true } };

  test('a strip that is taken of it is as long as it is; nothing is cut across it', () => {
    const state = garment({ bound }, { tape });
    expect(one(state, 'tape')).toMatchObject({
      ...{ form: 'length', net: cm(500), bias: 0, unsure: [], lay: undefined },
    });
  });
});

describe('whether all of it is there', () => {
  test('is said of nothing that nothing was said of; it stops no work', () => {
    const state = garment({ hooks }, { lining: { kind: 'cloth' } });
    expect(one(state, HOOKS)).toMatchObject({ ticked: false, lacks: 7, stops: [] });
    // There is nothing to have of it, and nobody has looked.
    expect(one(state, 'lining')).toMatchObject({ ticked: false, lacks: 0, unsure: [] });
  });

  test('nor while it isn’t sure how much is wanted', () => {
    const said = { width: cm(30), there: cm(500), price: { cents: 100, per: cm(100) } };
    const state = garment({ front }, { cloth: said });
    expect(one(state, 'cloth')).toMatchObject({
      ...{ ticked: false, lacks: 0, cents: undefined, left: undefined },
    });
    expect(materials(state)).toMatchObject({ cents: 0, left: 0, without: 1 });
  });

  test('what has no price is counted, so that the sum isn’t taken for all', () => {
    const price = { cents: 250, per: 1 };
    const state = garment({ hooks, front }, { cloth, [HOOKS]: { price } });
    expect(materials(state)).toMatchObject({ cents: 1750, left: 1750, without: 1 });
  });

  test('more than can be reckoned is no number to buy', () => {
    const thread = { kind: 'other', rank: 1, more: LONGEST, spare: MOST_SPARE };
    expect(one(garment({}, { thread }), 'thread')).toMatchObject({
      ...{ buy: 0, unsure: [{ why: 'too much' }], ticked: false },
    });
    const wide = { ...thread, kind: 'cloth', serves: { [homeOf('front', '', 'count')]: true } };
    expect(one(garment({ front }, { wide }), 'wide').unsure.map(({ why }) => why)).toEqual([
      ...['no width', 'too much'],
    ]);
  });
});

test('a material is made when all is that is taken of it, and what nothing is taken of never is', () => {
  const make = (of: string, key: string) =>
    ({ do: 'make', home: homeOf(of, '', key), id: `${of}${key}`, tape: 8000, now }) as const;
  const cutOut = (of: string) => [make(of, 'cut-width'), make(of, 'cut-length')];
  const back = front;
  const state = garment({ front, back }, { cloth, lining: { kind: 'cloth' } });
  expect(one(state, 'lining').state).toBe('planned');
  expect(one(state, 'cloth').state).toBe('planned');
  const half = doing(state, ...cutOut('front'));
  expect(one(half, 'cloth').state).toBe('partly made');
  expect(one(doing(half, ...cutOut('back')), 'cloth').state).toBe('made');
});
