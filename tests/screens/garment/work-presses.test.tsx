import { cleanup, fireEvent, screen, within } from '@testing-library/preact';
import { options, type VNode } from 'preact';
import { afterEach, expect, test } from 'vitest';
import { openIn, skirt } from './work-hand.tsx';

const { diffed = () => undefined } = options;
afterEach(() => {
  options.diffed = diffed;
  cleanup();
});

/** How often each part is gone through from now on, by its name. */
function countParts(): (part: string) => number {
  const counts = new Map<string, number>();
  options.diffed = (node: VNode) => {
    diffed(node);
    const name = typeof node.type === 'function' ? node.type.name : '';
    counts.set(name, (counts.get(name) ?? 0) + 1);
  };
  return (part) => counts.get(part) ?? 0;
}

// What a key press costs is counted, not timed: how long it takes is `npm run bench:keys`.

test('a key goes through the answer, the fields and the rows once: the drawing follows alone', async () => {
  await openIn(skirt, 'close');
  fireEvent.click(screen.getByRole('button', { name: /^First, from the top, 1\.2 cm: change it/ }));
  const pad = screen.getByRole('group', { name: 'Number pad' });
  const partsOf = countParts();
  const key = within(pad).getByRole('button', { name: '2' });
  fireEvent.pointerDown(key, { button: 0 });
  await screen.findByRole('button', { name: /^First, from the top, 2 cm: change it/ });
  expect(partsOf('DrawnWork')).toBe(1);
  for (const part of ['WorkAnswer', 'WorkFields', 'WorkKeys', 'Row']) {
    expect(partsOf(part), part).toBe(1);
  }
});
