import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { LayDrawing } from '../../../src/screens/lay/lay-drawing.tsx';
import type { LayShown, PieceShown } from '../../../src/screens/lay/lay-shown.ts';
import { benchOf } from '../../controls/helpers.ts';

/** A window without a layout shows it so many px wide and high. */
const [WIDE, HIGH] = [360, 84];
beforeEach(() => {
  vi.spyOn(Element.prototype, 'clientWidth', 'get').mockReturnValue(WIDE);
  vi.spyOn(Element.prototype, 'clientHeight', 'get').mockReturnValue(HIGH);
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

const piece = (key: string, across: number, more: Partial<PieceShown> = {}): PieceShown => ({
  ...{ key, name: `Piece ${key}`, turned: false, tilt: 0, mirrored: false, onFold: false },
  outline: [
    [0, across],
    [300, across],
    [300, across + 200],
    [0, across + 200],
  ],
  ...more,
});
const lay: LayShown = {
  ...{ width: 1000, length: 600, flaws: [], folded: false },
  pieces: [piece('a', 0), piece('b', 400), piece('c', 700, { stays: 'cut' })],
};

function show(current?: string) {
  const [onPick, onPut] = [vi.fn(), vi.fn()];
  render(<LayDrawing {...{ lay, current, onPick, onPut }} onPaper={undefined} bench={benchOf()} />);
  return { onPick, onPut };
}

const room = () => screen.getByRole('region');
const view = () => {
  const box = document.querySelector('svg')?.getAttribute('viewBox') ?? '';
  const [x = 0, y = 0, wide = 0, high = 0] = box.split(' ').map(Number);
  return { x, y, wide, high };
};
const on = (key: string) => document.querySelector(`[data-piece=${key}] polygon`) ?? room();
const finger = (id: number, x: number, y: number) => ({
  ...{ pointerId: id, clientX: x, clientY: y, bubbles: true, button: 0 },
});
const down = (at: Element, id: number, x: number, y: number) =>
  fireEvent.pointerDown(at, finger(id, x, y));
const move = (id: number, x: number, y: number) => fireEvent.pointerMove(room(), finger(id, x, y));
const up = (id: number, x: number, y: number) => fireEvent.pointerUp(room(), finger(id, x, y));

test('a press on a piece picks it; on bare cloth it picks none', () => {
  const { onPick, onPut } = show();
  down(on('b'), 1, 100, 40);
  up(1, 102, 41);
  down(room(), 1, 10, 10);
  up(1, 10, 10);
  expect(onPick.mock.calls).toEqual([['b']]);
  expect(onPut).not.toHaveBeenCalled();
});

test('the piece that is picked is dragged, by as much as the finger; what is cut is not', () => {
  const { onPut } = show('b');
  const scale = view().wide / WIDE;
  down(on('b'), 1, 100, 40);
  move(1, 110, 50);
  move(1, 120, 60);
  up(1, 120, 60);
  expect(onPut).toHaveBeenCalledOnce();
  const [key, [along, across]] = onPut.mock.calls[0] as [string, [number, number]];
  expect(key).toBe('b');
  expect(along).toBeCloseTo(20 * scale, 6);
  expect(across).toBeCloseTo(20 * scale, 6);
  // However far it is dragged, it stays on the cloth: 400 to its edge.
  down(on('b'), 1, 100, 40);
  move(1, 190, 40);
  up(1, 190, 40);
  expect(onPut.mock.calls[1]).toEqual(['b', [0, 400]]);
  cleanup();
  const cut = show('c');
  down(on('c'), 1, 100, 40);
  move(1, 130, 60);
  up(1, 130, 60);
  expect(cut.onPut).not.toHaveBeenCalled();
});

test('another piece is panned over, with all of the lay', () => {
  const { onPut, onPick } = show('a');
  const before = view();
  down(on('b'), 1, 100, 40);
  move(1, 130, 40);
  up(1, 130, 40);
  const after = view();
  expect(after.x).toBeCloseTo(before.x - 30 * (before.wide / WIDE), 6);
  expect([after.wide, onPut.mock.calls, onPick.mock.calls]).toEqual([before.wide, [], []]);
});

test('two fingers apart bring it closer; the key and the buttons do, too, and bring the whole back', () => {
  show();
  const whole = view();
  down(room(), 1, 100, 40);
  down(room(), 2, 200, 40);
  move(2, 300, 40);
  up(2, 300, 40);
  up(1, 100, 40);
  expect(view().wide).toBeCloseTo(whole.wide / 2, 6);
  fireEvent.keyDown(room(), { key: '0' });
  expect(view()).toEqual(whole);
  fireEvent.click(screen.getByRole('button', { name: 'Closer' }));
  expect(view().wide).toBeCloseTo(whole.wide / 1.5, 6);
  fireEvent.keyDown(room(), { key: '-' });
  expect(view().wide).toBeCloseTo(whole.wide, 6);
  fireEvent.keyDown(room(), { key: 'ArrowRight' });
  expect(view().x).toBeGreaterThan(whole.x);
  fireEvent.click(screen.getByRole('button', { name: 'The whole lay' }));
  expect(view()).toEqual(whole);
});
