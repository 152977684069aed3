import { act, cleanup, render, screen } from '@testing-library/preact';
import { useRef } from 'preact/hooks';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { useWhenSeen } from '../../src/controls/use-when-seen.ts';

type Seen = (seen: { isIntersecting: boolean }[]) => void;
let scrolled: Seen | undefined;

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal(
    'IntersectionObserver',
    class {
      constructor(hear: Seen) {
        scrolled = hear;
      }
      observe() {}
      disconnect() {
        scrolled = undefined;
      }
    },
  );
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

const drawn = vi.fn();

function Part({ value }: { value: string }) {
  const pane = useRef<HTMLDivElement>(null);
  const top = useRef<HTMLParagraphElement>(null);
  const shown = useWhenSeen(value, top, pane);
  drawn(shown);
  return (
    <div ref={pane}>
      <p ref={top}>{shown}</p>
    </div>
  );
}

const part = (value: string) => <Part value={value} />;
const shown = () => screen.getByText(/./).textContent;
const scrollTo = (isIntersecting: boolean) => act(() => scrolled?.([{ isIntersecting }]));

test('what can be seen is drawn of the value of now', () => {
  const { rerender } = render(part('1'));
  scrollTo(true);
  rerender(part('12'));
  expect(shown()).toBe('12');
});

test('what lies below is drawn once for all that is typed without a rest', () => {
  const { rerender } = render(part('4'));
  scrollTo(false);
  drawn.mockClear();
  for (const typed of ['46', '46.', '46.3']) {
    rerender(part(typed));
    act(() => void vi.advanceTimersByTime(200));
    expect(shown()).toBe('4');
  }
  act(() => void vi.advanceTimersByTime(100));
  expect(shown()).toBe('46.3');
  expect(drawn.mock.calls.flat().filter((one) => one !== '4')).toEqual(['46.3']);
});

test('what is scrolled to is of now at once', () => {
  const { rerender } = render(part('1'));
  scrollTo(false);
  rerender(part('12'));
  expect(shown()).toBe('1');
  scrollTo(true);
  expect(shown()).toBe('12');
  rerender(part('123'));
  expect(shown()).toBe('123');
});

test('a screen that can’t tell draws all at once', () => {
  vi.unstubAllGlobals();
  vi.stubGlobal('IntersectionObserver', undefined);
  Reflect.deleteProperty(globalThis, 'IntersectionObserver');
  const { rerender } = render(part('1'));
  rerender(part('12'));
  expect(shown()).toBe('12');
});
