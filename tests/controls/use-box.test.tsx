import { act, cleanup, render } from '@testing-library/preact';
import { useRef } from 'preact/hooks';
import { afterEach, expect, test, vi } from 'vitest';
import { useBox } from '../../src/controls/use-box.ts';

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

function Boxed() {
  const place = useRef<HTMLDivElement>(null);
  return <div ref={place}>{useBox(place).width}</div>;
}

test('of two places of one size that come together both are told of it', () => {
  const measured: (() => void)[] = [];
  vi.stubGlobal(
    'ResizeObserver',
    class {
      constructor(measure: () => void) {
        measured.push(measure);
      }
      observe() {}
      disconnect() {}
    },
  );
  vi.spyOn(HTMLElement.prototype, 'clientWidth', 'get').mockReturnValue(288);
  const { container } = render(
    <>
      <Boxed />
      <Boxed />
    </>,
  );
  act(() => {
    for (const measure of measured) measure();
  });
  expect(container.textContent).toBe('288288');
});
