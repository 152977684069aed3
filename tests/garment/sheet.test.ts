import { expect, test } from 'vitest';
import { act } from '../../src/garment/actions/act.ts';
import { begin, type State } from '../../src/garment/actions/state.ts';
import { sheetOf } from '../../src/garment/sheet/sheet.ts';
import { mm } from '../../src/lengths/length.ts';
import { KNOWN } from './trial/known.ts';
import { randomGarment } from './trial/random-garment.ts';
import { HOLES, HOOKS, waistcoat } from './trial/waistcoat.ts';

const now = 1;
let ids = 0;
const hook = (state: State, measured?: number): State =>
  act(state, {
    ...{ do: 'make', home: HOOKS, id: `f${ids++}`, tape: 8000, now },
    ...(measured !== undefined && { measured }),
  }).state;
const sheetNow = ({ record, answer }: State) => sheetOf(record, answer);
const rowAt = (state: State, home: string) => {
  const steps = sheetNow(state).stages.flatMap((one) => one.steps);
  return steps.find(({ step }) => step.home === home);
};

test('a row is ticked where it is made, with where that was', () => {
  const state = hook(hook(begin(waistcoat, KNOWN)), mm(83.4));
  const row = rowAt(state, HOOKS);
  if (row?.number.is !== 'row') throw new Error(row?.number.is);
  expect(row.number.row.marks.map(({ made }) => made)).toEqual([
    true,
    true,
    ...Array<boolean>(5).fill(false),
  ]);
  expect(row.number.row.marks[1]?.at).toBe(mm(83.4));
  expect(row.number.row.ticks).toHaveLength(7);
});

test('of a row that waits for a decision only what is made is on the sheet', () => {
  const state = hook(hook(hook(begin(waistcoat, KNOWN))), mm(158));
  expect(state.answer.conflicts).toHaveLength(1);
  const row = rowAt(state, HOOKS);
  if (row?.number.is !== 'undecided') throw new Error(row?.number.is);
  expect(row.number.row?.marks.every(({ made }) => made)).toBe(true);
  expect(sheetNow(state).conflicts).toHaveLength(1);
});

test('of a row that can not be worked out what is made is on the sheet', () => {
  const row = rowAt(hook(hook(hook(begin(waistcoat, KNOWN))), mm(240)), HOOKS);
  if (row?.number.is !== 'waits') throw new Error(row?.number.is);
  expect(row.number.row?.marks.map(({ at }) => at)).toEqual([mm(12), mm(83), mm(240)]);
});

test('of a long row every tenth mark has a box, and the space between is said', () => {
  const row = rowAt(begin(waistcoat, KNOWN), HOLES);
  if (row?.number.is !== 'row') throw new Error(row?.number.is);
  expect(row.number.row.marks).toHaveLength(78);
  expect(row.number.row.ticks.map((rank) => rank + 1)).toEqual([1, 10, 20, 30, 40, 50, 60, 70, 78]);
  const { least = 0, most = 0 } = row.number.row.between ?? {};
  expect(Math.abs(least - mm(8))).toBeLessThan(mm(0.05));
  expect(Math.abs(most - least)).toBeLessThan(mm(0.05));
});

test('a number that is still being typed is not on the sheet, and that is told', () => {
  const place = { quantity: 'front' } as const;
  const typing = act(begin(waistcoat, KNOWN), {
    ...{ do: 'type', place, parts: [{ text: '50', unit: 'cm' }], now },
  } as const).state;
  const sheet = sheetNow(typing);
  expect(sheet.pending).toBe(true);
  const front = sheet.quantities.find(({ id }) => id === 'front');
  expect(front?.number).toMatchObject({ is: 'sure', value: mm(463) });
});

test('nothing undecided, waiting or impossible is a sure number, in any garment', () => {
  for (let seed = 1; seed <= 60; seed++) {
    const state = begin(randomGarment(seed), KNOWN);
    const { values } = state.answer;
    const sheet = sheetNow(state);
    const steps = sheet.stages.flatMap((one) => one.steps);
    expect(steps).toHaveLength(state.answer.steps.length);
    for (const { step, number, made } of steps) {
      const result = values.get(step.home);
      if (!result?.ok) expect(number.is).toBe('waits');
      else if (result.undecided && !made) expect(number.is).toBe('undecided');
      else expect(['sure', 'row']).toContain(number.is);
    }
    for (const { home, number } of sheet.gives) {
      const result = values.get(home);
      const sure = result?.ok === true && result.undecided !== true;
      expect(number.is === 'sure' || number.is === 'row').toBe(sure);
    }
  }
});
