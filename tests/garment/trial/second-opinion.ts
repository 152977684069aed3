import {
  evaluateBefore,
  evaluateFact,
  evaluatePlan,
} from '../../../src/garment/work-out/evaluate.ts';
import { evaluateRow } from '../../../src/garment/work-out/evaluate-row.ts';
import { askedKey } from '../../../src/garment/work-out/node.ts';
import type { Result } from '../../../src/garment/work-out/result.ts';
import { same } from '../../../src/garment/work-out/same.ts';
import type { Answer } from '../../../src/garment/work-out/work-out.ts';

/** Keys whose number is another one worked out without order or memory, or whose circle is none. */
export function secondOpinion(answer: Answer): string[] {
  const values = new Map<string, Result>();
  const round = new Set([...answer.nodes.keys()].filter((key) => reach(answer, key).has(key)));
  const get = (key: string): Result | undefined => {
    if (round.has(key)) return answer.values.get(key);
    const known = values.get(key);
    if (known || !answer.nodes.get(key)) return known;
    const found = evaluated(answer, key, get);
    if (found) values.set(key, found);
    return found;
  };
  return [...answer.nodes.keys()].filter((key) => {
    const result = answer.values.get(key);
    const path =
      result?.ok === false && result.trouble.kind === 'circle' ? result.trouble.path : [];
    if (!round.has(key)) return path.length > 0 || !same(result, get(key));
    return !isWayRound(answer, key, path);
  });
}

function evaluated(
  { nodes, sources }: Answer,
  key: string,
  get: (key: string) => Result | undefined,
) {
  const node = nodes.get(key);
  const [first] = sources(key);
  const asked = first === undefined ? undefined : get(first);
  if (node?.form === 'fact') return evaluateFact(node, asked);
  if (node?.form === 'before') return evaluateBefore(node, asked);
  if (node?.form === 'row') return evaluateRow(node, asked);
  return node && evaluatePlan(node, get);
}

function reach({ sources }: Answer, key: string): Set<string> {
  const met = new Set(sources(key));
  for (const one of met) for (const next of sources(one)) met.add(next);
  return met;
}

function isWayRound({ sources }: Answer, key: string, path: readonly string[]): boolean {
  const steps = path.every((one, i) => {
    const next = path[(i + 1) % path.length] ?? '';
    return sources(one).includes(next);
  });
  return path[0] === key && steps;
}

/** What must hold of any answer, read off it: open decisions are passed on, what stands is what was made. */
export function soundFaults({ nodes, values, sources, sound }: Answer): string[] {
  return [...nodes].flatMap(([key, node]) => {
    const result = values.get(key);
    if (!result?.ok) return [];
    const behind = sources(key).map((one) => values.get(one));
    const open = behind.some((one) => one?.ok && one.undecided);
    const passed = result.state === 'made' || result.undecided || !open;
    const facts = sound.facts.get(key) ?? [];
    // What has no number of its own is as planned, whatever that is now.
    const plan = values.get(askedKey(key));
    const asPlanned = node.form !== 'before' || (plan?.ok && same(plan.value, result.value));
    const stands = facts.every(({ id, fact }) => {
      const at = fact.measured ?? fact.shown;
      if (typeof result.value === 'number') return result.value === at || node.form === 'plan';
      const rank = result.made?.indexOf(id) ?? -1;
      return result.value.marks[rank]?.at === at || node.form === 'plan';
    });
    return [
      ...(passed ? [] : [`${key} hides an open decision`]),
      ...(stands ? [] : [`${key} moved`]),
      ...(asPlanned ? [] : [`${key} is not as planned`]),
    ];
  });
}
