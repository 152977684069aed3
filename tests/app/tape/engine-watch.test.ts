import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { TapeStored } from '../../../src/app/tape/engine-watch.ts';
import { begun, engineStore } from './engine-store.ts';

const { watchEngine } = await import('../../../src/app/tape/engine-watch.ts');

let phone: ReturnType<typeof engineStore>;
beforeEach(() => {
  phone = engineStore();
  vi.stubGlobal('requestIdleCallback', (work: () => void) => work());
});
afterEach(() => {
  vi.unstubAllGlobals();
});

/** What is said until it is settled. */
async function said(): Promise<TapeStored[]> {
  const heard: TapeStored[] = [];
  watchEngine((stored) => heard.push(stored));
  await vi.waitFor(() => expect(['here', 'missing']).toContain(heard.at(-1)));
  return heard;
}

test('it is said to be here once it is stored, and at once the next time', async () => {
  expect(await said()).toEqual(['coming', 'here']);
  expect(await said()).toEqual(['here']);
});

test('where it all arrives and nothing can be stored, it is missing', async () => {
  phone.full = true;
  expect(await said()).toEqual(['coming', 'missing']);
  vi.stubGlobal('caches', undefined);
  expect(await said()).toEqual(['coming', 'missing']);
});

test('where a file breaks off half-way, it is missing', async () => {
  vi.stubGlobal('fetch', async (url: string, asked?: RequestInit) =>
    url.endsWith('.wasm') ? begun(asked?.signal, true) : new Response('file'),
  );
  expect(await said()).toEqual(['coming', 'missing']);
});

test('without a connection it is missing, and goes on with the next one', async () => {
  phone.missing = '.traineddata';
  const heard: TapeStored[] = [];
  watchEngine((stored) => heard.push(stored));
  await vi.waitFor(() => expect(heard).toEqual(['coming', 'missing']));
  phone.missing = undefined;
  window.dispatchEvent(new Event('online'));
  await vi.waitFor(() => expect(heard.at(-1)).toBe('here'));
});
