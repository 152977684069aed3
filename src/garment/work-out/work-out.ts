import type { Garment } from '../record/record.ts';
import { type Seen, type Sound, soundOf } from '../record/sound.ts';
import { circlesOf } from './circles.ts';
import { evaluateBefore, evaluateFact, evaluatePlan } from './evaluate.ts';
import { evaluateRow } from './evaluate-row.ts';
import type { Node } from './node.ts';
import { isAsBefore, type NodesBefore, nodesOf } from './nodes.ts';
import { inOrder } from './order.ts';
import { nothing, type Result } from './result.ts';
import { same } from './same.ts';
import { type Known, type SeenWork, seenWork } from './seen-work.ts';
import { type Told, told } from './told.ts';

/** What a number came to, and from what. */
interface Cell {
  /** None where it goes round: then it is worked out from nothing. */
  node?: Node;
  from: readonly (Result | undefined)[];
  result: Result;
}

/** What an earlier answer leaves for the next one. */
export interface Memory {
  seen: Seen;
  nodes: NodesBefore;
  cells: ReadonlyMap<string, Cell>;
}

/** A garment worked out: every number by its key, and what is to be said of all. */
export interface Answer extends Told {
  values: ReadonlyMap<string, Result>;
  nodes: ReadonlyMap<string, Node>;
  /** The keys of the numbers that one reads. */
  sources(key: string): readonly string[];
  works: ReadonlyMap<string, SeenWork>;
  sound: Sound;
  memory: Memory;
  /** How many numbers were worked out anew. */
  evaluated: number;
}

/**
 * Works a garment out: takes any record and never throws. The same whatever is remembered; with
 * an earlier answer's memory only what reads something that changed is worked out anew, at most
 * once. No bench and no clock: no number depends on them.
 *
 * @param known what each calculation gives
 */
export function workOut(garment: Garment, known: Known, memory?: Memory): Answer {
  const seen: Seen = memory?.seen ?? new WeakMap();
  const sound = soundOf(garment, seen);
  const works = new Map(
    [...sound.works].map(([id, work]) => [id, seenWork(work, known, seen)] as const),
  );
  const made = nodesOf(sound, works, memory?.nodes, seen);
  const nodes = [...made.values()].flatMap((one) => one.nodes);
  const { groups, sources, index } = ordered(nodes);
  const round = new Round(nodes, sources, memory);
  for (const group of groups) round.settle(group);
  const get = (key: string) => round.results.get(key);
  return {
    ...told(sound, works, nodes, get),
    values: round.results,
    nodes: new Map(nodes.map((node) => [node.key, node])),
    sources: (key) => keysAt(nodes, sources[index.get(key) ?? -1]),
    works,
    sound,
    memory: { seen, nodes: made, cells: round.cells },
    evaluated: round.evaluated,
  };
}

const keysAt = (nodes: readonly Node[], all: readonly number[] = []) =>
  all.flatMap((i) => nodes[i]?.key ?? []);

/** Whether it stands by what was made of it, whatever becomes of what is asked. */
const stands = (node: Node | undefined) => node?.form === 'fact' || node?.form === 'row';

/** Numbers after what they read. What is made doesn't go round through what is asked of it: then it stands as it was. */
function ordered(nodes: readonly Node[]) {
  const index = new Map(nodes.map(({ key }, i) => [key, i]));
  const sources = nodes.map((node) => node.sources.flatMap((key) => index.get(key) ?? []));
  const groups = inOrder(sources);
  const rows = groups.flatMap((group) =>
    isRound(group, sources) ? group.filter((i) => stands(nodes[i])) : [],
  );
  if (rows.length === 0) return { groups, sources, index };
  for (const i of rows) sources[i] = [];
  return { groups: inOrder(sources), sources, index };
}

function isRound(group: readonly number[], sources: readonly (readonly number[])[]): boolean {
  const [first = -1] = group;
  return group.length > 1 || (sources[first]?.includes(first) ?? false);
}

/** One working out, number by number. */
class Round {
  readonly results = new Map<string, Result>();
  readonly cells = new Map<string, Cell>();
  evaluated = 0;
  /** By the place of its number. */
  private readonly found: (Result | undefined)[] = [];
  private readonly nodes: readonly Node[];
  private readonly sources: readonly (readonly number[])[];
  private readonly memory: Memory | undefined;

  constructor(
    nodes: readonly Node[],
    sources: readonly (readonly number[])[],
    memory: Memory | undefined,
  ) {
    this.nodes = nodes;
    this.sources = sources;
    this.memory = memory;
  }

  settle(group: readonly number[]): void {
    if (!isRound(group, this.sources)) this.one(group[0] ?? 0);
    else {
      for (const [i, path] of circlesOf(group, this.sources)) {
        this.keep(i, { from: [] }, nothing({ kind: 'circle', path: keysAt(this.nodes, path) }));
      }
    }
  }

  private one(i: number): void {
    const node = this.nodes[i] as Node;
    const sources = this.sources[i] as readonly number[];
    const was = this.memory?.cells.get(node.key);
    if (was?.node && this.isFrom(sources, was.from) && isAsBefore(node, was.node)) {
      this.put(i, node.key, was.node === node ? was : { ...was, node });
      return;
    }
    this.evaluated += 1;
    const from = sources.map((source) => this.found[source]);
    this.keep(i, { node, from }, this.evaluate(node, from[0]));
  }

  private evaluate(node: Node, asked: Result | undefined): Result {
    if (node.form === 'fact') return evaluateFact(node, asked);
    if (node.form === 'before') return evaluateBefore(node, asked);
    if (node.form === 'row') return evaluateRow(node, asked);
    return evaluatePlan(node, (key) => this.results.get(key));
  }

  /** What came out the same is the same object, so that nothing behind it is worked out. */
  private keep(i: number, made: Omit<Cell, 'result'>, now: Result): void {
    const key = this.nodes[i]?.key ?? '';
    const was = this.memory?.cells.get(key)?.result;
    this.put(i, key, { ...made, result: was && same(was, now) ? was : now });
  }

  private put(i: number, key: string, cell: Cell): void {
    this.found[i] = cell.result;
    this.results.set(key, cell.result);
    this.cells.set(key, cell);
  }

  private isFrom(sources: readonly number[], from: Cell['from']): boolean {
    return (
      from.length === sources.length && from.every((one, j) => one === this.found[sources[j] ?? -1])
    );
  }
}
