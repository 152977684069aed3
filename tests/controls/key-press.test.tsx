import { act, cleanup, fireEvent, screen } from '@testing-library/preact';
import { afterEach, expect, test, vi } from 'vitest';
import { closures } from '../../src/calculations/closures/closures.ts';
import { answer, open } from '../screens/helpers.tsx';

afterEach(cleanup);

// What a key press costs is counted, not timed: how long it takes is `npm run bench:keys`.

test('a key press works its answer out once, and asks once which fields there are', async () => {
  const work = vi.fn(closures.work);
  const fields = vi.fn(closures.fields);
  open({ ...closures, work, fields });
  const before = await answer();
  work.mockClear();
  fields.mockClear();
  fireEvent.pointerDown(screen.getByRole('button', { name: '5' }), { button: 0 });
  await act(() => vi.dynamicImportSettled());
  expect(await answer()).not.toBe(before);
  expect(work).toHaveBeenCalledTimes(1);
  expect(fields).toHaveBeenCalledTimes(1);
});

test('a key press leaves the keys and the other fields as they are', async () => {
  open(closures);
  await answer();
  const changed: Node[] = [];
  const changes = new MutationObserver((all) => changed.push(...all.map(({ target }) => target)));
  const keys = screen.getByRole('group', { name: 'Number pad' });
  const watched = { attributes: true, characterData: true, childList: true, subtree: true };
  for (const part of [keys, ...document.querySelectorAll('.tiles label:not(.now)')]) {
    changes.observe(part, watched);
  }
  fireEvent.pointerDown(screen.getByRole('button', { name: '5' }), { button: 0 });
  await answer();
  changes.disconnect();
  expect(changed).toEqual([]);
});
