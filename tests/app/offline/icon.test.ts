import { afterEach, expect, test, vi } from 'vitest';
import { holdIcon } from '../../../src/app/offline/icon.ts';

afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
  document.head.innerHTML = '';
});

const icon = () => document.querySelector<HTMLLinkElement>('link[rel=icon]')?.href;

const DRAWN = '<link rel="icon" href="http://localhost/favicon.svg">';
const DOTS = '<link rel="apple-touch-icon" href="http://localhost/touch.png">';

test('the icon is fetched once, in dots, and held in memory; where it can’t be, it stays as it is', async () => {
  document.head.innerHTML = DRAWN + DOTS;
  const made = vi.fn(() => 'blob:http://localhost/icon');
  vi.stubGlobal('URL', Object.assign(URL, { createObjectURL: made }));
  const answer = vi.fn<(from: string) => Promise<Response>>();
  vi.stubGlobal('fetch', answer);
  answer.mockRejectedValueOnce(new TypeError('no connection'));
  await holdIcon();
  answer.mockResolvedValueOnce(new Response('gone', { status: 404 }));
  await holdIcon();
  expect(made).not.toHaveBeenCalled();
  expect(icon()).toBe('http://localhost/favicon.svg');
  answer.mockResolvedValueOnce(new Response('dots'));
  await holdIcon();
  expect(icon()).toBe('blob:http://localhost/icon');
  // A drawing would be opened as a page each time the address is written.
  expect(new Set(answer.mock.calls.flat())).toEqual(new Set(['http://localhost/touch.png']));
});

test.each(['', DRAWN, DOTS])(
  'a page without the one or the other is left as it is: %s',
  async (head) => {
    document.head.innerHTML = head;
    const answer = vi.fn();
    vi.stubGlobal('fetch', answer);
    await holdIcon();
    expect(answer).not.toHaveBeenCalled();
  },
);
