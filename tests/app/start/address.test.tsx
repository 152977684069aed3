import { act, cleanup, renderHook } from '@testing-library/preact';
import fc from 'fast-check';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { readRoute, writeRoute } from '../../../src/app/start/route.ts';
import { useAddress } from '../../../src/app/start/use-address.ts';

beforeEach(() => {
  vi.useFakeTimers();
  history.replaceState(null, '', '#/convert');
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

test('an address is a screen, a mode and what was typed', () => {
  expect(readRoute('#/closures/follow?opening=46.3&count=7')).toEqual({
    screen: 'closures',
    mode: 'follow',
    draft: { opening: '46.3', count: '7' },
  });
  expect(readRoute('')).toEqual({ screen: '', mode: '', draft: {} });
});

test('whatever is typed comes back from the address as typed', () => {
  const draft = fc.dictionary(
    fc.constantFrom('opening', 'count', 'sewn'),
    fc.string({ unit: 'grapheme' }),
  );
  fc.assert(
    fc.property(draft, (typed) => {
      const route = { screen: 'closures', mode: 'follow', draft: typed };
      expect(readRoute(writeRoute(route))).toEqual(route);
    }),
  );
});

test('nonsense in the address bar is a route, never a failure', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (hash) => {
      expect(typeof readRoute(`#${hash}`).screen).toBe('string');
    }),
  );
  const { draft } = readRoute('#/x?__proto__=1&constructor=2');
  expect(Object.keys(draft)).toEqual(['__proto__', 'constructor']);
  expect(Object.getPrototypeOf(draft)).toBeNull();
});

const typing = (length: string) => ({ screen: 'convert', mode: '', draft: { length } });

test('what is typed is in the address once its answer is painted, and no oftener than browsers allow', () => {
  const written = vi.fn();
  const { result } = renderHook(() => useAddress(written));
  const steps = history.length;
  act(() => result.current.type(typing('0')));
  expect(location.hash).toBe('#/convert');
  vi.advanceTimersByTime(50);
  expect(location.hash).toBe('#/convert?length=0');
  for (let i = 1; i < 60; i++) act(() => result.current.type(typing(String(i))));
  vi.advanceTimersByTime(300);
  expect(location.hash).toBe('#/convert?length=0');
  vi.advanceTimersByTime(50);
  expect(location.hash).toBe('#/convert?length=59');
  expect(written).toHaveBeenCalledTimes(2);
  expect(history.length).toBe(steps);
});

test('a page that is left has its typing in the address first', () => {
  const { result } = renderHook(() => useAddress(() => undefined));
  act(() => result.current.type(typing('1')));
  act(() => result.current.type(typing('5/8 in')));
  dispatchEvent(new Event('pagehide'));
  expect(readRoute(location.hash).draft.length).toBe('5/8 in');
});

test('going elsewhere writes what was typed, and leaves a way back', () => {
  const { result } = renderHook(() => useAddress(() => undefined));
  const steps = history.length;
  act(() => result.current.type(typing('12')));
  act(() => result.current.go({ screen: 'settings', mode: '', draft: {} }));
  expect(result.current.route.screen).toBe('settings');
  expect(location.hash).toBe('#/settings');
  expect(history.length).toBe(steps + 1);
});

test('when the address is another’s already, what was typed is kept and not written there', () => {
  const written = vi.fn();
  const { result } = renderHook(() => useAddress(written));
  act(() => result.current.type(typing('1')));
  act(() => result.current.type(typing('12')));
  expect(written).not.toHaveBeenCalledWith(typing('12'));
  history.replaceState(null, '', '#/closures');
  act(() => void dispatchEvent(new Event('hashchange')));
  expect(written).toHaveBeenLastCalledWith(typing('12'));
  expect(location.hash).toBe('#/closures');
  expect(result.current.route.screen).toBe('closures');
});

test('another address that has come, though its event has not, is not written over', () => {
  const written = vi.fn();
  const { result } = renderHook(() => useAddress(written));
  act(() => result.current.type(typing('12')));
  history.replaceState(null, '', '#/closures');
  act(() => void vi.advanceTimersByTime(1000));
  expect(location.hash).toBe('#/closures');
  expect(written).toHaveBeenLastCalledWith(typing('12'));
  act(() => void dispatchEvent(new Event('hashchange')));
  expect(result.current.route.screen).toBe('closures');
});

test('signs that mean something in addresses are typing like any other', () => {
  for (const typed of ['50 %', 'a&b=c', '1 + 2', '#?/', '5′3″', '½ × 3', '👍', '%zz']) {
    const route = typing(typed);
    expect(readRoute(writeRoute(route)), typed).toEqual(route);
  }
});

test('back and forward bring back what was typed', async () => {
  const { result } = renderHook(() => useAddress(() => undefined));
  act(() => result.current.type(typing('12')));
  act(() => result.current.go({ screen: 'settings', mode: '', draft: {} }));
  vi.useRealTimers();
  for (const [step, route] of [
    [-1, typing('12')],
    [1, { screen: 'settings', mode: '', draft: {} }],
  ] as const) {
    await act(async () => {
      const moved = new Promise((done) => addEventListener('hashchange', done, { once: true }));
      history.go(step);
      await moved;
    });
    expect(result.current.route).toEqual(route);
  }
});

test('a hidden page writes at once, and only what is new', () => {
  const written = vi.fn();
  const { result, unmount } = renderHook(() => useAddress(written));
  act(() => result.current.type(typing('1')));
  act(() => result.current.type(typing('12')));
  document.dispatchEvent(new Event('visibilitychange'));
  expect(location.hash).toBe('#/convert?length=12');
  document.dispatchEvent(new Event('visibilitychange'));
  expect(written).toHaveBeenCalledTimes(1);
  act(() => result.current.type(typing('123')));
  act(() => unmount());
  expect(location.hash).toBe('#/convert?length=123');
});
