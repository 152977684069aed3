import { describe, expect, test } from 'vitest';
import { biasCloth } from '../../../src/garment/materials/bias-cloth.ts';
import type { Need } from '../../../src/garment/materials/need.ts';
import { rowsOf } from '../../../src/garment/materials/net.ts';
import { homeOf } from '../../../src/garment/record/home.ts';
import { exactLength, length, mm } from '../../../src/lengths/length.ts';
import { biasFor } from '../../../src/sewing/cloth/bias.ts';
import { garment, one, work } from './garments.ts';

const cm = (amount: number) => mm(10 * amount);
const piece = (wide: number, long: number, count: number) =>
  work('piece', `width=${wide}&length=${long}&top=0&bottom=0&side=0&count=${count}`);
/** How much cloth works take, of cloth of which this is said. */
const net = (works: Parameters<typeof garment>[0], cloth: object) =>
  one(garment(works, { cloth }), 'cloth').net;

describe('pieces in rows', () => {
  test('on folded cloth are cut in twos, and lie on half its width', () => {
    const works = { a: piece(30, 50, 3) };
    // Open, three lie side by side; folded, one of two placings to a row of 50.
    expect(net(works, { width: cm(100) })).toBe(cm(50));
    expect(net(works, { width: cm(100), folded: true })).toBe(cm(100));
  });

  test('are so long open or folded; nobody knows on cloth of no width', () => {
    const state = (cloth: object) => one(garment({ a: piece(30, 50, 3) }, { cloth }), 'cloth');
    const long = (cloth: object) =>
      [false, true].map((folded) => rowsOf(state(cloth), state(cloth).needs, folded));
    expect(long({ width: cm(100) })).toEqual([cm(50), cm(100)]);
    expect(long({})).toEqual([undefined, undefined]);
  });

  test('that are just as long as repeats take no more of them, and there is one to begin anew', () => {
    const repeat = cm(24);
    expect(net({ a: piece(30, 48, 1) }, { width: cm(100), repeat })).toBe(cm(48 + 24));
    expect(net({ a: piece(30, 48.1, 1) }, { width: cm(100), repeat })).toBe(cm(72 + 24));
  });
});

describe('a strip as long as an edge that nobody said', () => {
  const facing = work('facing', 'depth=4&seam=1&turn=0.6');
  const bound = work('seam', 'what=finish&given=1.5&finish=bound');
  const serves = {
    [homeOf('facing', '', 'facing-deep')]: true,
    [homeOf('bound', '', 'strip')]: true,
  };

  test('takes nothing yet, and nothing else is the matter with it', () => {
    const cloth = { width: cm(140), repeat: cm(24), serves };
    const both = one(garment({ facing, bound }, { cloth: { ...cloth, kind: 'cloth' } }), 'cloth');
    expect(both.unsure.map(({ why }) => why)).toEqual(['no length', 'no length']);
    expect([both.net, both.bias]).toEqual([0, 0]);
  });

  test('is laid once it is said, and a bias strip cut; on cloth of no width it can’t be known', () => {
    const long = Object.fromEntries(Object.keys(serves).map((key) => [key, cm(80)]));
    const said = { kind: 'cloth', serves, long };
    const now = one(garment({ facing, bound }, { n1: { ...said, width: cm(140) } }), 'n1');
    expect(now).toMatchObject({ net: cm(80) + now.bias, unsure: [] });
    expect(Object.values(now.lay?.of?.pieces ?? {})).toMatchObject([{ along: cm(80), count: 1 }]);
    const bare = one(garment({ facing, bound }, { n1: said }), 'n1');
    expect(bare).toMatchObject({ net: 0, bias: 0, unsure: [{ why: 'no width' }] });
    expect(bare.lay?.of).toBeUndefined();
  });
});

test('cloth that nothing is taken of needs no width', () => {
  expect(one(garment({}, { n1: { kind: 'cloth' } }), 'n1')).toMatchObject({ net: 0, unsure: [] });
});

describe('bias strips of several widths', () => {
  const strip = (wide: number, long: number) => ({ need: {} as Need, wide, long });
  /** The cloth for so much strip by itself, as the calculation of it says. */
  const alone = (wide: number, long: number) => {
    const found = biasFor(
      { width: length(wide), cloth: cm(86), shortest: cm(10), seam: mm(6) },
      length(long),
    );
    if (!found.ok) throw new Error('no strip');
    return exactLength(found.value);
  };

  test('are cut together as the widest where a fold of cloth differs by more, whichever comes first', () => {
    // 1/16 in.
    const fold = 12_700;
    const [narrow, wide] = [strip(cm(2.5), cm(300)), strip(cm(2.5) + fold, cm(200))];
    const together = alone(cm(2.5) + fold, cm(500));
    expect(biasCloth([narrow, wide], cm(86))).toEqual({ long: together, cannot: [] });
    expect(biasCloth([wide, narrow], cm(86)).long).toBe(together);
    const wider = strip(cm(2.5) + fold + 1, cm(200));
    const apart = alone(cm(2.5), cm(300)) + alone(cm(2.5) + fold + 1, cm(200));
    expect(biasCloth([narrow, wider], cm(86)).long).toBe(apart);
  });

  test('each width by itself; of cloth too narrow for any strip all of them are named', () => {
    const all = [strip(cm(2.5), cm(300)), strip(cm(6), cm(100)), strip(cm(2.5), cm(50))];
    expect(biasCloth(all, cm(86))).toEqual({
      ...{ long: alone(cm(2.5), cm(350)) + alone(cm(6), cm(100)), cannot: [] },
    });
    const none = biasCloth(all, cm(6));
    expect(none.long).toBe(0);
    expect(none.cannot).toHaveLength(3);
    expect(biasCloth([], cm(86))).toEqual({ long: 0, cannot: [] });
  });
});
