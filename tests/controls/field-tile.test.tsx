import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { FieldTile, type TileProps } from '../../src/controls/field-tile.tsx';
import { benchOf } from './helpers.ts';

const onText = vi.fn();
const onPick = vi.fn();
const onNext = vi.fn();

beforeEach(() => {
  vi.clearAllMocks();
});
afterEach(cleanup);

const bench = benchOf();
const tile = (set: Partial<TileProps> = {}) => (
  <FieldTile
    field={{ kind: 'length', key: 'opening', label: 'Opening', hint: 'none' }}
    text="46.3"
    bench={bench}
    current={false}
    wrong={undefined}
    {...{ onText, onPick, onNext }}
    {...set}
  />
);
const input = () => screen.getByRole<HTMLInputElement>('textbox');

test('what is typed is handed on exactly, however odd', () => {
  render(tile());
  for (const typed of ['1,50', '  12 ', '5 /8', '½ “', '007']) {
    fireEvent.input(input(), { target: { value: typed } });
    expect(onText).toHaveBeenLastCalledWith('opening', typed, 'no');
    expect(input().value).toBe(typed);
  }
});

test('a draft that comes late never writes over what is typed on', () => {
  const { rerender } = render(tile());
  fireEvent.input(input(), { target: { value: '1' } });
  fireEvent.input(input(), { target: { value: '12' } });
  rerender(tile({ text: '1' }));
  expect(input().value).toBe('12');
  rerender(tile({ text: '12' }));
  rerender(tile({ text: '123' }));
  expect(input().value).toBe('123');
});

test('the pad’s typing shows in the field', () => {
  const { rerender } = render(tile());
  rerender(tile({ text: '46.4' }));
  expect(input().value).toBe('46.4');
});

test('Enter goes to the next field and sends nothing', () => {
  render(tile());
  expect(fireEvent.keyDown(input(), { key: 'Enter' })).toBe(false);
  expect(onNext).toHaveBeenCalledOnce();
  fireEvent.keyDown(input(), { key: '4' });
  expect(onNext).toHaveBeenCalledOnce();
});

test('a field that is touched is picked and its text selected; the picked one has the focus', () => {
  const { rerender } = render(tile());
  input().focus();
  expect(onPick).toHaveBeenCalledWith('opening');
  expect(input().selectionEnd).toBe(4);
  input().blur();
  rerender(tile({ current: true }));
  expect(document.activeElement).toBe(input());
});

test('a mistake is marked, and described by its sentence', () => {
  const { rerender } = render(tile());
  expect(input().getAttribute('aria-invalid')).toBe('false');
  expect(input().hasAttribute('aria-describedby')).toBe(false);
  rerender(tile({ wrong: 'fault' }));
  expect(input().getAttribute('aria-invalid')).toBe('true');
  expect(input().getAttribute('aria-describedby')).toBe('fault');
});

test('a bare length shows the unit it is in; a written one doesn’t, nor a count', () => {
  const { container, rerender } = render(tile());
  const unit = () => container.querySelector('small')?.textContent;
  expect(unit()).toBe('cm');
  for (const text of ['18 in', '5"', '']) {
    rerender(tile({ text }));
    expect(unit()).toBeUndefined();
  }
  rerender(tile({ field: { kind: 'count', key: 'count', label: 'How many' }, text: '7' }));
  expect(unit()).toBeUndefined();
});

test('the phone’s own keyboard comes only where it is wanted, with letters for a length', () => {
  const { rerender } = render(tile());
  expect(input().inputMode).toBe('none');
  rerender(tile({ bench: benchOf({ keys: 'phone' }) }));
  expect(input().inputMode).toBe('text');
  rerender(
    tile({
      bench: benchOf({ keys: 'phone' }),
      field: { kind: 'count', key: 'count', label: 'How many' },
    }),
  );
  expect(input().inputMode).toBe('decimal');
});

test('a list of lengths has a row to itself, so that its last number isn’t cut', () => {
  const field = { kind: 'lengths', key: 'straight', label: 'Edges', hint: 'none' } as const;
  const { container } = render(tile({ field, text: '45; 30; 45; 30' }));
  expect(container.querySelector('label')?.classList).toContain('wide');
});
