import { readHome } from '../record/home.ts';
import type { Node } from './node.ts';
import type { Made } from './nodes.ts';

/**
 * Every number of a garment by its key, in the garment's order. One is looked for among those of its
 * work: a press that asks for a few gathers none of the thousands that hundreds of works have.
 */
export class NodesByKey {
  private readonly made: ReadonlyMap<string, Made>;
  private gathered: ReadonlyMap<string, Node> | undefined;

  constructor(made: ReadonlyMap<string, Made>) {
    this.made = made;
  }

  get(key: string): Node | undefined {
    const nodes = this.made.get(readHome(key).id)?.nodes;
    return nodes && keyed(nodes).get(key);
  }

  keys(): MapIterator<string> {
    return this.all().keys();
  }

  values(): MapIterator<Node> {
    return this.all().values();
  }

  [Symbol.iterator](): MapIterator<[string, Node]> {
    return this.all()[Symbol.iterator]();
  }

  private all(): ReadonlyMap<string, Node> {
    this.gathered ??= new Map(
      [...this.made.values()].flatMap(({ nodes }) =>
        nodes.map((node) => [node.key, node] as const),
      ),
    );
    return this.gathered;
  }
}

/** Those of one work, which stay the same list until it changes. */
const keyedBefore = new WeakMap<readonly Node[], ReadonlyMap<string, Node>>();

function keyed(nodes: readonly Node[]): ReadonlyMap<string, Node> {
  const before = keyedBefore.get(nodes);
  if (before) return before;
  const all = new Map(nodes.map((node) => [node.key, node]));
  keyedBefore.set(nodes, all);
  return all;
}
