import { homeOf, readHome } from '../record/home.ts';
import type { Node } from './node.ts';
import type { Answer } from './work-out.ts';

/**
 * Before a cut: every number it uses, near or far, that is neither made nor said to be final; nothing
 * of what lies behind what is made, which stands whatever becomes of that. Of quantities those that are
 * typed or read; sums and what follows from others is decided by them. So is what another work gives
 * that no step makes, an allowance: it is told where nothing behind it is.
 *
 * @returns their keys, the nearest first
 */
export function openBefore(answer: Answer, home: string): string[] {
  const met = new Set(answer.sources(home));
  for (const key of met) {
    if (!isMade(answer, key)) for (const next of answer.sources(key)) met.add(next);
  }
  const open = new Set([...met].filter((key) => isOpen(answer, key)));
  const takers = [...met].filter((key) => !isMade(answer, key));
  // The farthest first: what follows from another of them is decided by that.
  for (const key of givenBy(answer, [home, ...takers]).reverse()) {
    if (!leadsTo(answer, key, open)) open.add(key);
  }
  return [...met].filter((key) => open.has(key));
}

/** What no step makes and these take of works not theirs, as far as it can still change. */
function givenBy(answer: Answer, takers: readonly string[]): string[] {
  const taken = takers.flatMap((one) =>
    answer.sources(one).filter((key) => readHome(key).id !== readHome(one).id),
  );
  return [...new Set(taken)].filter((key) => {
    const node = answer.nodes.get(key);
    const seen = node && answer.works.get(node.id);
    return seen?.work.final !== true && node?.output !== undefined && !node.output.step;
  });
}

/** Whether one of these lies behind a number. */
function leadsTo(answer: Answer, key: string, ends: ReadonlySet<string>): boolean {
  const behind = new Set(answer.sources(key));
  for (const one of behind) {
    if (ends.has(one)) return true;
    for (const next of answer.sources(one)) behind.add(next);
  }
  return false;
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
