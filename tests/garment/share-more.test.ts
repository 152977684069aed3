import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { MOST_WORKS } from '../../src/garment/record/limits.ts';
import { newGarment } from '../../src/garment/record/new-garment.ts';
import type { Garment, Parts, Quantity } from '../../src/garment/record/record.ts';
import { readHanded } from '../../src/garment/share/read-shared.ts';
import { type ShareWish, sharedGarment } from '../../src/garment/share/shared.ts';
import { mm } from '../../src/lengths/length.ts';
import { garmentOf, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const now = 5;
const tape = 8000;
const LEAST: ShareWish = {
  ...{ bodies: false, notes: false, times: false, goOn: false },
  knownOnly: true,
};
const said: [string, string, readonly number[]][] = [];
const say = (home: string, kind: string, numbers: readonly number[]) => {
  said.push([home, kind, numbers]);
  return 'was made';
};
const shared = (state: State, wish: Partial<ShareWish> = {}) =>
  sharedGarment(state, { ...LEAST, ...wish }, 'new', say);
const number = (parts: Parts, more: Partial<Quantity> = {}): Quantity => ({
  ...{ name: 'n', kind: 'length', rank: 1, parts },
  ...more,
});
const hem = (fields: Record<string, Parts>, more: object = {}) => ({
  ...{ name: 'Hem', calculation: 'toy-hem', rank: 1, fields },
  ...more,
});
const on = (record: Garment, ...actions: readonly Action[]): State =>
  actions.reduce((state, action) => act(state, action).state, begin(record, KNOWN));

test('what can’t be read of what was handed on says why', () => {
  for (const none of [7, null, {}, { ...garmentOf({}), works: [] }]) {
    expect(readHanded(none)).toEqual({ ok: false, fault: 'damaged' });
  }
  expect(readHanded({ version: 4 })).toEqual({ ok: false, fault: 'newer' });
  const works = Object.fromEntries(
    Array.from({ length: MOST_WORKS + 1 }, (_, i) => [`w${i}`, hem({})]),
  );
  expect(readHanded(garmentOf({ works }))).toEqual({ ok: false, fault: 'too-large' });
});

test('what it says was left out is counted as far as it is a count', () => {
  const shared = { bodies: -1, typed: 1.5, notes: '3', photos: 2, facts: 0 };
  expect(readHanded({ ...garmentOf({}), shared })).toMatchObject({
    handed: { left: { bodies: 0, typed: 0, notes: 0, photos: 2, facts: 0 } },
  });
});

test('whatever kind of number of a body is taken, it goes along as what it is now, and unnamed', () => {
  const body = { body: true, name: 'Of Ada' } as const;
  const record = garmentOf({
    quantities: {
      waist: number(typed('70'), body),
      less: number([...typed('1 − '), quantity('waist')], body),
      count: number(typed('7'), { ...body, kind: 'count' }),
      none: number(typed(''), body),
      hip: number(typed('90'), { measure: 'hip', name: 'Hip of Ada' }),
      zero: number([quantity('waist'), ...typed(' − '), quantity('waist')], body),
    },
    works: {
      a: hem({ depth: [quantity('less')] }),
      b: hem({ depth: [quantity('none')], round: [quantity('hip')] }),
      c: { ...hem({}), calculation: 'toy-lace', fields: { holes: [quantity('count')] } },
      d: hem({ depth: [quantity('zero')] }),
    },
  });
  const garment = shared(begin(record, KNOWN));
  expect(JSON.stringify(garment)).not.toContain('Ada');
  expect(garment.quantities).toEqual({});
  expect(garment.works).toMatchObject({
    a: { fields: { depth: typed('(−69 cm)') } },
    b: { fields: { depth: typed(''), round: typed('90 cm') } },
    c: { fields: { holes: typed('7') } },
    d: { fields: { depth: typed('0 cm') } },
  });
  expect(garment.shared).toMatchObject({ bodies: 6 });
});

test('a text that stands where a measure of a body was taken goes along, and what it stands for doesn’t', () => {
  const [part] = typed('71');
  if (!part) throw new Error('nothing is typed');
  const record = garmentOf({
    quantities: { waist: number(typed('70'), { body: true, name: 'Of Ada' }) },
    works: { a: hem({ depth: [{ ...part, was: { quantity: 'waist' } }] }) },
  });
  const garment = shared(begin(record, KNOWN));
  expect(garment.works).toEqual({ a: hem({ depth: [part] }) });
});

test('what was measured goes along as typed where what is made doesn’t', () => {
  const record = garmentOf({
    quantities: { edge: number(typed('46')), other: number(typed('3')) },
  });
  const measured = on(record, {
    ...{ do: 'measure', quantity: 'edge', measured: mm(471), id: 'm', tape, now },
  } as Action);
  expect(shared(measured).quantities).toEqual({
    edge: number(typed('47.1 cm')),
    other: number(typed('3')),
  });
  expect(shared(measured, { goOn: true }).quantities).toMatchObject({
    edge: { parts: typed('46') },
  });
});

test('what is made is said with the kind of its number, behind what was noted there', () => {
  const record = garmentOf({
    works: { hem: hem({ depth: typed('2') }), off: hem({ depth: typed('2') }) },
  });
  const home = homeOf('hem', '', 'allowance');
  const gone = homeOf('off', '', 'allowance');
  const make = (at: string): Action => ({ do: 'make', home: at, id: at, tape, now });
  const made = on(record, make(home), make(gone), {
    ...{ do: 'note', home, note: { text: 'press', photo: 'p1' }, now },
  });
  const off = act(made, { do: 'take off', work: 'off', leave: 'wait', now }).state;
  said.length = 0;
  const noted = shared(off, { notes: true });
  expect(said).toEqual([
    [home, 'length', [mm(20)]],
    [gone, 'length', [mm(20)]],
  ]);
  expect(noted.notes).toEqual({
    [home]: { text: 'press\nwas made' },
    [gone]: { text: 'was made' },
  });
  expect(noted.shared).toMatchObject({ notes: 0, photos: 1, facts: 2 });
  const bare = shared(off, { goOn: true });
  expect(bare.shared).toMatchObject({ notes: 1, photos: 1, facts: 0 });
  expect(bare).not.toHaveProperty('notes');
});

test('a photo alone is no note, and damaged ones are neither', () => {
  const record: Garment = {
    ...garmentOf({ works: { hem: hem({}) } }),
    notes: { 'hem||': { photo: 'p1' }, 'hem||x': 7, 'hem||y': { text: 7, photo: 8 } },
  };
  const garment = shared(begin(record, KNOWN), { notes: true });
  expect(garment.shared).toMatchObject({ notes: 0, photos: 1 });
  expect(garment).not.toHaveProperty('notes');
});

test('where the steps of a side stand goes along, and nothing else that stands there', () => {
  const at = { stage: 'join', rank: 2 };
  const works = {
    hem: hem(
      {},
      {
        sides: ['left', 'right'],
        movedSides: { left: { 'turn-up': { ...at, secret: 1 } } },
        moved: { 'turn-up': at },
      },
    ),
  };
  const form = { kind: 'four', long: 8000, top: 8000, bottom: 8000, slant: 'both' };
  const lays = {
    cloth: {
      pieces: {
        a: { oneWay: true },
        b: { outline: { form: { ...form, secret: 1 }, secret: 1 } },
        c: { outline: { form, adds: 'edges' } },
      },
    },
  };
  const garment = shared(begin({ ...garmentOf({ works }), lays }, KNOWN));
  expect(garment.works).toMatchObject({
    hem: { movedSides: { left: { 'turn-up': at } }, moved: { 'turn-up': at } },
  });
  expect(JSON.stringify(garment)).not.toContain('secret');
  expect(garment.lays).toEqual({
    cloth: {
      pieces: {
        a: { oneWay: true },
        b: { outline: { form } },
        c: { outline: { form, adds: 'edges' } },
      },
    },
  });
});

test('of a measure left out no note goes along, nor that it was measured; a row is said in lengths', () => {
  const front = number(typed('46'), { body: true });
  const row = { name: 'Strip', calculation: 'toy-strip', rank: 1, fields: {} };
  const fields = {
    ...{ length: [quantity('front')], pitch: typed('8', 'mm'), end: typed('1') },
    ...{ fit: typed('keep'), rows: typed('one') },
  };
  const hooks = number(typed('7'), { kind: 'count' });
  const holes = homeOf('strip', '', 'holes');
  const record = {
    ...garmentOf({
      quantities: { front, hooks },
      works: { strip: { ...row, fields } },
    }),
    notes: { [homeOf('front')]: { text: 'of Ada', photo: 'p1' }, [holes]: { text: 'of linen' } },
  };
  const measure = (of: string, measured: number): Action => ({
    ...{ do: 'measure', quantity: of, measured, id: of, tape, now },
  });
  const state = on(
    record,
    ...[measure('front', mm(470)), measure('hooks', 8)],
    ...[{ do: 'make', home: holes, id: 'h', tape, now } as const],
  );
  said.length = 0;
  const garment = shared(state, { notes: true });
  expect(said).toEqual([
    [homeOf('hooks'), 'count', [8]],
    [holes, 'length', [mm(10)]],
  ]);
  expect(garment.notes).toEqual({
    [homeOf('hooks')]: { text: 'was made' },
    [holes]: { text: 'of linen\nwas made' },
  });
  expect(garment.shared).toMatchObject({ notes: 0, photos: 0, facts: 2 });
});

test('a row that is a measure of a body is not typed in the place of a link', () => {
  const put = { put: { datum: 'zero', length: 80, marks: [] }, kind: 'run' };
  const record = garmentOf({
    quantities: { row: number([put] as never, { kind: 'run', body: true }) },
    works: { a: { ...hem({ row: [quantity('row')] }), calculation: 'toy-follow' } },
  });
  expect(begin(record, KNOWN).answer.values.get(homeOf('row'))).toMatchObject({ ok: true });
  expect(shared(begin(record, KNOWN)).works).toMatchObject({ a: { fields: { row: typed('') } } });
});

test('what is passed over goes along where another goes on, and only what there is', () => {
  const record = garmentOf({ works: { hem: hem({ depth: typed('2') }) } });
  const home = homeOf('hem', '', 'allowance');
  const over = on(record, { do: 'pass', home, over: true, now });
  for (const known of [true, false]) {
    const wish = { goOn: true, knownOnly: known };
    expect(shared(over, wish).passed).toEqual({ [home]: true });
    expect(shared(over, { ...wish, goOn: false })).not.toHaveProperty('passed');
    expect(shared(begin(record, KNOWN), wish)).not.toHaveProperty('passed');
  }
});

test('of a damaged record what can’t be read stays behind, and the rest goes along', () => {
  const fact = { ...{ home: 'hem||x', shown: 5, plan: 5, tape, rule: 1, read: '', when: 9 } };
  const part = { text: '2', unit: 'cm', secret: 1 };
  const at = { stage: 'join', rank: 2 };
  const works = {
    bare: hem({}),
    bad: 7,
    odd: hem({ depth: 7, turn: [null, part] } as never, {
      own: { left: { depth: [part] }, right: 7 },
      moved: { 'turn-up': { ...at, secret: 1 }, join: 7 },
      movedSides: [at],
    }),
  };
  const record = {
    ...garmentOf({
      quantities: { q: number([part] as never), r: { ...number([]), parts: 7 } },
      works,
      facts: { f: fact, g: 7, h: { ...fact, home: 7 }, i: null },
    }),
    notes: { 'hem||x': null, 'hem||y': 7 },
    lays: { cloth: { nap: undefined, pieces: [7] }, bare: {} },
  } as unknown as Garment;
  const wish = { notes: true, goOn: true };
  const garment = shared(begin(record, KNOWN), wish);
  const clean = { text: '2', unit: 'cm' };
  expect(garment.quantities).toStrictEqual({
    q: number([clean] as never),
    r: { ...number([]), parts: undefined },
  });
  expect(garment.works).toStrictEqual({
    bare: hem({}),
    odd: hem({ turn: [null, clean] } as never, {
      own: { left: { depth: [clean] }, right: {} },
      moved: { 'turn-up': at },
      movedSides: {},
    }),
  });
  expect(garment.lays).toStrictEqual({ cloth: { nap: undefined, pieces: {} }, bare: {} });
  expect(garment.facts).toEqual({ f: { ...fact, when: 0 } });
  expect(garment).not.toHaveProperty('notes');
  const whole = shared(begin(record, KNOWN), { ...wish, knownOnly: false });
  expect(Object.keys(whole.facts)).toEqual(['f']);
});

// Unicode Standard Annex 9: these turn round what is shown after them; U+200F only says which way a sign reads.
test('no name turns round what is shown beside it, also of what was handed on', () => {
  const turning = ['\u202a', '\u202b', '\u202d', '\u202e', '\u2066', '\u2067', '\u2068', '\u2069'];
  for (const one of turning) {
    const name = `Co${one}at 5.21`;
    const works = { hem: { ...hem({}), name } };
    const record = {
      ...garmentOf({ works, quantities: { n: number(typed('1'), { name }) } }),
      ...{ name, notes: { 'hem||': { text: name, photo: 'p' } } },
    };
    const read = readHanded(record);
    expect(read).toMatchObject({ ok: true, handed: { garment: { name: 'Coat 5.21' } } });
    const { sound } = begin(record, KNOWN).answer;
    expect(sound.works.get('hem')?.name).toBe('Coat 5.21');
    expect(sound.quantities.get('n')?.name).toBe('Coat 5.21');
    expect(sound.notes.get('hem||')).toEqual({ text: 'Coat 5.21', photo: 'p' });
    // What is kept stays as it was written.
    expect(record.works.hem).toMatchObject({ name });
    expect(newGarment('g', name, 1).name).toBe('Coat 5.21');
  }
  expect(newGarment('g', 'Co\u200fat', 1).name).toBe('Co\u200fat');
});
