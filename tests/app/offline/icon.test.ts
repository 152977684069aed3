import { afterEach, expect, test, vi } from 'vitest';
import { holdIcon } from '../../../src/app/offline/icon.ts';

afterEach(() => {
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
  document.head.innerHTML = '';
});

const icon = () => document.querySelector<HTMLLinkElement>('link[rel=icon]')?.href;

test('the icon is fetched once and held in memory; where it can’t be, it stays as it is', async () => {
  document.head.innerHTML = '<link rel="icon" href="http://localhost/favicon.svg">';
  const made = vi.fn(() => 'blob:http://localhost/icon');
  vi.stubGlobal('URL', Object.assign(URL, { createObjectURL: made }));
  const answer = vi.fn<() => Promise<Response>>();
  vi.stubGlobal('fetch', answer);
  answer.mockRejectedValueOnce(new TypeError('no connection'));
  await holdIcon();
  answer.mockResolvedValueOnce(new Response('gone', { status: 404 }));
  await holdIcon();
  expect(made).not.toHaveBeenCalled();
  expect(icon()).toBe('http://localhost/favicon.svg');
  answer.mockResolvedValueOnce(new Response('<svg/>'));
  await holdIcon();
  expect(icon()).toBe('blob:http://localhost/icon');
});

test('a page without an icon is left as it is', async () => {
  const answer = vi.fn();
  vi.stubGlobal('fetch', answer);
  await holdIcon();
  expect(answer).not.toHaveBeenCalled();
});
