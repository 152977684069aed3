import type { Answer } from './work-out.ts';

/**
 * Before a cut: every number it uses, near or far, that is neither made nor said to be final.
 * Of quantities those that are typed or read; sums and what follows from others is decided by them.
 *
 * @returns their keys, the nearest first
 */
export function openBefore(answer: Answer, home: string): string[] {
  const met = new Set(answer.sources(home));
  for (const key of met) for (const next of answer.sources(key)) met.add(next);
  return [...met].filter((key) => isOpen(answer, key));
}

function isOpen({ nodes, values, sources, sound, works }: Answer, key: string): boolean {
  const node = nodes.get(key);
  const result = values.get(key);
  if (!node || (result?.ok && result.state === 'made')) return false;
  const quantity = sound.quantities.get(node.id);
  if (quantity) return quantity.final !== true && sources(key).length === 0;
  return works.get(node.id)?.work.final !== true && node.output?.step !== undefined;
}
