import { expect, test } from 'vitest';
import { demoWords } from '#words/garment/demo-words.ts';
import { type Action, act } from '../../../src/garment/actions/act.ts';
import { demoGarment } from '../../../src/garment/actions/demo.ts';
import { WAISTCOAT } from '../../../src/garment/actions/demo-waistcoat.ts';
import { begin, type State } from '../../../src/garment/actions/state.ts';
import { partsOf } from '../../../src/garment/actions/typed-parts.ts';
import { homeOf } from '../../../src/garment/record/home.ts';
import { openQuantity } from '../../../src/screens/garment/works/open-quantity.ts';
import { openWork } from '../../../src/screens/garment/works/open-work.ts';
import {
  answerOf,
  givesOf,
  headlineOf,
  numberText,
} from '../../../src/screens/garment/works/work-numbers.ts';
import { benchOf } from '../../controls/helpers.ts';
import { doing, garment, work } from '../../garment/materials/garments.ts';
import { alike } from '../../garment/trial/compare.ts';
import { garmentOf, quantity, typed } from '../../garment/trial/garments.ts';
import { KNOWN } from '../../garment/trial/known.ts';

const SLANTED = { one: '100', other: '101.5', across: '20', depth: '4', turn: '1' };
const bench = benchOf();
const place = { work: 'hooks', field: 'top' };

function typing(state: State, text: string): State {
  return act(state, { do: 'type', place, parts: typed(text), now: 1 }).state;
}

function answered(state: State) {
  const open = openWork(state, 'hooks', '', bench);
  if (!open) throw new Error('there is no such work');
  return answerOf(state, open);
}

test('a key works out again only what reads the field that is typed into, and comes to the same', () => {
  const settled = begin(demoGarment(WAISTCOAT, demoWords.waistcoat, 'demo', 1, KNOWN), KNOWN);
  const first = answered(typing(settled, '1'));
  const next = typing(settled, '1.5');
  const second = answered(next);
  expect(second.evaluated).toBeLessThan(first.evaluated);
  // Of a garment in which nothing was typed before it.
  const fresh = { ...next, answer: { ...next.answer } };
  expect(alike(second, answered(fresh))).toBe(true);
});

// 5 ÷ cos 4.2892° = 5.014 below 100; of cloth of 105.58 there is 0.566 over. No outside source.
test.each([
  ['no less, up', {}, 'cut-one', '105.1 cm'],
  [
    'no more, down',
    { given: 'cloth', thereOne: '105.58', thereOther: '106.514' },
    'trim-one',
    '0.5 cm',
  ],
])('an open work says a number as its step rounds it: what is %s', (_, set, key, said) => {
  const fields = Object.fromEntries(
    Object.entries({ ...SLANTED, ...set }).map(([field, text]) => [field, typed(text)]),
  );
  const work = { name: 'Hem', calculation: 'slant', rank: 1, fields };
  const state = begin(garmentOf({ works: { hem: work } }), KNOWN);
  const open = openWork(state, 'hem', '', bench);
  const gives = open && givesOf(open, state.answer).find(({ output }) => output.key === key);
  expect(gives && numberText(gives.output, gives.number ?? 0, bench)).toBe(said);
});

test('what is next in an open work is the next step in the order of the work, as the key says', () => {
  const tiers = work('tiers', 'depths=20; 22; 28');
  const first = garment({ tiers });
  const made = ['deep-1', 'strip-1'].map((key, now) => ({
    ...({ do: 'make', home: homeOf('tiers', '', key), tape: 8000, id: key, now } as const),
  }));
  const state = doing(first, ...made);
  const open = openWork(state, 'tiers', '', bench);
  const gives = open ? givesOf(open, state.answer) : [];
  const next = state.answer.steps.find((step) => step.made !== step.of)?.home;
  expect(next).toBe(homeOf('tiers', '', 'deep-2'));
  expect(headlineOf(gives, state.answer, undefined)?.home).toBe(next);
});

test.each([
  ['a mixed number', typed('46-5/16', 'in')],
  ['a bracket', [...typed('2 × (', 'in'), quantity('front'), ...typed(' − 1)', 'in')]],
  ['a sum of products', [...typed('3 × (5/8 + 1) − ', 'in'), quantity('front')]],
])('%s typed in inches is opened in centimetres, typed on, and stays as long', (_, parts) => {
  const long = { kind: 'length', rank: 1 } as const;
  const record = garmentOf({
    quantities: {
      front: { ...long, name: 'Front', parts: typed('20') },
      sum: { ...long, name: 'Sum', parts },
    },
  });
  const before = begin(record, KNOWN);
  const cm = benchOf({ unit: 'cm' });
  const [field] = openQuantity(before, 'sum', cm)?.fields ?? [];
  if (!field) throw new Error('there is no such quantity');
  const put = {
    do: 'type',
    place: field.place,
    parts: partsOf(field.text, field.taken, cm),
    now: 1,
  };
  const after = act(act(before, put as Action).state, { do: 'settle', now: 1 }).state;
  const valueIn = ({ answer }: State) => answer.values.get(homeOf('sum'));
  expect(valueIn(before)).toMatchObject({ ok: true });
  expect(valueIn(after)).toEqual(valueIn(before));
});
