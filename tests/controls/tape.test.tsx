import { act, cleanup, fireEvent, render, screen } from '@testing-library/preact';
import axe from 'axe-core';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { Tape, type TapeProps } from '../../src/controls/tape.tsx';
import { mm } from '../../src/lengths/length.ts';
import type { Run } from '../../src/sewing/run.ts';

// How the tape is moved is this app's own choice. Unmeasured, as here, it is 360 px wide.

const HOOKS: Run = {
  datum: 'top-edge',
  length: mm(463),
  marks: [12, 83, 154, 225, 296, 367, 438].map((at, i) => ({
    at: mm(at),
    label: String(i + 1),
    kind: 'closure',
  })),
};

beforeEach(() => {
  // jsdom has no pointer capture.
  HTMLElement.prototype.setPointerCapture = vi.fn();
});

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

function tape(props: Partial<TapeProps> = {}) {
  return (
    <Tape
      run={HOOKS}
      here={undefined}
      unit="cm"
      decimalMark=","
      label="Seven hooks along 46,3 cm"
      words={{ moves: 'Tape' }}
      {...props}
    />
  );
}

const strip = () => screen.getByRole('application');

/** px to the mm and the place of the left end, read back from two lines of the drawing. */
function seen() {
  const ticks = strip().querySelector('.tape-ticks')!.getAttribute('d')!;
  const numbers = [...strip().querySelectorAll('.tape-number')].map((each) => ({
    x: Number(each.getAttribute('x')),
    y: Number(each.getAttribute('y')),
    cm: Number(each.textContent!.replace(',', '.')),
  }));
  expect(ticks).toMatch(/^M/);
  const [one, other] = numbers.filter(({ y }) => y < 42);
  const pxPerMm = (other!.x - one!.x) / (other!.cm - one!.cm) / 10;
  return { pxPerMm, from: one!.cm * 10 - one!.x / pxPerMm };
}

const middle = () => seen().from + 180 / seen().pxPerMm;

function pointer(kind: 'Down' | 'Move' | 'Up' | 'Cancel', id: number, x: number, y = 40) {
  fireEvent[`pointer${kind}`](strip(), { pointerId: id, clientX: x, clientY: y });
}

function press(x: number) {
  pointer('Down', 1, x);
  pointer('Up', 1, x);
}

const key = (name: string, more = {}) => fireEvent.keyDown(strip(), { key: name, ...more });

test('shows the whole run, described, with every mark', () => {
  render(tape());
  expect(screen.getByRole('img', { name: 'Seven hooks along 46,3 cm' })).toBeTruthy();
  expect([...strip().querySelectorAll('.tape-head-label')].map((each) => each.textContent)).toEqual(
    [...'1234567'],
  );
  expect(seen().from).toBeCloseTo(-23.15, 1);
  expect(seen().pxPerMm).toBeCloseTo(360 / (463 * 1.1), 3);
});

test('draws without style attributes, which the page’s policy refuses', () => {
  const { container } = render(tape({ here: 2 }));
  expect(container.querySelector('[style], style')).toBeNull();
});

test('has nothing that axe finds fault with', async () => {
  const { container } = render(<main>{tape({ here: 2 })}</main>);
  // jsdom lays nothing out, so contrast is looked at in a real browser.
  const found = await axe.run(container, { rules: { 'color-contrast': { enabled: false } } });
  expect(found.violations.map(({ id }) => id)).toEqual([]);
});

test('millimetres are numbered as millimetres', () => {
  render(tape({ unit: 'mm' }));
  const numbers = [...strip().querySelectorAll('.tape-number')].map((each) => each.textContent);
  expect(numbers).toContain('400');
});

test('when the mark changes it comes to the middle, with its neighbours in sight', () => {
  const { rerender } = render(tape({ here: 0 }));
  expect(seen().from).toBeCloseTo(-23.15, 1);
  rerender(tape({ here: 2 }));
  expect(middle()).toBeCloseTo(154, 1);
  expect([...strip().querySelectorAll('.tape-head-label')].map((each) => each.textContent)).toEqual(
    ['2', '4'],
  );
  expect(strip().querySelector('.tape-head-label-here')!.textContent).toBe('3');
  rerender(tape({ here: undefined }));
  expect(seen().from).toBeCloseTo(-23.15, 1);
});

test('following starts at the current mark', () => {
  render(tape({ here: 4, following: true }));
  expect(middle()).toBeCloseTo(296, 1);
});

test('a mark that moves while it is followed stays in the middle', () => {
  const { rerender } = render(tape({ here: 4, following: true }));
  const marks = HOOKS.marks.map((each, i) => (i === 4 ? { ...each, at: mm(300) } : each));
  rerender(tape({ here: 4, following: true, run: { ...HOOKS, marks } }));
  expect(middle()).toBeCloseTo(300, 1);
});

test('a run of another length is shown whole again', () => {
  const { rerender } = render(tape());
  key('+');
  rerender(tape({ run: { ...HOOKS, length: mm(1000) } }));
  expect(seen().from).toBeCloseTo(-50, 1);
});

test('keys move and zoom, and stop at the ends', () => {
  render(tape());
  const { pxPerMm } = seen();
  key('+');
  expect(seen().pxPerMm).toBeCloseTo(1.5 * pxPerMm, 2);
  const { from } = seen();
  key('ArrowRight');
  expect(seen().from).toBeCloseTo(from + 360 / (1.5 * pxPerMm) / 4, 0);
  key('ArrowLeft');
  expect(seen().from).toBeCloseTo(from, 1);
  key('Home');
  expect(seen().from).toBeCloseTo(-23.15, 1);
  key('End');
  expect(seen().from + 360 / seen().pxPerMm).toBeCloseTo(486.15, 0);
  key('-');
  expect(seen().pxPerMm).toBeCloseTo(pxPerMm, 3);
});

test('takes only its own keys, and leaves the browser’s zoom alone', () => {
  render(tape());
  const { from } = seen();
  expect(key('+', { ctrlKey: true })).toBe(true);
  expect(key('Tab')).toBe(true);
  expect(seen().from).toBe(from);
  expect(key('+')).toBe(false);
});

test('a thumb drags the tape along under it', () => {
  render(tape());
  key('+');
  const { from, pxPerMm } = seen();
  pointer('Down', 1, 200);
  pointer('Move', 1, 190);
  pointer('Move', 1, 170);
  expect(seen().from).toBeCloseTo(from + 30 / pxPerMm, 1);
  pointer('Up', 1, 170);
  pointer('Move', 1, 100);
  expect(seen().from).toBeCloseTo(from + 30 / pxPerMm, 1);
});

test('two fingers zoom about the place between them', () => {
  render(tape());
  const before = seen();
  pointer('Down', 1, 130);
  pointer('Down', 2, 230);
  pointer('Move', 1, 80);
  pointer('Move', 2, 280);
  const after = seen();
  expect(after.pxPerMm).toBeCloseTo(2 * before.pxPerMm, 2);
  expect(after.from + 180 / after.pxPerMm).toBeCloseTo(before.from + 180 / before.pxPerMm, 0);
});

test('a press picks the mark under it, a drag or a scroll none', () => {
  const onPick = vi.fn();
  render(tape({ onPick }));
  const x = (at: number) => (at - seen().from) * seen().pxPerMm;
  pointer('Down', 1, x(225));
  pointer('Move', 1, x(225) + 20);
  pointer('Up', 1, x(225) + 20);
  pointer('Down', 1, x(225));
  pointer('Cancel', 1, x(225));
  pointer('Down', 1, x(225) - 10);
  pointer('Down', 2, x(225) + 10);
  pointer('Up', 1, x(225) - 10);
  pointer('Up', 2, x(225) + 10);
  expect(onPick).not.toHaveBeenCalled();
  press(x(154) + 8);
  expect(onPick).toHaveBeenCalledExactlyOnceWith(2);
});

test('a press far from any mark picks none', () => {
  const onPick = vi.fn();
  render(tape({ onPick, here: 2, following: true }));
  press(115);
  expect(onPick).not.toHaveBeenCalled();
});

test('a double press shows the whole run again', () => {
  render(tape());
  key('+');
  press(200);
  expect(seen().from).not.toBeCloseTo(-23.15, 0);
  press(202);
  expect(seen().from).toBeCloseTo(-23.15, 1);
});

test('takes its size from the page, and follows it', () => {
  let changed = () => {};
  vi.stubGlobal(
    'ResizeObserver',
    class {
      constructor(report: () => void) {
        changed = report;
      }
      observe() {}
      disconnect() {}
    },
  );
  let wide = 390;
  const width = vi
    .spyOn(HTMLElement.prototype, 'clientWidth', 'get')
    .mockImplementation(() => wide);
  render(tape());
  act(() => changed());
  expect(screen.getByRole('img').getAttribute('width')).toBe('390');
  wide = 800;
  act(() => changed());
  expect(screen.getByRole('img').getAttribute('width')).toBe('800');
  // The next tape takes the size measured last; the tests after this one count on 360.
  wide = 360;
  act(() => changed());
  width.mockRestore();
});

test('glides to the next mark where movement is welcome, and at once gives way to a thumb', () => {
  const frames: FrameRequestCallback[] = [];
  vi.stubGlobal('requestAnimationFrame', (run: FrameRequestCallback) => frames.push(run));
  vi.stubGlobal('cancelAnimationFrame', () => frames.splice(0));
  vi.stubGlobal('matchMedia', () => ({ matches: true }));
  const frame = (time: number) =>
    act(() => {
      for (const run of frames.splice(0)) run(time);
    });

  const { rerender } = render(tape({ here: 1, following: true }));
  rerender(tape({ here: 2, following: true }));
  expect(middle()).toBeCloseTo(83, 1);
  frame(1000);
  frame(1100);
  expect(middle()).toBeGreaterThan(84);
  expect(middle()).toBeLessThan(153);
  frame(1200);
  expect(middle()).toBeCloseTo(154, 1);
  expect(frames).toEqual([]);

  rerender(tape({ here: 3, following: true }));
  frame(2000);
  frame(2050);
  const halfway = middle();
  key('ArrowRight');
  expect(frames).toEqual([]);
  expect(middle()).toBeGreaterThan(halfway);
});
