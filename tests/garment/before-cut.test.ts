import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { withKeys } from '../../src/garment/actions/with-keys.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { openBefore } from '../../src/garment/work-out/before-cut.ts';
import { mm } from '../../src/lengths/length.ts';
import { garmentOf, output, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const now = 5;
const tape = 8000;
const CUT = homeOf('back', '', 'cut-length');
const ALLOWANCE = homeOf('hem', '', 'allowance');
const [LONG, SUM, EASE] = [homeOf('long'), homeOf('sum'), homeOf('ease')] as const;

/** Invented: a back whose length is a sum of the garment, and whose bottom is its hem’s. */
const coat = garmentOf({
  quantities: {
    long: { name: 'Back', kind: 'length', rank: 1, parts: typed('60') },
    ease: { name: 'Ease', kind: 'length', rank: 2, parts: typed('1') },
    sum: {
      ...{ name: 'Back, eased', kind: 'length', rank: 3 },
      parts: [quantity('long'), ...typed(' + '), quantity('ease')],
    },
  },
  works: {
    hem: { name: 'Hem', calculation: 'toy-hem', rank: 1, fields: { depth: typed('2') } },
    back: {
      ...{ name: 'Back', calculation: 'toy-piece', rank: 2 },
      fields: { length: [quantity('sum')], bottom: [output('hem', 'allowance')] },
    },
    facing: {
      ...{ name: 'Facing', calculation: 'toy-piece', rank: 3 },
      fields: { length: [output('back', 'finished-length')] },
    },
  },
});
const after = (...actions: readonly Action[]): State =>
  actions.reduce((state, action) => act(state, action).state, begin(coat, KNOWN));
const final = (of: 'works' | 'quantities', ...ids: string[]): Action => ({
  ...{ do: 'say', of, ids, set: { final: true }, now },
});
const open = (state: State, home = CUT) => openBefore(state.answer, home);

test('before a cut all that is typed behind it is asked about, the nearest first; a sum by what it is of', () => {
  expect(open(after())).toEqual([ALLOWANCE, LONG, EASE]);
  expect(open(after(), homeOf('facing', '', 'cut-length'))).toEqual([ALLOWANCE, LONG, EASE]);
  expect(open(after(), 'none||none')).toEqual([]);
});

test('what is said to be final, or is made, is asked about no more', () => {
  expect(open(after(final('quantities', 'long')))).toEqual([ALLOWANCE, EASE]);
  expect(open(after(final('works', 'hem')))).toEqual([LONG, EASE]);
  const measured: Action = {
    ...{ do: 'measure', quantity: 'long', measured: mm(610), id: 'm', tape, now },
  } as Action;
  expect(open(after(measured))).toEqual([ALLOWANCE, EASE]);
  const made = after({ do: 'make', home: ALLOWANCE, id: 'f', tape, now });
  expect(open(made)).toEqual([LONG, EASE]);
  expect(open(made, homeOf('facing', '', 'cut-length'))).not.toContain(SUM);
});

test('of a row that is begun, and of one step made before, each is told once', () => {
  const strip = {
    ...{ name: 'Strip', calculation: 'toy-strip', rank: 4 },
    fields: { length: [quantity('long')], pitch: typed('5'), end: typed('5') },
  };
  const follow = {
    ...{ name: 'Hooks', calculation: 'toy-follow', rank: 5 },
    fields: { row: [output('strip', 'holes')], by: typed('1') },
  };
  const [holes, marks] = [homeOf('strip', '', 'holes'), homeOf('follow', '', 'marks')];
  const cutStrip = homeOf('strip', '', 'cut');
  const state = begin({ ...coat, works: { strip, follow } }, KNOWN);
  const begun = act(state, { do: 'make', home: holes, id: 'h', tape, now }).state;
  expect(open(begun, holes)).toEqual([LONG]);
  expect(open(begun, marks)).toEqual([holes, LONG]);
  const before = act(state, { do: 'make before', homes: [holes], id: 'b', now }).state;
  expect(open(before, marks)).toEqual([holes, LONG]);
  const cut = act(begun, { do: 'make', home: cutStrip, id: 'c', tape, now }).state;
  expect(open(cut, holes)).toEqual([LONG]);
});

test('with the back cut, what a facing hangs on is that alone', () => {
  const cut = after({ do: 'make', home: CUT, id: 'cut', tape, now });
  const facing = open(cut, homeOf('facing', '', 'cut-length'));
  expect(facing).not.toContain(CUT);
  // Its allowances are taken off it yet.
  expect(facing).toContain(ALLOWANCE);
});

test('while a number behind it waits, it is asked about all the same', () => {
  const waits = after({
    ...{ do: 'choose', place: { quantity: 'long' }, parts: typed(''), now },
  });
  expect(open(waits)).toEqual([ALLOWANCE, LONG, EASE]);
});

test('of what is made nothing behind it is asked about', () => {
  const hems = garmentOf({
    quantities: { deep: { name: 'Deep', kind: 'length', rank: 1, parts: typed('2') } },
    works: {
      hem: { name: 'Hem', calculation: 'toy-hem', rank: 1, fields: { depth: [quantity('deep')] } },
      cuff: {
        ...{ name: 'Cuff', calculation: 'toy-hem', rank: 2 },
        fields: { depth: [output('hem', 'allowance')] },
      },
    },
  });
  const cuff = homeOf('cuff', '', 'allowance');
  const state = begin(hems, KNOWN);
  expect(open(state, cuff)).toEqual([ALLOWANCE, homeOf('deep')]);
  expect(open(act(state, { do: 'make', home: ALLOWANCE, id: 'f', tape, now }).state, cuff)).toEqual(
    [],
  );
});

test('what a seam gives to the edge of a piece is asked about, though no step makes it', () => {
  // What is left of the fields is as the calculation begins.
  const older = 2;
  const real = garmentOf({
    works: {
      side: {
        ...{ name: 'Side seam', calculation: 'seam', rank: 1, older },
        fields: { allowance: typed('2') },
      },
      front: {
        ...{ name: 'Front', calculation: 'piece', rank: 2, older },
        fields: { width: typed('30'), side: [output('side', 'sewn')] },
      },
      lining: {
        ...{ name: 'Lining', calculation: 'piece', rank: 3, older },
        fields: { width: [output('front', 'gives-width')] },
      },
    },
  });
  const cut = homeOf('front', '', 'cut-width');
  const sewn = homeOf('side', '', 'sewn');
  const state = begin(withKeys(real, KNOWN), KNOWN);
  expect(open(state, cut)).toEqual([sewn]);
  expect(open(act(state, final('works', 'side')).state, cut)).toEqual([]);
  // What follows from it is decided by it.
  expect(open(state, homeOf('lining', '', 'cut-width'))).toEqual([sewn]);
});
