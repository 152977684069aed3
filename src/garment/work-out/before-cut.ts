import { homeOf } from '../record/home.ts';
import type { Node } from './node.ts';
import type { Answer } from './work-out.ts';

/**
 * Before a cut: every number it uses, near or far, that is neither made nor said to be final; nothing
 * of what lies behind what is made, which stands whatever becomes of that. Of quantities those that are
 * typed or read; sums and what follows from others is decided by them.
 *
 * @returns their keys, the nearest first
 */
export function openBefore(answer: Answer, home: string): string[] {
  const met = new Set(answer.sources(home));
  for (const key of met) {
    if (!isMade(answer, key)) for (const next of answer.sources(key)) met.add(next);
  }
  return [...met].filter((key) => isOpen(answer, key));
}

/** Whether it is made, or is what is asked beside something made. */
function isMade({ nodes, values }: Answer, key: string): boolean {
  const node = nodes.get(key);
  const result = values.get(node ? homeOfNode(node) : key);
  return result?.ok === true && result.state === 'made';
}

function homeOfNode({ id, side, output }: Node): string {
  return homeOf(id, side, output?.key);
}

function isOpen(answer: Answer, key: string): boolean {
  const node = answer.nodes.get(key);
  // Beside what is begun, or made, what is asked of it is no number of its own.
  if (!node || key !== homeOfNode(node) || isMade(answer, key)) return false;
  const quantity = answer.sound.quantities.get(node.id);
  if (quantity) return quantity.final !== true && answer.sources(key).length === 0;
  return answer.works.get(node.id)?.work.final !== true && node.output?.step !== undefined;
}
