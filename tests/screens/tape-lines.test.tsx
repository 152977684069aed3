import { cleanup, fireEvent, screen } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { straight } from '../camera/readings.ts';
import { bridge, button, choose, finger, open, takePhoto, use } from './tape-setup.tsx';

const opened = vi.hoisted(() => ({ outcome: undefined as unknown }));
vi.mock('../../src/camera/photo.ts', () => ({ openPhoto: async () => opened.outcome }));

beforeEach(() => {
  opened.outcome = { ok: true, value: takePhoto() };
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

/** Up to the picture whose lines are to be touched. */
async function openToTouch() {
  open();
  await choose(straight({ outcome: 'cannot', reason: 'no-numbers', scales: [] }));
  fireEvent.click(await screen.findByRole('button', { name: 'Touch two lines' }));
  await screen.findByText(/^Touch a long line/);
}

const places = () =>
  [...document.querySelectorAll('.hair circle')].map((circle) => [
    Number(circle.getAttribute('cx')),
    Number(circle.getAttribute('cy')),
  ]);

test('two lines touched and their numbers typed make a reading', async () => {
  await openToTouch();
  bridge.snap.mockResolvedValueOnce({ x: 320.4, y: 600, spread: 0.4 });
  finger('Down', 322);
  finger('Up', 322);
  fireEvent.input(await screen.findByLabelText(/^Line 1: its number/), { target: { value: '4' } });
  expect(button('Done').disabled).toBe(true);
  finger('Down', 960);
  finger('Up', 960);
  fireEvent.input(await screen.findByLabelText(/^Line 2: its number/), {
    target: { value: '4 in' },
  });
  bridge.touch.mockResolvedValueOnce({ ok: false, reason: 'same-value' });
  fireEvent.click(button('Done'));
  expect(await screen.findByText(/Two different lines can’t have the same number/)).toBeTruthy();
  expect(bridge.touch.mock.lastCall?.[0]).toEqual([
    // How sure the graduation is goes along: what the scale states rests on it.
    { x: 320.4, y: 600, spread: 0.4, value: 4, unit: 'cm' },
    { x: 960, y: 600, value: 4, unit: 'inch' },
  ]);
  bridge.touch.mockResolvedValueOnce({ ok: true, value: straight() });
  fireEvent.click(button('Done'));
  await screen.findByRole('slider');
  finger('Down', 800);
  finger('Up', 800);
  expect(use().disabled).toBe(false);
});

test('a touch that moves makes one line, which goes to its graduation when it is let go', async () => {
  await openToTouch();
  bridge.snap.mockResolvedValueOnce({ x: 330.5, y: 612 });
  finger('Down', 300);
  for (let i = 1; i <= 12; i++) finger('Move', 300 + 2 * i, 600 + i);
  expect(places()).toEqual([[324, 612]]);
  // Nothing is looked for, and no keys come up, under a finger that still moves.
  expect(bridge.snap).not.toHaveBeenCalled();
  expect(screen.queryByLabelText(/^Line 1: its number/)).toBeNull();
  finger('Up', 324, 612);
  await screen.findByLabelText(/^Line 1: its number/);
  expect(places()).toEqual([[330.5, 612]]);
  expect(bridge.snap).toHaveBeenCalledOnce();
});

test('a line can be taken hold of and moved: no other one is made', async () => {
  await openToTouch();
  finger('Down', 300);
  finger('Up', 300);
  finger('Down', 310);
  for (let i = 1; i <= 10; i++) finger('Move', 310 + 10 * i);
  finger('Up', 410);
  // It moves by a third of what the finger does, to be set to a hair.
  expect(places()).toEqual([[335, 600]]);
  expect(bridge.snap).toHaveBeenCalledTimes(2);
});

test('a line moved on while its graduation is looked for stays where it was moved', async () => {
  await openToTouch();
  let found: (at: unknown) => void = () => undefined;
  bridge.snap.mockReturnValueOnce(
    new Promise((done) => {
      found = done;
    }),
  );
  finger('Down', 300);
  finger('Up', 300);
  finger('Down', 310);
  finger('Move', 410);
  found({ x: 299, y: 600 });
  await new Promise((done) => setTimeout(done));
  expect(places()).toEqual([[335, 600]]);
});

test('a second finger neither makes a line nor moves one', async () => {
  await openToTouch();
  finger('Down', 300, 600, 1);
  finger('Down', 900, 700, 2);
  finger('Move', 950, 700, 2);
  finger('Up', 950, 700, 2);
  finger('Move', 304, 600, 1);
  finger('Up', 304, 600, 1);
  expect(places()).toEqual([[304, 600]]);
  finger('Down', 800, 600, 3);
  finger('Up', 800, 600, 3);
  expect(places()).toHaveLength(2);
});

test('one line alone can be taken away, and the others keep their numbers', async () => {
  await openToTouch();
  for (const [x, text] of [
    [300, '4'],
    [700, '9'],
    [1100, '14'],
  ] as const) {
    finger('Down', x);
    finger('Up', x);
    fireEvent.input(await screen.findByLabelText(/its number/), { target: { value: text } });
  }
  finger('Down', 700);
  finger('Up', 700);
  fireEvent.click(button('Remove line 2'));
  expect(places().map(([x]) => x)).toEqual([300, 1100]);
  const drawn = [...document.querySelectorAll('.hair text')].map((text) => text.textContent);
  expect(drawn).toEqual(['4', '14']);
  expect(button('Done').disabled).toBe(false);
});

test('keys alone can place two lines, move them and type their numbers', async () => {
  await openToTouch();
  for (const [nth, text] of [
    [1, '4'],
    [2, '9'],
  ] as const) {
    fireEvent.click(button('Add a line'));
    const line = screen.getByRole('slider', { name: `Line ${nth}` });
    expect(document.activeElement).toBe(line);
    expect(screen.getByText(/^Arrow keys move the line/)).toBeTruthy();
    fireEvent.keyDown(line, { key: 'ArrowRight', shiftKey: true });
    fireEvent.keyDown(line, { key: 'ArrowLeft' });
    fireEvent.keyDown(line, { key: 'ArrowDown' });
    expect(line.getAttribute('aria-valuetext')).toMatch(/^no number yet; \d+ % across, 50 % down$/);
    expect(bridge.snap).toHaveBeenCalledTimes(nth - 1);
    fireEvent.keyDown(line, { key: 'Enter' });
    const field = await screen.findByLabelText(new RegExp(`^Line ${nth}: its number`));
    expect(document.activeElement).toBe(field);
    fireEvent.input(field, { target: { value: text } });
    fireEvent.keyDown(field, { key: 'Enter' });
    // The field has gone: what comes next has the focus.
    expect(document.activeElement).toBe(button('Add a line'));
  }
  expect(places()).toEqual([
    [409, 601],
    [1209, 601],
  ]);
  expect(screen.getByRole('slider', { name: 'Line 1' }).getAttribute('aria-valuetext')).toMatch(
    /^4; /,
  );
  bridge.touch.mockResolvedValueOnce({ ok: true, value: straight() });
  fireEvent.click(button('Done'));
  fireEvent.keyDown(await screen.findByRole('slider', { name: 'Line' }), { key: 'ArrowRight' });
  expect(bridge.touch.mock.lastCall?.[0]).toEqual([
    { x: 409, y: 601, value: 4, unit: 'cm' },
    { x: 1209, y: 601, value: 9, unit: 'cm' },
  ]);
  expect(use().disabled).toBe(false);
});
