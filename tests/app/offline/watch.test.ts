import 'fake-indexeddb/auto';
import { afterEach, expect, test, vi } from 'vitest';
import type { OfflineNews } from '../../../src/app/offline/news.ts';
import { watch } from '../../../src/app/offline/watch.ts';
import { openStore } from '../../../src/storage/store.ts';

const told: OfflineNews[] = [];
const watchEngine = vi.hoisted(() => vi.fn());

vi.mock('../../../src/app/offline/offline.ts', () => ({
  watchOffline: (news: OfflineNews) => told.push(news),
}));
vi.mock('../../../src/app/tape/engine-watch.ts', () => ({ watchEngine }));

afterEach(() => {
  told.length = 0;
  watchEngine.mockClear();
});

test('what reads a tape is stored once the app is ready and no newer build is being taken over', async () => {
  watch(openStore('watch'), vi.fn(), vi.fn());
  told[0]?.onReady();
  await Promise.resolve();
  expect(watchEngine).not.toHaveBeenCalled();
  told[0]?.onSettled();
  await Promise.resolve();
  expect(watchEngine).toHaveBeenCalledOnce();
});

test('nothing is stored for tapes before the app itself is', async () => {
  watch(openStore('watch'), vi.fn(), vi.fn());
  told[0]?.onSettled();
  await Promise.resolve();
  expect(watchEngine).not.toHaveBeenCalled();
  told[0]?.onReady();
  await vi.waitFor(() => expect(watchEngine).toHaveBeenCalledOnce());
});
