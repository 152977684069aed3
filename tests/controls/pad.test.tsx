import { cleanup, fireEvent, render, screen } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, expect, test, vi } from 'vitest';
import type { Bench } from '../../src/calculation/bench.ts';
import type { Field } from '../../src/calculation/calculation.ts';
import { Pad } from '../../src/controls/pad.tsx';
import type { Fresh } from '../../src/controls/pad-keys.ts';
import { benchOf } from './helpers.ts';

afterEach(cleanup);

const LENGTH: Field = { kind: 'length', key: 'length', label: 'Length' };

function TypedOn({ field = LENGTH, bench, first }: { field?: Field; bench: Bench; first: string }) {
  const [typed, setTyped] = useState<{ text: string; fresh: Fresh }>({ text: first, fresh: 'all' });
  return (
    <>
      <output>{typed.text}</output>
      <Pad
        field={field}
        text={typed.text}
        fresh={typed.fresh}
        bench={bench}
        onText={(text, fresh) => setTyped({ text, fresh })}
        onNext={() => undefined}
      />
    </>
  );
}

function press(...names: string[]): string {
  for (const name of names) fireEvent.click(screen.getByRole('button', { name }));
  return screen.getByRole('status').textContent ?? '';
}

test('the first digit replaces what stood there, the next ones follow', () => {
  render(<TypedOn bench={benchOf()} first="12" />);
  expect(press('4', '6', 'decimal mark', '3')).toBe('46.3');
});

test('a fresh number stays in the unit its keys are for', () => {
  render(<TypedOn bench={benchOf()} first="12 cm + 5/8 in" />);
  expect(press('and 3/8')).toBe('3/8 in');
});

test('a unit pressed first stays, and brings the fractions of its tape', () => {
  render(<TypedOn bench={benchOf()} first="46.3" />);
  expect(screen.queryByRole('button', { name: 'and 5/8' })).toBeNull();
  expect(press('to in: type in inches', 'and 5/8')).toBe('5/8 in');
  expect(press('and 1/16')).toBe('11/16 in');
  expect(press('to cm: type in centimetres')).toBe('11/16');
});

test('sums are typed as they are said', () => {
  render(<TypedOn bench={benchOf()} first="" />);
  expect(press('1', '2', 'plus', '3', 'mm: in millimetres', 'minus', '4')).toBe('12 + 3 mm − 4');
  expect(press('erase', 'erase')).toBe('12 + 3 mm');
  expect(press('÷ 2: halve it')).toBe('12 + 3 mm ÷ 2');
  expect(press('clear the field')).toBe('');
});

test('a count has no decimal mark, no units, no sums', () => {
  const count: Field = { kind: 'count', key: 'count', label: 'How many' };
  render(<TypedOn field={count} bench={benchOf()} first="7" />);
  for (const name of ['decimal mark', 'plus', 'cm: in centimetres']) {
    expect(screen.queryByRole('button', { name })).toBeNull();
  }
  expect(press('more by 1')).toBe('8');
});

test('a key acts when it goes down, and only once for one press', () => {
  render(<TypedOn bench={benchOf()} first="" />);
  const four = screen.getByRole('button', { name: '4' });
  fireEvent.pointerDown(four, { button: 0 });
  expect(screen.getByRole('status').textContent).toBe('4');
  fireEvent.click(four, { detail: 1 });
  expect(screen.getByRole('status').textContent).toBe('4');
});

test('the keys know the hand and the decimal mark of the bench', () => {
  const { container } = render(
    <TypedOn bench={benchOf({ hand: 'left', decimalMark: ',' })} first="" />,
  );
  expect(container.querySelector('.pad')?.getAttribute('data-hand')).toBe('left');
  expect(press('1', 'decimal mark', '5')).toBe('1,5');
});

test('next asks for the next field', () => {
  const next = vi.fn();
  render(
    <Pad field={LENGTH} text="" fresh="all" bench={benchOf()} onText={() => {}} onNext={next} />,
  );
  fireEvent.click(screen.getByRole('button', { name: 'next field' }));
  expect(next).toHaveBeenCalledOnce();
});

test('the key that leads on acts when it comes up, so that nothing after it is pressed, too', () => {
  const onNext = vi.fn();
  render(
    <Pad
      field={LENGTH}
      text="12"
      fresh="no"
      bench={benchOf()}
      onText={() => undefined}
      onNext={onNext}
    />,
  );
  const key = screen.getByRole('button', { name: 'next field' });
  fireEvent.pointerDown(key, { button: 0 });
  expect(onNext).not.toHaveBeenCalled();
  fireEvent.click(key, { detail: 1 });
  expect(onNext).toHaveBeenCalledOnce();
});
