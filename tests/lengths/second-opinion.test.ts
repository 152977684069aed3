/**
 * The reader against a second implementation: fraction.js, an exact-fraction
 * library. Expressions are made from a seed, each as text and, apart from it, as
 * fraction.js's own value; the two must agree to the last unit.
 */
import Fraction from 'fraction.js';
import { expect, test } from 'vitest';

import { readLength } from '../../src/lengths/read-length.ts';
import type { BenchUnit } from '../../src/lengths/unit.ts';
import { timesTried } from '../thorough.ts';

const EXPRESSIONS = process.env.MUTANTS ? 1_000 : timesTried(20_000);

/** Millimetres, stated here again: NBS Circular 572 for the inch, 40 button lines to it. */
const MILLIMETRES = {
  mm: '1',
  cm: '10',
  m: '1000',
  in: '25.4',
  inches: '25.4',
  '"': '25.4',
  '″': '25.4',
  ft: '304.8',
  '′': '304.8',
  yd: '914.4',
  yards: '914.4',
  L: '0.635',
  lines: '0.635',
};
type Written = keyof typeof MILLIMETRES;

interface Made {
  text: string;
  value: Fraction;
}

/** Numbers from 0 up to a limit, the same ones on every run. */
function dice(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state * 48_271) % 2_147_483_647;
    return state % below;
  };
}

function maker(roll: (below: number) => number) {
  const pick = <T>(all: readonly T[]): T => all[roll(all.length)] as T;
  const space = () => pick(['', ' ', ' ', '  ', '\u00a0']);

  function amount(): Made {
    const whole = roll(40);
    const under = pick([2, 3, 4, 5, 7, 8, 16, 32, 64]);
    const over = 1 + roll(under - 1);
    // Three that end in a nought may be thousands, and are asked about.
    const decimals = String(roll(10_000))
      .slice(0, 1 + roll(4))
      .replace(/^(\d\d)0$/, '$11');
    switch (roll(6)) {
      case 0:
        return { text: `${whole}`, value: new Fraction(whole) };
      case 1: {
        const text = `${whole}${pick(['.', ','])}${decimals}`;
        return { text, value: new Fraction(text.replace(',', '.')) };
      }
      case 2:
        return { text: `${pick(['.', ','])}${decimals}`, value: new Fraction(`0.${decimals}`) };
      case 3: {
        const text = `${over}${pick(['/', '⁄', '∕', ' / '])}${under}`;
        return { text, value: new Fraction(`${over}/${under}`) };
      }
      case 4: {
        const text = `${whole}${pick([' ', '-', '  '])}${over}${pick(['/', '⁄'])}${under}`;
        return { text, value: new Fraction(`${whole} ${over}/${under}`) };
      }
      default: {
        const [sign, vulgar] = pick([
          ['½', '1/2'],
          ['⅝', '5/8'],
          ['⅓', '1/3'],
          ['⅞', '7/8'],
        ] as const);
        return {
          text: `${whole}${pick(['', ' ', '-'])}${sign}`,
          value: new Fraction(`${whole} ${vulgar}`),
        };
      }
    }
  }

  /** A length in millimetres, plain or of two units. */
  function measured(): Made {
    const one = (written: Written): Made => {
      const { text, value } = amount();
      return { text: `${text}${space()}${written}`, value: value.mul(MILLIMETRES[written]) };
    };
    if (roll(5) > 0) return one(pick(Object.keys(MILLIMETRES) as Written[]));
    const [large, small] = pick([
      ['m', 'cm'],
      ['cm', 'mm'],
      ['yd', 'in'],
      ['ft', 'in'],
      ['′', '″'],
    ] as const);
    const first = one(large);
    const second = one(small);
    return { text: `${first.text} ${second.text}`, value: first.value.add(second.value) };
  }

  /** A term in millimetres: at most one length in it, and no division by a length or nought. */
  function term(bare: BenchUnit): Made {
    const isLength = roll(3) > 0;
    let made = isLength ? measured() : amount();
    const before = isLength ? roll(2) : 0;
    for (let i = 0; i < before; i++) {
      const by = amount();
      made = { text: `${by.text}${times()}${made.text}`, value: made.value.mul(by.value) };
    }
    for (let i = roll(3); i > 0; i--) {
      const by = amount();
      if (roll(2) === 0 && !by.value.equals(0)) {
        made = {
          text: `${made.text}${space()}÷${space()}${by.text}`,
          value: made.value.div(by.value),
        };
      } else {
        made = { text: `${made.text}${times()}${by.text}`, value: made.value.mul(by.value) };
      }
    }
    return isLength ? made : { ...made, value: made.value.mul(MILLIMETRES[bare]) };
  }
  const times = () => `${space()}${pick(['×', '*', 'x', '·'])}${space()}`;

  /** A sum in brackets in place of a length, so that it has a unit of its own. */
  function bracketed(bare: BenchUnit, depth: number): Made {
    const { text, value } = sum(bare, depth - 1);
    const by = 1 + roll(9);
    const inside = `(${space()}${text} + 0 mm${space()})`;
    return roll(2) === 0
      ? { text: `${inside} ÷ ${by}`, value: value.div(by) }
      : { text: `${by}${times()}${inside}`, value: value.mul(by) };
  }

  return function first(bare: BenchUnit): Made {
    return sum(bare, roll(3));
  };

  function sum(bare: BenchUnit, depth: number): Made {
    let made = depth > 0 ? bracketed(bare, depth) : term(bare);
    if (roll(6) === 0) {
      made = { text: `${pick(['-', '−', '– '])}${made.text}`, value: made.value.neg() };
    }
    for (let i = roll(4); i > 0; i--) {
      const next = term(bare);
      if (roll(2) === 0) {
        made = {
          text: `${made.text}${space()}+${space()}${next.text}`,
          value: made.value.add(next.value),
        };
      } else {
        const minus = pick([' - ', '−', ' − ', ' – ']);
        made = { text: `${made.text}${minus}${next.text}`, value: made.value.sub(next.value) };
      }
    }
    return made;
  }
}

/** Whole 1/8000 mm, midway to the even one, by fraction.js's own arithmetic. */
function wholeUnits(millimetres: Fraction): number {
  const units = millimetres.mul(8000);
  const below = units.floor();
  const side = units.sub(below).compare('1/2');
  const up = side > 0 || (side === 0 && below.mod(2).compare(0) !== 0);
  return Number((up ? below.add(1) : below).toString());
}

test(`${EXPRESSIONS} expressions agree with fraction.js`, () => {
  const roll = dice(20_240_229);
  const sum = maker(roll);
  let rounded = 0;
  for (let i = 0; i < EXPRESSIONS; i++) {
    const bare = (['mm', 'cm', 'in'] as const)[roll(3)] as BenchUnit;
    const { text, value } = sum(bare);
    const units = value.mul(8000);
    const reading = readLength(text, bare);
    const label = `${i}: ${text} (${bare})`;
    if (text.length > 200) {
      expect(reading, label).toMatchObject({ ok: false, fault: { kind: 'too-much-text' } });
    } else if (value.abs().compare(1_000_000) > 0) {
      expect(reading, label).toMatchObject({ ok: false, fault: { kind: 'too-long' } });
    } else {
      const exact = units.equals(units.floor());
      if (!exact) rounded++;
      expect(reading, label).toEqual({ ok: true, value: wholeUnits(value) + 0, exact });
    }
  }
  // Guards the generator: both kinds must really occur.
  expect(rounded).toBeGreaterThan(EXPRESSIONS / 10);
  expect(rounded).toBeLessThan(EXPRESSIONS * 0.9);
});
