/** A fit whose pieces are works of the garment, cut and not, left and right: an invented coat, worked by hand. */
import { expect, test } from 'vitest';
import { type Action, act } from '../../src/garment/actions/act.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { withKeys } from '../../src/garment/actions/with-keys.ts';
import { homeOf } from '../../src/garment/record/home.ts';
import type { Parts } from '../../src/garment/record/record.ts';
import { mm } from '../../src/lengths/length.ts';
import { work } from './materials/garments.ts';
import { garmentOf, output, typed } from './trial/garments.ts';
import { KNOWN } from './trial/known.ts';

const now = 3;
/** Back on the fold 52, each front 27, with 1.5 at its seams; hips of 96 with 8 of ease: 104 is wanted. */
const back = work('piece', 'width=52&length=60&top=1&bottom=4&side=1.5&fold=side');
const front = work('piece', 'width=27&length=60&top=1&bottom=4&side=1.5', {
  sides: ['left', 'right'],
});

function coat(pieces: Parts): State {
  const fit = work('fit', 'body=96&of=hip&ease=8&seams=2');
  const fields = { ...fit.fields, pieces };
  const record = garmentOf({ works: { back, front, fit: { ...fit, fields } } });
  return begin(withKeys(record, KNOWN), KNOWN);
}

const doing = (state: State, ...actions: readonly Action[]) =>
  actions.reduce((so, action) => act(so, action).state, state);
const cut = (work: string, side: string, measured: number): Action => ({
  ...{ do: 'make', home: homeOf(work, side, 'cut-width'), id: `${work}${side}` },
  ...{ tape: mm(1), measured: mm(10 * measured), now },
});
const found = ({ answer }: State, key: string) => {
  const one = answer.values.get(homeOf('fit', '', key));
  return one?.ok && typeof one.value === 'number' ? Math.round(one.value / mm(0.01)) / 1000 : one;
};

const named: Parts = [
  output('back', 'gives-width'),
  ...typed('+'),
  output('front', 'gives-width', 'left'),
  ...typed('+'),
  output('front', 'gives-width', 'right'),
];
const total: Parts = [
  output('back', 'gives-width-all'),
  ...typed('+'),
  output('front', 'gives-width-all', 'total'),
];

test.each([
  ['each side named', named],
  ['all of each work', total],
])('pieces linked, %s: 52 + 2 × 27 is 106, 2 over; cut they count as cut', (_, pieces) => {
  const state = coat(pieces);
  expect([found(state, 'girth'), found(state, 'lacks')]).toEqual([106, -2]);
  // The back, cut 0.5 short on the fold, lacks 1 in the whole; the left front 30 − 1.2 is 25.8 finished.
  const one = doing(state, cut('back', '', 27));
  expect(found(one, 'girth')).toBe(105);
  const two = doing(one, cut('front', 'left', 28.8));
  expect([found(two, 'girth'), found(two, 'lacks')]).toEqual([103.8, 0.2]);
  expect(found(two, 'each-edge')).toBe(0.05);
  // What is cut right is as planned, and taken back is the plan again.
  expect(found(doing(two, cut('front', 'right', 30)), 'girth')).toBe(103.8);
  expect(found(doing(two, { do: 'unmake', fact: 'frontleft', now }), 'girth')).toBe(105);
});

test('a front alike on both sides may be taken twice; cut otherwise, it is asked which', () => {
  const twice: Parts = [
    output('back', 'gives-width'),
    ...typed('+ 2 ×'),
    output('front', 'gives-width'),
  ];
  const state = coat(twice);
  expect(found(state, 'girth')).toBe(106);
  const apart = doing(state, cut('front', 'left', 28.8));
  expect(found(apart, 'girth')).toMatchObject({ ok: false });
});

test('two fronts of one work, in pairs or as a count, are all in it', () => {
  const pair = work('piece', 'width=27&length=60&top=1&bottom=4&side=1.5&pairs=pairs');
  const fit = work('fit', 'body=96&of=hip&ease=8');
  const pieces: Parts = [
    output('back', 'gives-width'),
    ...typed('+'),
    output('pair', 'gives-width-all'),
  ];
  const record = garmentOf({
    works: { back, pair, fit: { ...fit, fields: { ...fit.fields, pieces } } },
  });
  const state = begin(withKeys(record, KNOWN), KNOWN);
  expect(found(state, 'girth')).toBe(106);
});
