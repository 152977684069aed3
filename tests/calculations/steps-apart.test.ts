import { expect, test } from 'vitest';
import { OUTPUTS } from '../../src/calculations/list.ts';

test('no two steps of a work are said alike: the hand would not know which it is at', async () => {
  const alike: string[] = [];
  for (const [id, load] of Object.entries(OUTPUTS)) {
    const said = new Map<string, string>();
    for (const { key, step } of (await load()).outputs) {
      if (!step) continue;
      const words = `${step.do}, ${step.datum}`;
      const other = said.get(words);
      if (other !== undefined) alike.push(`${id}: ${other}, ${key}`);
      said.set(words, key);
    }
  }
  expect(alike).toEqual([]);
});
