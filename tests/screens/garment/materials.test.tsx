import { cleanup, fireEvent, render, screen, within } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, expect, test, vi } from 'vitest';
import { type Action, act } from '../../../src/garment/actions/act.ts';
import type { State } from '../../../src/garment/actions/state.ts';
import { materialsOf } from '../../../src/garment/materials/materials.ts';
import { materialLines } from '../../../src/screens/garment/materials/material-lines.ts';
import { MaterialOne } from '../../../src/screens/garment/materials/material-one.tsx';
import { MaterialsScreen } from '../../../src/screens/garment/materials/materials.tsx';
import { benchOf } from '../../controls/helpers.ts';
import { garment, work } from '../../garment/materials/garments.ts';

afterEach(cleanup);

const hooks = work('closures', 'opening=46.3&count=7&top=1.2&bottom=2.5', { name: 'Hooks' });
const front = work('piece', 'width=40&length=60&top=1.5&bottom=4&side=1.5&count=2', {
  name: 'Front',
});
const sleeve = work('piece', 'width=30&length=50&top=0&bottom=0&side=0&count=2', {
  name: 'Sleeve',
});

/** The screen over a garment in hand, as the app keeps it. */
function show(first: State, bench = benchOf()) {
  let latest = first;
  const done = vi.fn();
  const onLay = vi.fn();
  function Hand() {
    const [state, setState] = useState(latest);
    const onAct = (action: Action) => {
      latest = act(latest, action).state;
      setState(latest);
    };
    return (
      <MaterialsScreen
        {...{ state, bench, onAct, onLay, onDone: done, said: undefined, One: MaterialOne }}
      />
    );
  }
  render(<Hand />);
  return { state: () => latest, done, onLay };
}

const rows = () =>
  within(screen.getByRole('list'))
    .getAllByRole('button')
    .map(({ textContent }) => textContent);
const tick = (name: string) =>
  screen.getByRole<HTMLInputElement>('checkbox', { name: `${name}: it is there` });
const press = (name: string | RegExp) => fireEvent.click(screen.getByRole('button', { name }));
const type = (text: string) => {
  const input = screen.getByRole('textbox');
  fireEvent.input(input, { target: { value: text } });
};
const say = (part: RegExp, text: string) => {
  press(part);
  type(text);
  press('Keep it');
};
const page = () => document.body.textContent;

test('each is a line with how much to buy; cloth without its width is no number', () => {
  show(garment({ hooks, front }));
  expect(rows()).toEqual(['Clothsay how wide it is—', 'HooksClosures7']);
  expect(tick('Cloth').disabled).toBe(true);
  expect(page()).not.toMatch(/All together/);
});

test('its width is typed, its shop’s unit, its price: an upper bound, and what it costs', () => {
  const { state } = show(garment({ hooks, front, sleeve }));
  press(/^Cloth/);
  expect(page()).toMatch(/Say how wide it is/);
  say(/^Usable width/, '140');
  expect(page()).toMatch(/at most 115.5 cm/);
  expect(page()).toMatch(/That is an upper bound/);
  say(/^Sold by/, '10');
  say(/^Price/, '12.50');
  say(/^Spare/, '5');
  expect(page()).toMatch(/With 5 % spare: 121.3 cm.Sold by 10 cm: 130 cm \(1.3 m\) to buy/);
  expect(page()).toMatch(/Price: 12.50 a metre/);
  press('Done');
  expect(rows()[0]).toBe('Clothlaid in rowsat most 130 cm (1.3 m)');
  expect(page()).toMatch(/All together 16.25 · still to buy 16.25 · one has no price yet/);
  expect(state().record.materials).toEqual({
    cloth: {
      ...{ width: 11_200_000, unit: 800_000, spare: 500 },
      price: { cents: 1250, per: 8_000_000 },
    },
  });
});

// 4 + 2 × 0.19 ÷ 0.3 times 150 cm and 15 per cent are 908.5 cm.
test('what is had by length is said in metres, too, also between whole centimetres', () => {
  const thread = work('thread', 'seams=150&waste=15&end=0', { name: 'Thread' });
  const { state } = show(garment({ thread }));
  expect(rows()).toEqual(['ThreadThread908.5 cm (9.085 m)']);
  cleanup();
  show(state(), benchOf({ unit: 'in', metric: '1mm' }));
  expect(rows()[0]).toMatch(/^ThreadThread[\d /⁄]+ in$/);
  cleanup();
  const cord = work('cord', 'widest=60&free=5', { name: 'Cord' });
  show(garment({ cord }));
  expect(rows()).toEqual(['CordLace or cord70 cm']);
});

test('thread by its colour: what works take of it, in spools', () => {
  const thread = work('thread', 'stitch=lock&by=table&seams=6000&end=&waste=0', { name: 'Seams' });
  const over = work('thread', 'stitch=over3&by=table&seams=1000&end=&waste=0', { name: 'Edges' });
  const serves = { 'thread||thread': true, 'over||thread': true };
  const white = { kind: 'thread', name: 'White', rank: 1, unit: 80_000 * 10_000, serves };
  show(garment({ thread, over }, { white }));
  expect(rows()).toEqual(['WhiteThread · 5 spools50000 cm (500 m)']);
  press(/^White/);
  expect(page()).toMatch(
    /The works take 29000 cm \(290 m\).*By the spool of 10000 cm \(100 m\): 5 spools, 50000 cm \(500 m\) to buy/,
  );
  expect(page()).toMatch(/3 threads are sewn with at once, each from a spool of its own/);
});

test('a lay that was found takes the place of the bound; found for other sizes it says so', () => {
  const at = (id: string, x: number, y: number) => ({ id, turn: 0, x: 80_000 * x, y: 80_000 * y });
  const first = garment({ front }, { cloth: { width: 80_000 * 140 } });
  const id = 'front||count';
  const of = materialsOf(first.record, first.answer).all[0]?.lay?.of;
  if (!of) throw new Error('nothing to lay');
  const laid = [at(id, 32.75, 21.5), at(id, 32.75, 64.5)];
  const found = { length: 80_000 * 65.5, laid, of };
  const { state, onLay } = show(act(first, { do: 'lay', id: 'cloth', found, now: 1 }).state);
  expect(rows()[0]).toBe('Clothas the lay was found65.5 cm');
  press(/^Cloth/);
  expect(page()).toMatch(/The lay that was found, open, 140 cm wide, takes 65.5 cm/);
  expect(page()).not.toMatch(/upper bound/);
  say(/^Usable width/, '138');
  expect(page()).toMatch(
    /The lay of 65.5 cm was found for other sizes \(the cloth, or what is held on it\): lay the pieces again/,
  );
  expect(page()).toMatch(/at most 65.5 cm.*That is an upper bound/);
  press(/^Lay the pieces/);
  expect(onLay).toHaveBeenCalledWith('cloth');
  cleanup();
  const form = { kind: 'four', long: 90, top: 90, bottom: 90, slant: 'both' } as const;
  const set = { outline: { form } };
  show(act(first, { do: 'lay', id: 'cloth', piece: id, set, now: 1 }).state);
  press(/^Cloth/);
  expect(page()).toMatch(/a shape of their own are counted in it as the garment cuts them/);
  expect(page()).not.toMatch(/upper bound/);
  expect(state().record.lays).toMatchObject({ cloth: { found: { length: 80_000 * 65.5 } } });
});

// Worked by hand: rows of 65.5 are three repeats of 24 each, and one more; the lay takes 65.5, and one more.
test('how often its pattern comes again is typed, and what it takes is said: in rows, as laid, and folded', () => {
  const { state } = show(garment({ front }, { cloth: { width: 80_000 * 80 } }));
  press(/^Cloth/);
  say(/^Pattern comes again every/, '24');
  expect(page()).toMatch(/at most 168 cm/);
  expect(page()).toMatch(
    /Its pattern comes again every 24 cm: each row takes whole repeats, so that pieces begin alike in it, and one repeat more is counted\.That is an upper bound/,
  );
  say(/^Usable width/, '90');
  expect(page()).toMatch(/at most 96 cm/);
  const { record, answer } = state();
  const of = materialsOf(record, answer).all[0]?.lay?.of;
  if (!of) throw new Error('nothing to lay');
  expect(of.repeat).toBe(80_000 * 24);
  cleanup();
  const at = (y: number) => ({ id: 'front||count', turn: 0, x: 80_000 * 32.75, y: 80_000 * y });
  const found = { length: 80_000 * 65.5, laid: [at(21.5), at(64.5)], of };
  show(act(state(), { do: 'lay', id: 'cloth', found, now: 1 }).state);
  press(/^Cloth/);
  expect(page()).toMatch(
    /takes 89.5 cm\.In it each piece begins alike in the pattern; one repeat of 24 cm more is counted/,
  );
  press(/^Cut from folded cloth/);
  expect(page()).toMatch(/at most 96 cm/);
  expect(page()).toMatch(/A lay on folded cloth can’t follow the pattern of the layer below/);
});

test('ticked it is there; more of it than was there is told, with the work it stops', () => {
  const first = garment({ hooks });
  const { state } = show(first);
  fireEvent.click(tick('Hooks'));
  expect(tick('Hooks').checked).toBe(true);
  expect(state().record.materials).toEqual({ 'closure|hooks||count': { there: 7 } });
  fireEvent.click(tick('Hooks'));
  expect(state().record.materials).toBeUndefined();
  press(/^Hooks/);
  say(/^How much is there/, '5');
  expect(page()).toMatch(/There: 5.It lacks 2.What is there doesn’t reach for Hooks/);
  press('Done');
  expect(rows()).toEqual(['HooksClosures · lacks 2 · stops Hooks7']);
});

test('a piece wider than the cloth says so, by how much, and the way out', () => {
  show(garment({ front }, { cloth: { width: 8000 * 420 } }));
  press(/^Cloth/);
  expect(page()).toMatch(/Front is 1 cm wider than the cloth: take wider cloth, or cut/);
  expect(page()).toMatch(/—/);
});

test('what can’t be kept is said, and not kept', () => {
  const { state } = show(garment({ front }));
  press(/^Cloth/);
  press(/^Loses in length/);
  type('100');
  expect(screen.getByRole('status').textContent).toMatch(/from 0 to 99.99 per cent/);
  expect(screen.getByRole<HTMLButtonElement>('button', { name: 'Keep it' }).disabled).toBe(true);
  press('Leave it');
  press(/^Price/);
  type('12.345');
  expect(screen.getByRole('status').textContent).toMatch(/whole hundredths/);
  press('Leave it');
  press(/^Price/);
  type('99999999999');
  // It has whole hundredths: what is wrong is that it is so high.
  expect(screen.getByRole('status').textContent).toBe('A price is 10000000.00 at most.');
  press('Leave it');
  expect(state().record.materials).toBeUndefined();
});

test('a lining is added, and given its pieces; then taken off again', () => {
  const { state } = show(garment({ front, sleeve }));
  press('Add a material');
  fireEvent.input(screen.getByRole('textbox'), { target: { value: 'Lining' } });
  press('Add');
  const group = within(screen.getByRole('group', { name: 'What it is for' }));
  fireEvent.click(group.getByRole('button', { name: /^Front: 2 × 43 cm wide, 65.5 cm long/ }));
  expect(group.getAllByRole('button', { pressed: true })).toHaveLength(1);
  say(/^Usable width/, '140');
  expect(page()).toMatch(/at most 65.5 cm/);
  press('Done');
  expect(rows()).toHaveLength(2);
  press(/^Lining/);
  press('Take it off');
  expect(rows()).toHaveLength(1);
  expect(state().record.materials).toBeUndefined();
});

test('a strip as long as its edge is given its length here', () => {
  const bound = work('seam', 'what=finish&given=1.5&finish=bound', { name: 'Side seam' });
  const { state } = show(garment({ bound }));
  press(/^Side seam/);
  say(/^How long: Side seam/, '80');
  expect(page()).toMatch(/80 cm/);
  press(/^How long/);
  press('Say nothing of it');
  expect(state().record.materials).toBeUndefined();
});

test('on a bench of inches it is said in yards where it is sold by their eighths', () => {
  const bench = benchOf({ unit: 'in' });
  const { record, answer } = garment(
    { front, sleeve },
    { cloth: { width: 11_200_000, unit: 914_400 } },
  );
  const [cloth] = materialLines(record, { answer, bench });
  // 115.5 cm are 45.47 in: eleven eighths of a yard are 49 1/2.
  expect(cloth?.amount).toBe('at most 49 1/2 in (1 3/8 yd)');
});

test('a work this build doesn’t know is said, and what can’t be read is kept', () => {
  const lattice = work('lattice', '', { name: 'Lattice' });
  show(garment({ hooks, lattice }, { x: 7 }));
  expect(page()).toMatch(/Lattice: this version of the app doesn’t know/);
  expect(page()).toMatch(/What is said of one material can’t be read here/);
});

test('a sheet has them as lines', () => {
  const state = garment({ hooks, front }, { 'closure|hooks||count': { there: 7 } });
  const lines = materialLines(state.record, { answer: state.answer, bench: benchOf() });
  expect(lines).toEqual([
    {
      ...{ mark: '[ ]', there: false, name: 'Cloth', amount: '—' },
      notes: ['Say how wide it is: then it is known how much is wanted.'],
    },
    {
      ...{ mark: '[x]', there: true, name: 'Hooks', amount: '7' },
      notes: ['There: 7.'],
    },
  ]);
});

// By area alone 120 cm of a strip as wide as this seam's, on 140, are less than what whole strips and joins take.
test('the strip of a bound seam is cut from the cloth by one press, and said there', () => {
  const bound = work('seam', 'what=finish&given=1.5&finish=bound&edge=120', { name: 'Side seam' });
  show(garment({ front, bound }, { cloth: { width: 11_200_000 } }));
  expect(rows().join()).toContain('Side seam');
  press(/^Side seam/);
  const offered = screen.getByRole('button', { name: /^Cut it from: Cloth/ }).textContent;
  const [, long = ''] = /(\d[\d.]* cm) of it, instead of strip by length/.exec(offered ?? '') ?? [];
  expect(Number.parseFloat(long)).toBeGreaterThan(0);
  press(/^Cut it from: Cloth/);
  expect(rows().join()).not.toContain('Side seam');
  press(/^Cloth/);
  expect(page()).toContain(`Bias strips take ${long} of its whole width: cut open at 45°`);
  expect(page()).toContain('joined with 0.6 cm seams, none shorter than 10 cm');
});

test('where no piece is cut from cloth, the strip of a bound seam brings one along', () => {
  const bound = work('seam', 'what=finish&given=1.5&finish=bound&edge=120', { name: 'Side seam' });
  const { state } = show(garment({ bound }));
  press(/^Side seam/);
  press(/^Cut it from: Cloth/);
  expect(rows().join()).toMatch(/^Cloth.*say how wide it is/);
  press(/^Cloth/);
  expect(page()).toContain('No piece of it is known here: only strips are counted.');
  say(/^Usable width/, '140');
  expect(page()).toMatch(/Bias strips take \d[\d.]* cm of its whole width/);
  // A piece that is added is cut from the same cloth, and the strip is counted with it.
  show(garment({ bound, front }, state().record.materials ?? {}));
  expect(rows().filter((row) => row.startsWith('Cloth'))).toHaveLength(1);
});

test('on a sheet what is had by length and called by its work says what it is', () => {
  const cord = work('cord', 'widest=60&free=5', { name: 'Waist' });
  const lace = work('cord', 'widest=60&free=5', { name: 'Waist lace' });
  const { record, answer } = garment({ cord, lace });
  const names = materialLines(record, { answer, bench: benchOf() }).map(({ name }) => name);
  expect(names).toEqual(['Waist: lace or cord', 'Waist lace']);
});
