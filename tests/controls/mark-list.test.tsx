import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, expect, test, vi } from 'vitest';
import { MarkList } from '../../src/controls/mark-list.tsx';
import { exactLength, mm } from '../../src/lengths/length.ts';
import type { Run } from '../../src/sewing/run.ts';
import { benchOf } from './helpers.ts';

afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

function runOf(count: number, pitch: number): Run {
  const marks = Array.from({ length: count }, (_, i) => ({
    at: mm(12 + i * pitch),
    label: String(i + 1),
    kind: 'closure' as const,
  }));
  return { datum: 'top-edge', length: mm(24 + (count - 1) * pitch), marks };
}

const pane = () => ({ current: document.createElement('div') });

test('each mark has its place from the datum and its step from the one before', () => {
  render(<MarkList run={runOf(3, 71)} bench={benchOf()} scroller={pane()} />);
  const rows = screen.getAllByRole('listitem').map((row) => row.textContent);
  expect(rows).toEqual(['11.2 cm', '28.3 cm+7.1 cm', '315.4 cm+7.1 cm']);
  expect(screen.getByText('from the top edge')).toBeTruthy();
});

test('it says the worst unevenness', () => {
  render(<MarkList run={runOf(3, 71.4)} bench={benchOf()} scroller={pane()} />);
  expect(
    screen.getByText(/no mark is off by more than 0\.04 cm, no space by more than 0\.06 cm/),
  ).toBeTruthy();
});

// Worked by hand: 12.4, 83.4 and 154.4 mm are all 0.4 mm off a tape of millimetres, 71 mm apart.
test('even spaces are not marks on the tape: all may be off by as much', () => {
  const run = runOf(3, 71);
  const marks = run.marks.map((mark) => ({ ...mark, at: exactLength(mark.at + mm(0.4)) }));
  render(<MarkList run={{ ...run, marks }} bench={benchOf()} scroller={pane()} />);
  expect(screen.getByText(/no mark is off by more than 0\.04 cm; the spaces are as/)).toBeTruthy();
});

// 1.2 cm are 0.4724 in, 0.0276 (1.8 sixty-fourths) under 1/2: of them 2. By hand.
test('on a bench of inches it is said in sixty-fourths, and no less', () => {
  const bench = benchOf({ unit: 'in' });
  render(<MarkList run={runOf(1, 71)} bench={bench} scroller={pane()} />);
  const said = document.querySelector('.uneven')?.textContent;
  expect(said).toMatch(/no mark is off by more than 1\/32.* in/);
  expect(said).not.toMatch(/\d\.\d/);
});

test('where nothing is off it says just that', () => {
  render(<MarkList run={runOf(3, 71)} bench={benchOf()} scroller={pane()} />);
  expect(screen.getByText('Every mark falls on a line of your tape.')).toBeTruthy();
});

test('of 2,000 marks only those near to sight are made, and each knows its place', () => {
  render(<MarkList run={runOf(2000, 5)} bench={benchOf()} scroller={pane()} />);
  const rows = screen.getAllByRole('listitem');
  expect(rows.length).toBeLessThan(60);
  expect(rows[4]?.getAttribute('aria-posinset')).toBe('5');
  expect(rows[4]?.getAttribute('aria-setsize')).toBe('2000');
});

test('a sewn mark is called so', () => {
  const run = runOf(2, 50);
  const marks = run.marks.map((mark) => ({ ...mark, kind: 'sewn' as const }));
  render(<MarkList run={{ ...run, marks }} bench={benchOf()} scroller={pane()} />);
  expect(screen.getAllByText('sewn')).toHaveLength(2);
});

/** A pane 300 px high that shows rows of 30 px; jsdom itself lays nothing out. */
function paneScrolledTo(above: () => number) {
  const scroller = pane();
  vi.spyOn(HTMLElement.prototype, 'offsetHeight', 'get').mockReturnValue(30);
  vi.spyOn(scroller.current, 'clientHeight', 'get').mockReturnValue(300);
  vi.spyOn(HTMLOListElement.prototype, 'getBoundingClientRect').mockImplementation(
    () => ({ top: -above() }) as DOMRect,
  );
  return scroller;
}

const numbers = () =>
  screen.getAllByRole('listitem').map((row) => Number(row.getAttribute('aria-posinset')));

test('scrolling makes the rows in sight, with the room of the others kept', () => {
  let above = 0;
  const scroller = paneScrolledTo(() => above);
  render(<MarkList run={runOf(2000, 5)} bench={benchOf()} scroller={scroller} />);
  for (above of [0, 600, 30_000, 59_700]) {
    fireEvent.scroll(scroller.current);
    const [firstSeen, lastSeen] = [above / 30 + 1, Math.min(2000, (above + 300) / 30)];
    expect(numbers()[0]).toBeLessThanOrEqual(firstSeen);
    expect(numbers().at(-1)).toBeGreaterThanOrEqual(lastSeen);
    expect(numbers().length).toBeLessThan(30);
    const { style } = screen.getByRole('list');
    const [before, after] = ['--before', '--after'].map((name) => style.getPropertyValue(name));
    expect(Number(before) + numbers().length + Number(after)).toBe(2000);
  }
});

test('a run that grows shorter than what was scrolled past still shows its last marks', () => {
  const scroller = paneScrolledTo(() => 30_000);
  const list = (count: number) => (
    <MarkList run={runOf(count, 5)} bench={benchOf()} scroller={scroller} />
  );
  const { rerender } = render(list(2000));
  rerender(list(7));
  expect(numbers().at(-1)).toBe(7);
});
