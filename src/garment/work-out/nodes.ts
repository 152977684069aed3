import { homeOf } from '../record/home.ts';
import type { Seen, Sound } from '../record/sound.ts';
import type { Places } from './links.ts';
import type { Node } from './node.ts';
import { quantityNode } from './quantity-node.ts';
import { same } from './same.ts';
import type { SeenWork } from './seen-work.ts';
import { workNodes } from './work-nodes.ts';

/** Numbers of one work or quantity, and all that they were made from. */
export interface Made {
  from: readonly unknown[];
  nodes: readonly Node[];
}

/** By id: kept while a work, what is made of it and what it links to are the same objects. */
export type NodesBefore = ReadonlyMap<string, Made>;

/** All numbers of a garment: quantities, then works by rank, their outputs as declared. */
export function nodesOf(
  sound: Sound,
  works: ReadonlyMap<string, SeenWork>,
  before: NodesBefore | undefined,
  seen: Seen,
): Map<string, Made> {
  const places: Places = { quantities: sound.quantities, works };
  const all = new Map<string, Made>();
  const facts = (home: string) => sound.facts.get(home) ?? [];
  const keep = (id: string, from: readonly unknown[], make: () => readonly Node[]) => {
    const was = before?.get(id);
    const kept = was !== undefined && isSameList(was.from, from);
    all.set(id, kept ? was : { from, nodes: make() });
  };
  for (const [id, quantity] of sound.quantities) {
    const own = facts(homeOf(id));
    const from = [quantity, ...own.map(({ fact }) => fact), ...linkedTo(linksOf(quantity), places)];
    keep(id, from, () => [quantityNode(id, quantity, own, places, seen)]);
  }
  for (const [id, work] of works) {
    const from = [work, ...linkedTo(work.linked, places), ...madeFor(id, work, sound)];
    keep(id, from, () => workNodes(id, work, sound, places));
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
  if (!outputs || sound.facts.size + sound.before.size === 0) return [];
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

/** Whether a number is to be worked out as before: the same node, or one that depends on the same. */
export function isAsBefore(now: Node, was: Node): boolean {
  return now === was || (now.form === was.form && same(now.own, was.own));
}
