import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { allowedAt } from '../../src/garment/actions/decide.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { takeUps } from '../../src/garment/actions/take-up.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Garment, Parts } from '../../src/garment/record/record.ts';
import { mm } from '../../src/lengths/length.ts';
import { garmentOf, output, quantity, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';
import { HOOKS, waistcoat } from './trial/waistcoat.ts';

const CUT = homeOf('back', '', 'cut-length');
const now = 1;

/** An invented back: its upper edge takes the seam of the garment, its lower one a hem of 3 + 1 cm. */
function back(set: { length?: Parts; bottom?: Parts } = {}): Garment {
  return garmentOf({
    quantities: { seam: { name: 'Seam', kind: 'length', rank: 1, parts: typed('1.5') } },
    works: {
      hem: {
        name: 'Hem',
        calculation: 'toy-hem',
        rank: 1,
        fields: { depth: typed('3'), turned: typed('twice'), turn: typed('1') },
      },
      back: {
        name: 'Back',
        calculation: 'toy-piece',
        rank: 2,
        fields: {
          length: set.length ?? typed('60'),
          top: [quantity('seam')],
          bottom: set.bottom ?? [output('hem', 'allowance')],
          fold: typed('none'),
        },
      },
    },
  });
}

function doing(garment: Garment, ...actions: readonly Action[]): State {
  return actions.reduce((state, action) => act(state, action).state, begin(garment, KNOWN));
}

const cut = (measured: number): Action => {
  return { do: 'make', home: CUT, id: 'cut', tape: mm(1), measured: mm(measured), now };
};

const shown = (state: State, home: string) =>
  takeUps(state, home).map(({ place, parts, before, after }) => [
    'quantity' in place ? place.quantity : `${place.work}.${place.field}`,
    before / mm(1),
    after / mm(1),
    parts.map((part) => ('text' in part ? part.text : '')).join(''),
  ]);

test('a piece cut 1 cm short: the seam, the hem or its turn is narrower by that, and the finished length is as wanted', () => {
  // 60 + 1.5 + 4 = 65.5; cut 64.5.
  const state = doing(back(), cut(645));
  expect(shown(state, CUT)).toEqual([
    ['seam', 15, 5, '0.5 cm'],
    ['hem.depth', 30, 20, '2 cm'],
    ['hem.turn', 10, 0, '0 cm'],
  ]);
  const [, hem] = takeUps(state, CUT);
  const done = act(state, { do: 'choose', place: hem!.place, parts: hem!.parts, now }).state;
  expect(done.answer.conflicts).toEqual([]);
  expect(done.answer.values.get(homeOf('back', '', 'finished-length'))).toMatchObject({
    value: mm(600),
  });
});

test('what is over goes into a larger one', () => {
  expect(shown(doing(back(), cut(660)), CUT)).toEqual([
    ['seam', 15, 20, '2 cm'],
    ['hem.depth', 30, 35, '3.5 cm'],
    ['hem.turn', 10, 15, '1.5 cm'],
  ]);
});

test('nothing gives more than it has, and what is made gives nothing', () => {
  // 3 cm short: the seam has 1.5, the turn 1.
  expect(shown(doing(back(), cut(625)), CUT)).toEqual([['hem.depth', 30, 0, '0 cm']]);
  const pressed: Action[] = ['first-turn', 'allowance'].map((key) => ({
    ...{ do: 'make', home: homeOf('hem', '', key), id: key, tape: mm(1), now },
  }));
  expect(shown(doing(back(), cut(645), ...pressed), CUT)).toEqual([['seam', 15, 5, '0.5 cm']]);
});

test('a sum is left alone; what is typed in inches stays in inches, on the tape', () => {
  const sum = doing(back({ bottom: [output('hem', 'allowance'), ...typed(' + 1')] }), cut(655));
  expect(shown(sum, CUT).map(([name]) => name)).toEqual(['seam', 'hem.depth', 'hem.turn']);
  const inch = doing(back({ bottom: typed('1 1/2', 'in'), length: typed('24', 'in') }), {
    ...{ do: 'make', home: CUT, id: 'cut', tape: 12_700, measured: 203_200 * 25, now },
  });
  // 24 + 1 1/2 in + 1.5 cm less 25 in: 1 3/32 in too much, which on a tape of sixteenths stays at the sum of cm.
  expect(shown(inch, CUT).find(([name]) => name === 'back.bottom')?.[3]).toMatch(/in|^[\d. /]+$/);
});

test('a row that is wholly sewn: the end below the last takes up a longer edge', () => {
  const press = Array.from({ length: 7 }, (_, i): Action => {
    return { do: 'make', home: HOOKS, id: `h${i}`, tape: mm(1), now };
  });
  const longer: Action = {
    ...{ do: 'choose', place: { quantity: 'front' }, parts: typed('47.3'), now },
  };
  const state = doing(waistcoat, ...press, longer);
  expect(state.answer.conflicts.map(({ home }) => home)).toEqual([HOOKS]);
  expect(shown(state, HOOKS)).toEqual([['hooks.bottom', 25, 35, '3.5 cm']]);
  // Under way it is placed by the ways of a row.
  expect(takeUps(doing(waistcoat, ...press.slice(0, 6), longer), HOOKS)).toEqual([]);
});

test('fine within 3 mm is kept with the way, lets what is asked move by as much, and goes on', () => {
  const third: Action[] = [1, 2, 3].map((i) => ({
    ...{ do: 'make', home: HOOKS, id: `h${i}`, tape: mm(1), now },
    ...(i === 3 && { measured: mm(158) }),
  }));
  const taken = doing(waistcoat, ...third, {
    ...{ do: 'decide', home: HOOKS, way: 'asked', allow: mm(5), now },
  });
  expect(allowedAt(taken, HOOKS)).toBe(mm(5));
  const moved = (text: string) =>
    act(taken, { do: 'choose', place: { quantity: 'front' }, parts: typed(text), now }).state;
  expect(moved('46.7').answer.conflicts).toEqual([]);
  const off = moved('52.3');
  expect(off.answer.conflicts.map(({ home }) => home)).toEqual([HOOKS]);
  // Decided anew, what was allowed goes on.
  const again = act(off, { do: 'decide', home: HOOKS, way: 'spread', now }).state;
  expect(allowedAt(again, HOOKS)).toBe(mm(5));
});

test('a single number that is within what is allowed is none to decide about, asked again or not', () => {
  const short = doing(back(), cut(653), {
    ...{ do: 'decide', home: CUT, way: 'noted', allow: mm(3), now },
  });
  expect(short.answer.conflicts).toEqual([]);
  const asked = (text: string) =>
    act(short, {
      ...{ do: 'choose', place: { work: 'back', field: 'length' }, parts: typed(text), now },
    }).state.answer.conflicts.length;
  expect([asked('60.1'), asked('60.4')]).toEqual([0, 1]);
});

/** An invented skirt of one piece: its waist, with wearing ease, is the wanted width between two seams of 1.5 cm. */
const skirtOfOne = garmentOf({
  quantities: { waist: { name: 'Waist', kind: 'length', rank: 1, parts: typed('70') } },
  works: {
    fit: {
      ...{ name: 'Fit', calculation: 'fit', rank: 2 },
      fields: { body: [quantity('waist')], ease: typed('2.5') },
    },
    skirt: {
      ...{ name: 'Skirt', calculation: 'piece', rank: 3 },
      fields: {
        ...{ width: [output('fit', 'wanted')], length: typed('60'), top: typed('1.5') },
        ...{ bottom: typed('4'), side: typed('1.5'), fold: typed('none'), sides: typed('alike') },
        ...{
          count: typed('1'),
          pairs: typed('alike'),
          given: typed('finished'),
          angle: typed('90'),
        },
        ...{ shrinksAcross: typed('0'), shrinksAlong: typed('0') },
      },
    },
  },
});
const WIDE = homeOf('skirt', '', 'cut-width');

test('a piece cut 1 cm narrow: its seams take it up, or the ease of the fit it is cut to; the body gives nothing', () => {
  const state = doing(skirtOfOne, {
    // 70 + 2.5 + 2 × 1.5 = 75.5; cut 74.5.
    ...{ do: 'make', home: WIDE, id: 'cut', tape: mm(1), measured: mm(745), now },
  });
  expect(state.answer.troubles).toEqual([]);
  expect(state.answer.conflicts.map(({ home }) => home)).toEqual([WIDE]);
  expect(shown(state, WIDE)).toEqual([
    ['skirt.side', 15, 10, '1 cm'],
    ['fit.ease', 25, 15, '1.5 cm'],
  ]);
  const ease = takeUps(state, WIDE).find(({ place }) => 'work' in place && place.work === 'fit');
  const done = act(state, { do: 'choose', place: ease!.place, parts: ease!.parts, now }).state;
  expect(done.answer.conflicts).toEqual([]);
  expect(done.answer.values).toEqual(ease!.answer.values);
  expect(done.answer.values.get(homeOf('fit', '', 'wanted'))).toMatchObject({ value: mm(715) });
});

test('an ease that is too small for it, or was read off a tape, gives nothing', () => {
  const eased = (ease: string) => {
    const record = structuredClone(skirtOfOne);
    (record.works.fit as { fields: Record<string, Parts> }).fields.ease = typed(ease);
    return record;
  };
  const narrow = { ...cut(0), home: WIDE } as Action;
  const places = (ease: string, measured: number) =>
    shown(doing(eased(ease), { ...narrow, measured: mm(measured) } as Action), WIDE).map(
      ([name]) => name,
    );
  expect(places('0.5', 725)).toEqual(['skirt.side']);
  expect(places('2.5 ± 0.1 cm', 745)).toEqual(['skirt.side']);
});
