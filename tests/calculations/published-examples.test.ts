import { expect, test } from 'vitest';
import { oursOf, PUBLISHED } from './published-examples.ts';

test.each(PUBLISHED)('$row, $of: $says is $printed $as', async (example) => {
  expect(await oursOf(example)).toBe(example.ours || example.printed);
});

test('where ours is another number it is said why', () => {
  const odd = PUBLISHED.filter(
    ({ printed, ours, why }) => (ours === '') !== (why === '') || ours === printed,
  );
  expect(odd).toEqual([]);
});
