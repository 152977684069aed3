import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, expect, test, vi } from 'vitest';
import { type Action, act } from '../../../src/garment/actions/act.ts';
import { begin, type State } from '../../../src/garment/actions/state.ts';
import { homeOf } from '../../../src/garment/record/home.ts';
import type { Garment, Quantity } from '../../../src/garment/record/record.ts';
import { plusMinus } from '../../../src/garment/work-out/doubt.ts';
import { mm } from '../../../src/lengths/length.ts';
import { LaidLength } from '../../../src/screens/garment/materials/laid-length.tsx';
import { Measures } from '../../../src/screens/garment/measures/measures.tsx';
import { partsText } from '../../../src/screens/garment/said/parts-text.ts';
import { benchOf } from '../../controls/helpers.ts';
import { doing, garment, one, work } from '../../garment/materials/garments.ts';
import { quantity } from '../../garment/trial/garments.ts';
import { KNOWN } from '../../garment/trial/known.ts';
import { waistcoat } from '../../garment/trial/waistcoat.ts';

afterEach(cleanup);

const bench = benchOf();
const sum: Quantity = {
  name: 'Both',
  kind: 'length',
  rank: 3,
  parts: [quantity('front'), { text: ' + ', unit: 'cm' }, quantity('armhole')],
};
const withSum: Garment = {
  ...waistcoat,
  quantities: { ...waistcoat.quantities, both: sum },
};

const text = (said: string) => ({ text: said, unit: 'in' as const });

/** The screen over a garment in hand, as the app keeps it. */
function show(record: Garment = withSum, onRead?: (id: string) => void, first?: string) {
  let latest = begin(record, KNOWN);
  const done = vi.fn();
  function Hand() {
    const [state, setState] = useState(latest);
    const onAct = (action: Action) => {
      latest = act(latest, action).state;
      setState(latest);
    };
    return <Measures {...{ state, bench, onAct, onDone: done, onRead, first, Laid: LaidLength }} />;
  }
  render(<Hand />);
  return { state: () => latest, done };
}

const rows = () =>
  within(screen.getByRole('list'))
    .getAllByRole('button')
    .map(({ textContent }) => textContent);
const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }));
const key = (name: string) => {
  const pad = within(screen.getByRole('group', { name: 'Number pad' }));
  fireEvent.pointerDown(pad.getByRole('button', { name }), { button: 0 });
};
const value = (state: State, id: string) => {
  const result = state.answer.values.get(homeOf(id));
  return result?.ok ? result.value : undefined;
};

test('each number says what it is and where it is from, a sum by the names in it', () => {
  show();
  expect(rows()).toEqual([
    'Front edgetyped46.3 cm',
    'Armhole, roundread, ± 0.2 cm62.4 ± 0.2 cm',
    'Bothfrom [Front edge] + [Armhole, round]108.7 ± 0.2 cm',
  ]);
});

test('in a sum every bare length has its unit, and a factor has none', () => {
  const buttons = { name: 'Buttons', kind: 'count' as const, rank: 4, parts: [text('6')] };
  const quantities = { ...waistcoat.quantities, buttons };
  const state = begin({ ...waistcoat, quantities }, KNOWN);
  const said = (...parts: Quantity['parts']) => partsText(state, parts, true);
  const [front, count] = [quantity('front'), quantity('buttons')];
  expect(said(text('2 × '), front, text(' + 1 1/2'))).toBe('2 × [Front edge] + 1 1/2 in');
  expect(said(text('2 × ('), front, text(' − 1)'))).toBe('2 × ([Front edge] − 1 in)');
  expect(said(count, text(' × 2 + '), front)).toBe('[Buttons] × 2 in + [Front edge]');
  expect(said(text('40 1/4'))).toBe('40 1/4 in');
  expect(said({ text: '3 + ', unit: 'mm' }, front, text(' + 3'))).toBe(
    '3 mm + [Front edge] + 3 in',
  );
  // Of what is gone nobody knows whether it was a length.
  expect(said(quantity('none'), text(' × 2'))).toBe(
    '[something that isn’t in this garment any more] × 2',
  );
});

test('one is typed anew: pending until Done, then one change, and its ± is gone', () => {
  const { state } = show();
  press(/^Armhole/);
  press('Type it anew');
  for (const digit of '63') key(digit);
  expect(value(state(), 'armhole')).toBe(mm(624));
  expect(screen.getByRole('region', { name: 'When this settles' }).textContent).toMatch(/63 cm/);
  press('Done');
  expect(value(state(), 'armhole')).toBe(mm(630));
  expect(state().log).toHaveLength(1);
  const now = state().answer.values.get(homeOf('armhole'));
  expect(now && plusMinus(now)).toBe(0);
});

test('that what is made would differ is told before what else changes', () => {
  const strip = work('piece', 'width=40&length=60&top=0&bottom=0&side=0&count=1', {
    name: 'Strip',
  });
  const linked = {
    ...garment({ strip }).record,
    quantities: {
      wide: { name: 'Wide', kind: 'length', rank: 1, parts: [{ text: '40', unit: 'cm' }] },
    },
  } as Garment;
  const taken = act(begin(linked, KNOWN), {
    ...{ do: 'choose', place: { work: 'strip', field: 'width' }, now: 1 },
    parts: [quantity('wide')],
  }).state;
  const home = homeOf('strip', '', 'cut-width');
  const made = act(taken, { do: 'make', home, id: 'f', tape: 8000, now: 2 }).state;
  show(made.record);
  press(/^Wide/);
  press('Type it anew');
  for (const digit of '45') key(digit);
  const told = screen.getByRole('region', { name: 'When this settles' }).textContent ?? '';
  expect(told).toMatch(
    /^When this settlesOne that is made would differStrip · Width to cutmade 40, asked 45 cm/,
  );
});

test('one is measured, and the measure taken back', () => {
  const { state } = show();
  press(/^Front edge/);
  press('Measure it');
  for (const digit of ['4', '7']) key(digit);
  press('Keep this measure');
  expect(value(state(), 'front')).toBe(mm(470));
  expect(screen.getByText('measured')).toBeTruthy();
  expect(screen.queryByRole('button', { name: 'Type it anew' })).toBeNull();
  press('Take the measure back: 46.3 cm again');
  expect(value(state(), 'front')).toBe(mm(463));
});

test('a sum is not measured; one that is read asks for the tape', () => {
  const onRead = vi.fn();
  show(withSum, onRead);
  press(/^Both/);
  expect(screen.queryByRole('button', { name: 'Measure it' })).toBeNull();
  expect(screen.queryByRole('button', { name: 'Read it off a tape' })).toBeNull();
  press('Done');
  press(/^Front edge/);
  press('Read it off a tape');
  expect(onRead).toHaveBeenCalledWith('front');
});

test('it is renamed, said to be final and to be of a body', () => {
  const { state } = show();
  press(/^Front edge/);
  press('Rename');
  fireEvent.input(screen.getByLabelText('Name'), { target: { value: '  ' } });
  press('Rename');
  expect(screen.getByText('Name: give it one, so that you find it again.')).toBeTruthy();
  fireEvent.input(screen.getByLabelText('Name'), { target: { value: 'Edge' } });
  press('Rename');
  press(/^It is final/);
  press(/^A measure of someone/);
  expect(state().record.quantities.front).toMatchObject({ name: 'Edge', final: true, body: true });
  press(/^It is final/);
  expect(state().record.quantities.front).not.toHaveProperty('final');
  press('Done');
  expect(rows()[0]).toBe('Edgetyped · body46.3 cm');
});

test('what is taken is not taken off, and who takes it is said; what is not, goes', () => {
  const { state } = show();
  press(/^Front edge/);
  press('Take it off');
  expect(screen.getByRole('alert').textContent).toBe(
    'Not taken off: Both, Hooks · Opening take it. Type numbers there, or take others; then take it off.',
  );
  press('Done');
  press(/^Both/);
  press('Take it off');
  expect(state().record.quantities).not.toHaveProperty('both');
  expect(rows()).toHaveLength(2);
});

test('a number is added with its kind, and typed', () => {
  const { state } = show();
  press('Add a number');
  fireEvent.input(screen.getByLabelText('Name'), { target: { value: 'Buttons' } });
  press('how many');
  press('Add');
  key('9');
  press('Done');
  press('Done');
  expect(rows().at(-1)).toBe('Buttonstyped9');
  const [, added] = Object.entries(state().record.quantities).at(-1) ?? [];
  expect(added).toMatchObject({ name: 'Buttons', kind: 'count', rank: 4 });
});

test('places of marks are a number of the garment too: typed as a list, or a row of a work taken', async () => {
  const { state } = show();
  press('Add a number');
  fireEvent.input(screen.getByLabelText('Name'), { target: { value: 'Buttonholes' } });
  press('places');
  press('Add');
  const input = await screen.findByLabelText<HTMLInputElement>(/^Buttonholes/, {
    selector: 'input',
  });
  fireEvent.input(input, { target: { value: '1.2; 8.3; 15.8' } });
  press('Done');
  const [id] = [...state().answer.sound.quantities].find(
    ([, { name }]) => name === 'Buttonholes',
  ) ?? [''];
  const places = (of: State) => {
    const run = value(of, id);
    return typeof run === 'object' ? run.marks.map(({ at }) => at / mm(10)) : [];
  };
  expect(places(state())).toEqual([1.2, 8.3, 15.8]);
  press('Type it anew');
  press('From the garment');
  fireEvent.click(await screen.findByRole('button', { name: /^Hooks · Places of the closures/ }));
  press('Done');
  expect(places(state())).toHaveLength(7);
});

test('a sum is added and taken together from the garment, link by link', () => {
  const { state } = show(waistcoat);
  press('Add a sum');
  fireEvent.input(screen.getByLabelText('Name'), { target: { value: 'Long' } });
  press('Add');
  press(/^Front edge/);
  key('plus');
  press('From the garment');
  press(/^Armhole, round/);
  press('Done');
  const [id, added] = Object.entries(state().record.quantities).at(-1) ?? ['', undefined];
  expect(value(state(), id)).toBe(mm(1087));
  expect((added as Quantity).parts.filter((part) => 'link' in part)).toHaveLength(2);
  press('Done');
  expect(rows().at(-1)).toMatch(/^Longfrom \[Front edge\] \+ \[Armhole, round\]108\.7 ± 0\.2 cm$/);
});

test('a number not given says so in place of where it is from', () => {
  const empty = { ...sum, name: 'Later', parts: [{ text: '', unit: 'cm' as const }] };
  show({ ...waistcoat, quantities: { later: empty } });
  expect(rows()).toEqual(['LaterLater: give a number.—']);
});

test('the number that a step lacks is opened at once; one that is gone leaves the list', () => {
  show(withSum, undefined, 'armhole');
  expect(screen.getByRole('heading', { level: 1 }).textContent).toBe('Armhole, round');
  cleanup();
  show(withSum, undefined, 'gone');
  expect(rows()).toHaveLength(3);
  expect(screen.getByRole('button', { name: 'Add a number' })).toBeTruthy();
});

test('one that is as long as a lay says whether it was found for these sizes, and isn’t typed over', () => {
  const piece = work('piece', 'width=40&length=60&top=0&bottom=0&side=0&count=2', {
    name: 'Front',
  });
  const first = garment({ front: piece }, { cloth: { width: mm(1400) } });
  const found = { length: mm(600), laid: [], of: one(first, 'cloth').lay!.of! };
  const length = { id: 'laid', name: 'Length laid' };
  const laid = doing(first, { do: 'lay', id: 'cloth', found, quantity: length, now: 1 });
  show(laid.record);
  expect(rows()).toEqual(['Length laidfound by laying the pieces · for these sizes60 cm']);
  press(/^Length laid/);
  expect(screen.queryByRole('button', { name: /^(Type|Measure|Read)/ })).toBeNull();
  cleanup();
  const parts = [{ text: '41', unit: 'cm' as const }];
  const place = { work: 'front', field: 'width' };
  show(doing(laid, { do: 'choose', place, parts, now: 2 }).record);
  expect(rows()[0]).toMatch(/The lay of 60 cm was found for other sizes \(Front\): lay the pieces/);
  cleanup();
  show({ ...laid.record, lays: {} });
  expect(rows()[0]).toMatch(/the lay is not there any more/);
});
