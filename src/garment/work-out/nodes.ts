import { byId, homeOf } from '../record/home.ts';
import type { Seen, Sound } from '../record/sound.ts';
import type { Places } from './links.ts';
import type { Node } from './node.ts';
import { quantityNode } from './quantity-node.ts';
import type { SeenWork } from './seen-work.ts';
import { workNodes } from './work-nodes.ts';

/** Numbers of one work or quantity, and all that they were made from. */
export interface Made {
  from: readonly unknown[];
  nodes: readonly Node[];
  /** The works and quantities it links to, by id; also where there are none such. */
  links: readonly string[];
}

/**
 * All numbers of a garment by what they are of: quantities, then works by rank, their outputs as
 * declared. The same objects as before while a work, what is made of it and what it links to are.
 */
export function nodesOf(
  sound: Sound,
  works: ReadonlyMap<string, SeenWork>,
  before: ReadonlyMap<string, { made: Made }>,
  seen: Seen,
): Map<string, Made> {
  const places: Places = { quantities: sound.quantities, works };
  const all = new Map<string, Made>();
  const keep = (
    id: string,
    links: readonly string[],
    own: readonly unknown[],
    make: () => readonly Node[],
  ) => {
    const from = [...own, ...linkedTo(links, places)];
    const was = before.get(id)?.made;
    all.set(id, was && isSameList(was.from, from) ? was : { from, nodes: make(), links });
  };
  for (const [id, quantity] of sound.quantities) {
    const facts = sound.facts.get(homeOf(id)) ?? [];
    const own = [quantity, ...facts.flatMap((one) => [one.id, one.fact])];
    keep(id, linksOf(quantity), own, () => [quantityNode(id, quantity, facts, places, seen)]);
  }
  const touched = byId([...sound.facts.keys(), ...sound.before.keys()]);
  for (const [id, work] of works) {
    const own = [work, ...(touched.has(id) ? madeFor(id, work, sound) : [])];
    keep(id, work.linked, own, () => workNodes(id, work, sound, places));
  }
  return all;
}

function linkedTo(ids: readonly string[], { quantities, works }: Places): unknown[] {
  return ids.map((id) => works.get(id) ?? quantities.get(id)?.kind);
}

function linksOf({ parts }: { parts: unknown }): string[] {
  if (!Array.isArray(parts)) return [];
  return parts.flatMap((part: { link?: { quantity?: unknown; work?: unknown } } | null) => {
    const id = part?.link?.quantity ?? part?.link?.work;
    return typeof id === 'string' ? [id] : [];
  });
}

/** What is made and decided of a work, in a list to compare. */
function madeFor(id: string, { outputs, sides }: SeenWork, sound: Sound): unknown[] {
  if (!outputs) return [];
  return sides.flatMap(({ side }) =>
    outputs.outputs.flatMap(({ key }): unknown[] => {
      const home = homeOf(id, side, key);
      const before = sound.before.get(home);
      const facts = sound.facts.get(home) ?? [];
      if (facts.length === 0) return before ? [home, before.id, before.fact] : [];
      const own = facts.flatMap((one) => [one.id, one.fact]);
      return [home, sound.begun.get(home), sound.decisions.get(home), ...own];
    }),
  );
}

function isSameList(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((one, i) => Object.is(one, b[i]));
}
