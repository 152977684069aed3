import { expect, test } from 'vitest';
import { act } from '../../src/garment/actions/act.ts';
import { linksFor, type Offered } from '../../src/garment/actions/links-for.ts';
import { begin } from '../../src/garment/actions/state.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { mm } from '../../src/lengths/length.ts';
import { garment, work } from './materials/garments.ts';
import { garmentOf, output, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';
import { randomGarment, SHAPES } from './trial/random-garment.ts';

const now = 5;
const named = ({ name, output: of, of: side }: Offered) =>
  [name, of, side].filter(Boolean).join(' · ');

/** A back whose bottom is its hem's, whose cut length another hem takes. Invented. */
const back = garmentOf({
  quantities: {
    long: { name: 'Back length', kind: 'length', rank: 1, parts: typed('60') },
    seven: { name: 'Hooks', kind: 'count', rank: 2, parts: typed('7') },
  },
  works: {
    hem: { name: 'Back hem', calculation: 'toy-hem', rank: 1, fields: { depth: typed('2') } },
    back: {
      name: 'Back',
      calculation: 'toy-piece',
      rank: 2,
      fields: {
        length: [quantity('long')],
        bottom: [output('hem', 'allowance')],
        width: typed('30'),
      },
    },
  },
});

test('a field is offered what fits it, nearest by stage and then by name, with its number of now', () => {
  const offered = linksFor(begin(back, KNOWN), { work: 'hem', field: 'round' });
  expect(offered.map(named)).toEqual([
    'Back · Cut length',
    'Back · Cut width',
    'Back · Finished length',
    'Back length',
  ]);
  expect(offered[0]).toMatchObject({ kind: 'length', value: mm(620) });
});

test('nothing that comes through the field itself: what is offered can be taken', () => {
  const state = begin(back, KNOWN);
  const place = { work: 'hem', field: 'depth' };
  const names = linksFor(state, place).map(named);
  expect(names).not.toContain('Back · Cut length');
  expect(names).toContain('Back · Cut width');
  const long = linksFor(state, { quantity: 'long' }).map(named);
  expect(long).toContain('Back hem · Allowance');
  expect(long).not.toContain('Back · Cut length');
});

test('what is made no longer comes through it', () => {
  const home = homeOf('back', '', 'cut-length');
  const made = act(begin(back, KNOWN), { do: 'make', home, id: 'f', tape: 8000, now }).state;
  const names = linksFor(made, { work: 'hem', field: 'depth' }).map(named);
  expect(names).toContain('Back · Cut length');
});

test('a count fits where so many times is typed, and a field of words takes nothing', () => {
  const state = begin(back, KNOWN);
  const place = { work: 'hem', field: 'round' };
  expect(linksFor(state, place).map(named)).not.toContain('Hooks');
  expect(linksFor(state, place, true).map(named)).toContain('Hooks');
  expect(linksFor(state, { work: 'hem', field: 'turned' })).toEqual([]);
  expect(linksFor(state, { work: 'gone', field: 'depth' })).toEqual([]);
});

test('sides that differ are offered each, and a total where it adds up', () => {
  const strip = {
    name: 'Strip',
    calculation: 'toy-strip',
    rank: 3,
    sides: ['left', 'right'],
    fields: {
      length: typed('62.4'),
      pitch: typed('8', 'mm'),
      end: typed('0.4'),
      fit: typed('fill'),
      rows: typed('one'),
    },
  };
  const lace = { name: 'Lace', calculation: 'toy-lace', rank: 4, fields: {} };
  const place = { work: 'lace', field: 'holes' };
  const count = (own: object) =>
    linksFor(begin(garmentOf({ works: { strip: { ...strip, ...own }, lace } }), KNOWN), place)
      .filter(({ output: of }) => of === 'How many')
      .map(named);
  expect(count({})[0]).toBe('Strip · How many');
  expect(count({ own: { left: { length: typed('70') } } }).slice(0, 2)).toEqual([
    'Strip · How many · left',
    'Strip · How many · right',
  ]);
});

test('in random garments, all that is offered can be taken without a circle', () => {
  let taken = 0;
  for (let seed = 1; seed <= 26; seed++) {
    // What goes round already, a field that is mended may close.
    if (seed % SHAPES.length === SHAPES.indexOf('circle')) continue;
    const state = begin(randomGarment(seed), KNOWN);
    for (const [work, { outputs }] of [...state.answer.works].slice(0, 4)) {
      const field = outputs?.outputs[0]?.reads[0] ?? '';
      for (const { link } of linksFor(state, { work, field }).slice(0, 6)) {
        const done = act(state, { do: 'link', place: { work, field }, parts: [{ link }], now });
        expect(done.refused?.why, `${seed} ${work} ${field}`).not.toBe('circle');
        taken += 1;
      }
    }
  }
  expect(taken).toBeGreaterThan(100);
});

test('a fourth of three tiers is offered nobody: there is none', () => {
  const tiers = work('tiers', 'depths=20; 22; 28', { name: 'Tiers' });
  const state = garment({ tiers, back: work('piece', '', { name: 'Back' }) });
  const names = linksFor(state, { work: 'back', field: 'width' }).map(named);
  expect(names).toContain('Tiers · Tier 3: along, sewn');
  expect(names.filter((name) => name.includes('Tier 4'))).toEqual([]);
});
