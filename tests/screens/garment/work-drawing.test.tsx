import { cleanup, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { DRAWINGS } from '../../../src/calculations/list.ts';
import { type Action, act } from '../../../src/garment/actions/act.ts';
import { begin, type State } from '../../../src/garment/actions/state.ts';
import { homeOf } from '../../../src/garment/record/home.ts';
import { DrawnHere } from '../../../src/screens/garment/works/drawn-here.tsx';
import { benchOf } from '../../controls/helpers.ts';
import { garmentOf, typed } from '../../garment/trial/garments.ts';
import { KNOWN } from '../../garment/trial/known.ts';
import { HOOKS, waistcoat } from '../../garment/trial/waistcoat.ts';
import { openIn, skirt } from './work-hand.tsx';

afterEach(cleanup);

const CM = 80_000;
const press = (home: string, id: string, measured?: number): Action => {
  return { do: 'make', home, id, tape: 8000, now: 1, ...(measured && { measured: measured * CM }) };
};
const doing = (state: State, ...actions: readonly Action[]) =>
  actions.reduce((so, action) => act(so, action).state, state);

/** The marks of a drawing in order: whether each is full, and where its middle is, in parts of the row. */
function marks() {
  const rings = [...document.querySelectorAll('.drawing .ring')];
  const places = rings.map((ring) => {
    const xs = [...(ring.getAttribute('d') ?? '').matchAll(/[ML]([\d.]+) /g)].map(([, x]) =>
      Number(x),
    );
    return (Math.min(...xs) + Math.max(...xs)) / 2;
  });
  const [first = 0, last = 1] = [places[0], places.at(-1)];
  return rings.map((ring, i) => ({
    made: ring.classList.contains('made'),
    open: ring.classList.contains('open'),
    at: ((places[i] ?? 0) - first) / (last - first),
  }));
}

test('what is made of a row is full on its drawing, what is to come is open, each where it is', async () => {
  const held = await openIn(waistcoat, 'hooks');
  expect(marks().map(({ made }) => made)).toEqual(Array(7).fill(false));
  held.act(press(HOOKS, 'f1'));
  held.act(press(HOOKS, 'f2'));
  // The third at 15.8 where 15.4 stood on the key: nothing is decided yet, and the rest goes on as begun.
  held.act(press(HOOKS, 'f3', 15.8));
  await waitFor(() => expect(marks().filter(({ made }) => made)).toHaveLength(3));
  const now = marks();
  expect(now.map(({ made, open }) => [made, open])).toEqual([
    ...Array(3).fill([true, false]),
    ...Array(4).fill([false, true]),
  ]);
  // From 1.2 to 43.8 + 0.4 cm.
  const at = (cm: number) => (cm - 1.2) / (44.2 - 1.2);
  [1.2, 8.3, 15.8, 22.9, 30, 37.1, 44.2].forEach((cm, i) => {
    expect(now[i]?.at).toBeCloseTo(at(cm), 2);
  });
  held.act({ do: 'decide', home: HOOKS, way: 'spread', now: 2 });
  await waitFor(() => expect(marks().at(-1)?.at).toBe(1));
  // Spread: 22.8, 29.8, 36.8, 43.8.
  expect(marks()[3]?.at).toBeCloseTo((22.8 - 1.2) / (43.8 - 1.2), 2);
  expect(marks()[2]?.at).toBeCloseTo((15.8 - 1.2) / (43.8 - 1.2), 2);
});

test('what the hand makes has on its drawing the number of its key, rounded to the same side', async () => {
  const fields = {
    ...{ who: typed('grown'), widest: typed('80'), by: typed('free'), free: typed('14') },
    ...{ thick: typed('0.5'), turn: typed('0.5'), edge: typed('0.2') },
  };
  const cord = { name: 'Cord', calculation: 'cord', rank: 1, fields };
  await openIn(garmentOf({ works: { cord } }), 'cord');
  const labels = screen.getAllByRole('button').map((one) => one.getAttribute('aria-label') ?? '');
  const found = labels.filter((one) => one.endsWith('name it')).join(' ');
  expect(found).toContain('Casing, above the fold, 1.9 cm');
  expect(found).toContain('Stitch line of the casing, 1.2 cm');
});

test('home draws the work in hand as it stands, too', async () => {
  const state = doing(begin(waistcoat, KNOWN), press(HOOKS, 'f1'), press(HOOKS, 'f2', 8.8));
  const drawing = await DRAWINGS.closures?.();
  if (!drawing) throw new Error('closures are not drawn');
  render(<DrawnHere state={state} work="hooks" side="" drawing={drawing} bench={benchOf()} />);
  expect(marks().map(({ made }) => made)).toEqual([true, true, ...Array(5).fill(false)]);
});

test('a drawing without its own row has it under it: pleats, their lines folded and to come', async () => {
  const pleated = garmentOf({
    works: {
      skirt: {
        name: 'Skirt',
        calculation: 'pleats',
        rank: 1,
        fields: {
          ...{ finished: typed('40'), by: typed('count'), count: typed('4') },
          ...{ depth: typed('3'), kind: typed('knife'), seam: typed('1') },
        },
      },
    },
  });
  const held = await openIn(pleated, 'skirt');
  const all = marks().length;
  expect(all).toBeGreaterThanOrEqual(8);
  expect(marks().every(({ open }) => open)).toBe(true);
  held.act({ ...press(homeOf('skirt', '', 'strip'), 'cut') } as Action);
  held.act({ ...press(homeOf('skirt', '', 'marks'), 'm'), upTo: 3 } as Action);
  await waitFor(() => expect(marks().filter(({ made }) => made)).toHaveLength(3));
  expect(marks()).toHaveLength(all);
});

test('while its drawing is on its way a work keeps its place, and lists no fields that leave again', async () => {
  await openIn(skirt, 'close', { drawing: 'awaited' });
  expect(document.querySelectorAll('.tiles .seen input')).toHaveLength(0);
  expect(document.querySelector<HTMLElement>('.drawing-room')?.style.minHeight).toBe('20rem');
  cleanup();
  // What has no drawing, or one that can't be had, is its list.
  await openIn(skirt, 'close', { drawing: undefined });
  expect(document.querySelectorAll('.tiles .seen input').length).toBeGreaterThan(3);
  expect(document.querySelector<HTMLElement>('.drawing-room')?.style.minHeight).toBe('');
  expect(screen.queryByText('Opening')).toBeTruthy();
});
