import { expect, test } from 'vitest';
import { act } from '../../src/garment/actions/act.ts';
import { linksFor, type Offered } from '../../src/garment/actions/links-for.ts';
import { begin } from '../../src/garment/actions/state.ts';
import type { FieldPlace } from '../../src/garment/actions/typing.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Link, Parts, Work } from '../../src/garment/record/record.ts';
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

const hem = (depth: Parts, set: object = {}) => ({
  ...{ name: 'Hem', calculation: 'toy-hem', rank: 1, fields: { depth } },
  ...set,
});
const number = (parts: Parts, set: object = {}) => ({
  ...{ name: 'n', kind: 'length', rank: 1, parts },
  ...set,
});
const linksIn = (
  set: Parameters<typeof garmentOf>[0],
  place: FieldPlace,
  factor = false,
): (Link & { of?: string })[] =>
  linksFor(begin(garmentOf(set), KNOWN), place, factor).map(({ link }) => link);

test('what is near in the making comes first, whatever it is called', () => {
  const works = {
    ...{ back: { name: 'Yoke', calculation: 'toy-piece', rank: 1, fields: {} } },
    ...{
      hem: hem(typed('2')),
      lace: { name: 'Lace', calculation: 'toy-lace', rank: 3, fields: {} },
    },
  };
  const state = begin(
    garmentOf({ quantities: { arm: number([], { name: 'Arm' }) }, works }),
    KNOWN,
  );
  const names = (place: FieldPlace) => linksFor(state, place).map(named);
  const yoke = ['Yoke · Cut length', 'Yoke · Cut width', 'Yoke · Finished length'];
  // Turned up two stages after what is cut, and two before the edges; measured before all.
  expect(names({ work: 'hem', field: 'round' })).toEqual(['Lace · Lace', ...yoke, 'Arm']);
  // A number of the garment stands where things are measured.
  const hems = ['Hem · Allowance', 'Hem · Fullness'];
  expect(names({ quantity: 'arm' })).toEqual([...yoke, ...hems, 'Lace · Lace']);
  expect(names({ work: 'lace', field: 'gap' })).toEqual([...hems, ...yoke, 'Arm']);
});

test('for the edge of a piece what works take there comes first: each side of a felled seam, a hem, a casing', () => {
  const of = (calculation: string, fields: Work['fields'] = {}) => ({
    ...{ name: calculation, calculation, rank: 1, fields },
  });
  const felled = { finish: typed('felled'), allowance: typed('1.5') };
  const works = {
    piece: { ...of('piece', { width: typed('40'), length: typed('60') }), rank: 9 },
    seam: of('seam', felled),
    hem: of('hem', { depth: typed('4') }),
    cord: of('cord'),
  };
  const state = begin(garmentOf({ works } as never), KNOWN);
  const offered = (field: string) => linksFor(state, { work: 'piece', field }).map(named);
  const allowances = [
    'cord · Casing, above the fold',
    'hem · Hem allowance',
    'seam · Seam allowance, sewn',
    'seam · Under layer, cut with',
    'seam · Upper layer, cut with',
  ];
  for (const edge of ['top', 'bottom', 'side', 'otherSide']) {
    expect(offered(edge).slice(0, 5).sort(), edge).toEqual(allowances);
    expect(offered(edge)).toHaveLength(offered('length').length);
  }
  // How long it is finished is none of them.
  expect(offered('length').slice(0, 5).sort()).not.toEqual(allowances);
});

test('of one name they come as the garment has them', () => {
  const works = {
    ...{ b: hem(typed('1'), { rank: 1 }), a: hem(typed('2'), { rank: 2 }) },
    c: hem([], { rank: 3 }),
  };
  const offered = linksIn({ works }, { work: 'c', field: 'round' });
  expect(offered).toEqual(
    ['allowance', 'fullness'].flatMap((key) => [
      { work: 'b', output: key },
      { work: 'a', output: key },
    ]),
  );
});

test('another work’s field of the same key is no way round; a number that takes this one is', () => {
  const quantities = { q: number(typed('1')), sum: number([quantity('q'), ...typed(' + 1')]) };
  const works = { one: hem(typed('1')), two: hem(typed('2')) };
  expect(linksIn({ works }, { work: 'one', field: 'depth' })).toContainEqual({
    ...{ work: 'two', output: 'allowance' },
  });
  expect(linksIn({ quantities }, { quantity: 'q' })).toEqual([]);
  expect(linksIn({ quantities }, { quantity: 'sum' })).toEqual([{ quantity: 'q' }]);
});

test('a number is not offered itself, measured or not', () => {
  const state = begin(garmentOf({ quantities: { q: number([]), other: number([]) } }), KNOWN);
  const measured = act(state, {
    ...{ do: 'measure', quantity: 'q', measured: mm(700), id: 'm', tape: 8000, now },
  }).state;
  for (const one of [state, measured]) {
    expect(linksFor(one, { quantity: 'q' }).map(({ link }) => link)).toEqual([
      { quantity: 'other' },
    ]);
  }
});

test('through what was made before the app knew a number still goes', () => {
  const [cut, place] = [homeOf('back', '', 'cut-length'), { work: 'back', field: 'length' }];
  const facing = {
    ...{ name: 'Facing', calculation: 'toy-piece', rank: 3 },
    fields: { length: [output('back', 'cut-length')] },
  };
  const record = garmentOf({ ...back, works: { ...back.works, facing } });
  const state = act(begin(record, KNOWN), {
    ...{ do: 'make before', homes: [cut], id: 'b', now },
  }).state;
  for (const at of [place, { quantity: 'long' }]) {
    expect(linksFor(state, at).map(named)).not.toContain('Facing · Cut length');
  }
});

test('of sides that don’t agree the one that doesn’t come from the field is offered, and no total', () => {
  const strip = {
    ...{ name: 'Strip', calculation: 'toy-strip', rank: 1, sides: ['left', 'right'] },
    fields: { length: typed('60'), pitch: typed('1'), end: typed('0') },
    own: { left: { length: [quantity('q')] } },
  };
  const set = { quantities: { q: number(typed('50')) }, works: { strip } };
  const cut = (place: FieldPlace) =>
    linksIn(set, place).flatMap((link) => ('work' in link && link.output === 'cut' ? link : []));
  expect(cut({ quantity: 'q' })).toEqual([{ work: 'strip', output: 'cut', of: 'right' }]);
  const taken = act(begin(garmentOf(set), KNOWN), {
    ...{ do: 'link', place: { quantity: 'q' }, parts: [output('strip', 'cut', 'right')], now },
  });
  expect(taken.refused).toBeUndefined();
});

test('a total is offered of what adds up alone, and where every side has it', () => {
  const totals = (set: Parameters<typeof garmentOf>[0]) =>
    linksIn({ ...set, quantities: { q: number([]) } }, { quantity: 'q' }).flatMap((link) =>
      'work' in link && link.of === 'total' ? link.output : [],
    );
  const twice = { sides: ['left', 'right'], fields: { depth: typed('2'), turned: typed('twice') } };
  expect(totals({ works: { hem: hem([], twice) } })).toEqual([]);
  // Sewn by hand there is one thread, and none of a needle.
  const sewn = (own?: Work['own']) =>
    garment({
      thread: work('thread', 'stitch=lock&by=table&seams=300', {
        ...{ sides: ['1', '2', '3'] },
        ...(own && { own }),
      }),
    }).record;
  expect(totals(sewn())).toContain('needle');
  expect(totals(sewn({ 3: { stitch: typed('hand') } }))).not.toContain('needle');
});

test('what is offered says what it has, and nothing of what it hasn’t', () => {
  const set = { quantities: { q: number(typed('')), r: number(typed('2')) } };
  expect(linksFor(begin(garmentOf(set), KNOWN), { work: 'none', field: 'x' })).toEqual([]);
  const works = { hem: hem(typed('')), odd: { ...hem([]), calculation: 'lattice' } };
  const state = begin(garmentOf({ ...set, works }), KNOWN);
  expect(linksFor(state, { quantity: 'r' })).toStrictEqual([
    { link: { quantity: 'q' }, kind: 'length', name: 'n', plusMinus: 0 },
    {
      ...{ link: { work: 'hem', output: 'allowance' }, kind: 'length', name: 'Hem' },
      ...{ output: 'Allowance', plusMinus: 0 },
    },
    {
      ...{ link: { work: 'hem', output: 'fullness' }, kind: 'length', name: 'Hem' },
      ...{ output: 'Fullness', plusMinus: 0 },
    },
  ]);
  expect(linksFor(state, { work: 'odd', field: 'depth' })).toEqual([]);
});

test('a factor is offered beside a length alone', () => {
  const quantities = { q: number([], { kind: 'count' }), half: number([], { kind: 'number' }) };
  expect(linksIn({ quantities }, { quantity: 'q' }, true)).toEqual([]);
  const more = { ...quantities, long: number([]) };
  expect(linksIn({ quantities: more }, { quantity: 'long' }, true)).toHaveLength(2);
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
