import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  aroundMark,
  betweenWindows,
  moveWindow,
  span,
  wholeRun,
  zoomWindow,
} from '../../src/drawing/tape-window.ts';
import { runOf } from './tape-view.ts';

// How the tape is moved is this app's own choice; the laws are derived here.

const HOOKS = runOf(463, [12, 83, 154, 225, 296, 367, 438]);
const middle = ({ from, to }: { from: number; to: number }) => (from + to) / 2;

test('the whole run is shown with a little free at either end', () => {
  expect(wholeRun(runOf(400))).toEqual({ from: -20, to: 420 });
  expect(span(wholeRun(runOf(0)))).toBeGreaterThan(0);
});

test('the current mark is in the middle and both its neighbours are in sight', () => {
  const third = aroundMark(HOOKS, 2);
  expect(middle(third)).toBeCloseTo(154, 9);
  expect(third.from).toBeLessThan(83);
  expect(third.to).toBeGreaterThan(225);
  for (const [i, mark] of HOOKS.marks.entries()) {
    const seen = aroundMark(HOOKS, i);
    expect(middle(seen)).toBeCloseTo(mark.at / 8000, 9);
  }
});

test('without a neighbour as much is shown as of the whole run, without a mark the whole run', () => {
  const lone = aroundMark(runOf(100, [30]), 0);
  expect(middle(lone)).toBe(30);
  expect(span(lone)).toBe(span(wholeRun(runOf(100))));
  expect(aroundMark(HOOKS, undefined)).toEqual(wholeRun(HOOKS));
  expect(aroundMark(HOOKS, 7)).toEqual(wholeRun(HOOKS));
});

test('marks in one place still leave something to see', () => {
  expect(span(aroundMark(runOf(100, [30, 30, 30]), 1))).toBeGreaterThanOrEqual(10);
});

test('moving stops at the ends of the run', () => {
  const near = { from: 100, to: 200 };
  expect(moveWindow(HOOKS, near, 25)).toEqual({ from: 125, to: 225 });
  expect(moveWindow(HOOKS, near, -Infinity).from).toBeCloseTo(wholeRun(HOOKS).from, 9);
  expect(moveWindow(HOOKS, near, Infinity).to).toBeCloseTo(wholeRun(HOOKS).to, 9);
  expect(moveWindow(HOOKS, wholeRun(HOOKS), 30)).toEqual(wholeRun(HOOKS));
});

test('moving and zooming keep the window within the run, and zooming keeps the place held', () => {
  const action = fc.oneof(
    fc.double({ min: -600, max: 600, noNaN: true }).map((by) => ({ by, times: 1, about: 0 })),
    fc.record({
      by: fc.constant(0),
      times: fc.double({ min: 0.05, max: 20, noNaN: true }),
      about: fc.double({ min: 0, max: 1, noNaN: true }),
    }),
  );
  fc.assert(
    fc.property(fc.array(action, { maxLength: 20 }), (actions) => {
      const whole = wholeRun(HOOKS);
      let seen = whole;
      for (const { by, times, about } of actions) {
        const place = seen.from + about * span(seen);
        const next = by ? moveWindow(HOOKS, seen, by) : zoomWindow(HOOKS, seen, times, place);
        expect(next.from).toBeGreaterThanOrEqual(whole.from - 1e-6);
        expect(next.to).toBeLessThanOrEqual(whole.to + 1e-6);
        expect(span(next)).toBeGreaterThanOrEqual(10 - 1e-6);
        const inside = next.from > whole.from + 1e-6 && next.to < whole.to - 1e-6;
        if (!by && inside) {
          expect((place - next.from) / span(next)).toBeCloseTo(about, 6);
        }
        seen = next;
      }
    }),
  );
});

test('zooming out from past the end of the cloth never loses sight of it', () => {
  const run = runOf(100, [1, 99]);
  const out = zoomWindow(run, aroundMark(run, 1), 0.5, 99);
  expect(out.from).toBeLessThanOrEqual(wholeRun(run).from + 1e-9);
  expect(out.to).toBeGreaterThanOrEqual(wholeRun(run).to - 1e-9);
});

test('on the way from one window to another both ends move alike', () => {
  const one = { from: 0, to: 10 };
  const other = { from: 10, to: 40 };
  expect(betweenWindows(one, other, 0)).toEqual(one);
  expect(betweenWindows(one, other, 0.5)).toEqual({ from: 5, to: 25 });
  expect(betweenWindows(one, other, 1)).toEqual(other);
});
