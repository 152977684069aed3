import { circlesOf } from './circles.ts';
import { evaluateBefore, evaluateFact, evaluatePlan } from './evaluate.ts';
import { evaluateRow } from './evaluate-row.ts';
import type { Node } from './node.ts';
import { inOrder } from './order.ts';
import { nothing, type Result } from './result.ts';
import { same } from './same.ts';

/** What a number came to, and from what. */
export interface Cell {
  /** None where it goes round: then it is worked out from nothing. */
  node?: Node;
  /** Keys of the numbers it reads: none where it stands by what was made of it, on its way round. */
  reads: readonly string[];
  from: readonly (Result | undefined)[];
  result: Result;
}

/** One working out of some numbers, sources before those that read them. */
export class Round {
  readonly cells = new Map<string, Cell>();
  evaluated = 0;
  private readonly nodes: readonly Node[];
  private readonly values: Map<string, Result>;
  private readonly cellBefore: (node: Node) => Cell | undefined;
  private readonly sources: (readonly number[])[];
  private readonly reads: (readonly string[])[];

  /**
   * @param nodes every number that may change, in the garment's order
   * @param values of all others; of these as they are found
   */
  constructor(
    nodes: readonly Node[],
    values: Map<string, Result>,
    cellBefore: (node: Node) => Cell | undefined,
  ) {
    this.nodes = nodes;
    this.values = values;
    this.cellBefore = cellBefore;
    const index = new Map(nodes.map(({ key }, i) => [key, i]));
    this.sources = nodes.map((node) => node.sources.flatMap((key) => index.get(key) ?? []));
    this.reads = nodes.map(({ sources }) => sources);
    for (const group of this.ordered()) this.settle(group);
  }

  /** What is made doesn't go round through what is asked of it: then it stands as it was. */
  private ordered(): number[][] {
    const groups = inOrder(this.sources);
    const made = groups.flatMap((group) =>
      this.isRound(group) ? group.filter((i) => stands(this.nodes[i] as Node)) : [],
    );
    for (const i of made) {
      this.sources[i] = [];
      this.reads[i] = [];
    }
    return made.length === 0 ? groups : inOrder(this.sources);
  }

  private isRound(group: readonly number[]): boolean {
    return group.length > 1 || group.some((i) => this.sources[i]?.includes(i));
  }

  private settle(group: readonly number[]): void {
    if (!this.isRound(group)) this.one(group[0] ?? 0);
    else for (const [i, path] of circlesOf(group, this.sources)) this.round(i, path);
  }

  private round(i: number, way: readonly number[]): void {
    const path = way.map((at) => (this.nodes[at] as Node).key);
    this.keep(i, { from: [] }, nothing({ kind: 'circle', path }));
  }

  private one(i: number): void {
    const node = this.nodes[i] as Node;
    const reads = this.reads[i] as readonly string[];
    const from = reads.map((key) => this.values.get(key));
    const was = this.cellBefore(node);
    if (was?.node && isFrom(from, was.from) && same(node.own, was.node.own)) {
      this.put({ ...was, node }, node.key);
      return;
    }
    this.evaluated += 1;
    this.keep(i, { node, from }, this.evaluate(node, from[0]));
  }

  private evaluate(node: Node, asked: Result | undefined): Result {
    if (node.form === 'fact') return evaluateFact(node, asked);
    if (node.form === 'before') return evaluateBefore(node, asked);
    if (node.form === 'row') return evaluateRow(node, asked);
    return evaluatePlan(node, (key) => this.values.get(key));
  }

  /** What came out the same is the same object, so that nothing behind it is worked out. */
  private keep(i: number, made: Pick<Cell, 'node' | 'from'>, now: Result): void {
    const node = this.nodes[i] as Node;
    const was = this.cellBefore(node)?.result;
    const result = was && same(was, now) ? was : now;
    this.put({ ...made, reads: this.reads[i] as readonly string[], result }, node.key);
  }

  private put(cell: Cell, key: string): void {
    this.values.set(key, cell.result);
    this.cells.set(key, cell);
  }
}

/** Whether it stands by what was made of it, whatever becomes of what is asked. */
const stands = ({ form }: Node) => form === 'fact' || form === 'row';

function isFrom(now: Cell['from'], was: Cell['from']): boolean {
  return now.length === was.length && now.every((one, i) => one === was[i]);
}
