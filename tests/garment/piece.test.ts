import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { takeUps } from '../../src/garment/actions/take-up.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import { mm } from '../../src/lengths/length.ts';
import { garmentOf, output, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const now = 1;

/** An invented skirt panel on the fold: a seam above, a hem of 3 + 1 below, a felled seam at its side. */
const panel = garmentOf({
  works: {
    hem: {
      name: 'Hem',
      calculation: 'hem',
      rank: 1,
      fields: { depth: typed('3'), style: typed('unequal'), turn: typed('1') },
    },
    side: {
      name: 'Side seam',
      calculation: 'seam',
      rank: 2,
      fields: {
        what: typed('finish'),
        given: typed('1.5'),
        finish: typed('felled'),
        under: typed('0.3'),
        turn: typed('0.6'),
        laid: typed('inset'),
      },
    },
    piece: {
      name: 'Panel',
      calculation: 'piece',
      rank: 3,
      fields: {
        width: typed('40'),
        length: typed('60'),
        top: typed('1.5'),
        bottom: [output('hem', 'allowance')],
        side: [output('side', 'lower')],
        fold: typed('side'),
        count: typed('1'),
        angle: typed('90'),
        shrinksAcross: typed('0'),
        shrinksAlong: typed('0'),
      },
    },
  },
});

function doing(...actions: readonly Action[]): State {
  return actions.reduce((state, action) => act(state, action).state, begin(panel, KNOWN));
}

const inMm = (state: State, key: string) => {
  const found = state.answer.values.get(homeOf('piece', '', key));
  return found?.ok && typeof found.value === 'number' ? found.value / mm(1) : found;
};
const cut = (key: string, measured: number): Action => {
  return {
    do: 'make',
    home: homeOf('piece', '', key),
    id: key,
    tape: mm(1),
    measured: mm(measured),
    now,
  };
};
const deeper: Action = {
  do: 'choose',
  place: { work: 'hem', field: 'depth' },
  parts: typed('4'),
  now,
};

// By hand: half of 40 and 0.3 of the under layer; 60 + 1.5 + 4.
test('a piece is cut by what the works that finish its edges take, each from its own side', () => {
  const state = doing();
  expect([inMm(state, 'cut-width'), inMm(state, 'cut-length')]).toEqual([203, 655]);
  expect(inMm(doing(deeper), 'cut-length')).toBe(665);
});

test('once it is cut, a deeper hem is one conflict, at the cut, and less of it is finished', () => {
  const state = doing(cut('cut-width', 203), cut('cut-length', 655), deeper);
  expect(state.answer.conflicts.map(({ home }) => home)).toEqual([
    homeOf('piece', '', 'cut-length'),
  ]);
  expect([inMm(state, 'gives-length'), inMm(state, 'lacks-length')]).toEqual([590, 10]);
  expect([inMm(state, 'gives-width'), inMm(state, 'lacks-width')]).toEqual([400, 0]);
});

test('cut 5 mm short of half on the fold, its whole width lacks 10, and less at its edges takes that up', () => {
  const state = doing(cut('cut-length', 650));
  expect(inMm(state, 'lacks-length')).toBe(5);
  const ways = takeUps(state, homeOf('piece', '', 'cut-length')).map(({ place, after }) => [
    'work' in place ? `${place.work}.${place.field}` : '',
    after / mm(1),
  ]);
  expect(ways).toEqual(
    expect.arrayContaining([
      ['piece.top', 10],
      ['hem.depth', 25],
    ]),
  );
  expect(inMm(doing(cut('cut-width', 198)), 'lacks-width')).toBe(10);
});

// Design §2: what is at least is rounded up. 40.05 on the fold: half is 200.25, and 3 of the seam.
test('a cut is made on the graduation over what is asked, as its page says it, and is as asked then', () => {
  const width: Action = {
    do: 'choose',
    place: { work: 'piece', field: 'width' },
    parts: typed('40.05'),
    now,
  };
  const home = homeOf('piece', '', 'cut-width');
  const press: Action = { do: 'make', home, id: 'cut', tape: mm(1), now };
  const made = doing(width, press);
  expect(made.record.facts.cut).toMatchObject({ shown: mm(204), plan: mm(203.25) });
  expect(made.answer.conflicts).toEqual([]);
  expect(inMm(made, 'lacks-width')).toBe(-1.5);
  const conflicts = (measured: number) =>
    doing(width, { ...press, measured: mm(measured) }).answer.conflicts.length;
  expect([202.5, 203, 204, 204.5].map(conflicts)).toEqual([1, 0, 0, 1]);
});

// The design's own example: a hem gives its piece the allowance, and takes its edge's length from it.
test('a hem may take the width of the piece whose length it adds to; adding to the width it goes round', () => {
  const linked: Action[] = [
    {
      do: 'choose',
      place: { work: 'hem', field: 'depth' },
      parts: [output('piece', 'gives-width'), ...typed('− 37')],
      now,
    },
  ];
  const length = doing(...linked);
  expect(inMm(length, 'cut-length')).toBe(600 + 15 + 30 + 10);
  const own: Action[] = [
    { do: 'choose', place: { work: 'piece', field: 'adds' }, parts: typed('own'), now },
    { do: 'choose', place: { work: 'piece', field: 'bottomAdds' }, parts: typed('width'), now },
  ];
  expect(inMm(doing(...linked, ...own), 'cut-length')).toBe(615);
  expect(
    doing(...linked, ...own).answer.values.get(homeOf('piece', '', 'gives-width')),
  ).toMatchObject({
    ok: false,
    trouble: { kind: 'circle' },
  });
});
