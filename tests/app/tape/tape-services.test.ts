import { expect, test, vi } from 'vitest';
import { TAPE_SERVICES } from '../../../src/app/tape/tape-services.ts';
import { nothing, photo } from '../../camera/stand-ins.ts';

const script = vi.hoisted(() => ({ comes: (): void => undefined }));
vi.mock('../../../src/app/tape/tape-reader.ts', async () => {
  await new Promise<void>((done) => {
    script.comes = done;
  });
  return { createReader: () => ({ read: async () => nothing }) };
});

test('a reader whose script stalls fails the reading; when it has come, the next is read', async () => {
  vi.useFakeTimers();
  const { signal } = new AbortController();
  const fate = expect(TAPE_SERVICES.bridge.read(photo(), signal)).rejects.toThrow(/does not come/);
  await vi.advanceTimersByTimeAsync(30_000);
  await fate;
  vi.useRealTimers();
  const next = TAPE_SERVICES.bridge.read(photo(), signal);
  script.comes();
  expect(await next).toEqual(nothing);
});
