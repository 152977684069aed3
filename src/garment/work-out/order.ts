/**
 * Groups of numbers, sources before those that read them; a group of several, or one that reads
 * itself, goes round in circles. One pass without recursion, so that a chain may be long.
 *
 * Source: R. Tarjan, Depth-first search and linear graph algorithms, SIAM J. Comput. 1 (1972).
 *
 * @param sources of each number, the numbers it reads
 */
export function inOrder(sources: readonly (readonly number[])[]): number[][] {
  const search = new Search(sources);
  for (let start = 0; start < sources.length; start++) search.from(start);
  return search.groups;
}

class Search {
  readonly groups: number[][] = [];
  private readonly sources: readonly (readonly number[])[];
  private readonly index: Int32Array;
  private readonly low: Int32Array;
  private readonly next: Int32Array;
  private readonly open: Uint8Array;
  private readonly stack: number[] = [];
  private count = 0;

  constructor(sources: readonly (readonly number[])[]) {
    this.sources = sources;
    this.index = new Int32Array(sources.length).fill(-1);
    this.low = new Int32Array(sources.length);
    this.next = new Int32Array(sources.length);
    this.open = new Uint8Array(sources.length);
  }

  from(start: number): void {
    if (this.index[start] !== -1) return;
    const path = [start];
    while (path.length > 0) {
      const v = path[path.length - 1] as number;
      if (this.index[v] === -1) this.enter(v);
      const deeper = this.step(v);
      if (deeper !== undefined) path.push(deeper);
      else if ((this.next[v] ?? 0) >= (this.sources[v]?.length ?? 0)) {
        path.pop();
        const above = path[path.length - 1];
        if (above !== undefined) this.lower(above, this.low[v] as number);
        if (this.low[v] === this.index[v]) this.close(v);
      }
    }
  }

  private enter(v: number): void {
    this.index[v] = this.count;
    this.low[v] = this.count;
    this.count += 1;
    this.stack.push(v);
    this.open[v] = 1;
  }

  /** Looks at one source of v; gives it back where it was never met. */
  private step(v: number): number | undefined {
    const at = this.next[v] as number;
    const w = this.sources[v]?.[at];
    if (w === undefined) return undefined;
    this.next[v] = at + 1;
    if (this.index[w] === -1) return w;
    if (this.open[w] === 1) this.lower(v, this.index[w] as number);
    return undefined;
  }

  private lower(v: number, to: number): void {
    this.low[v] = Math.min(this.low[v] as number, to);
  }

  private close(v: number): void {
    const group: number[] = [];
    for (;;) {
      const w = this.stack.pop() as number;
      this.open[w] = 0;
      group.push(w);
      if (w === v) break;
    }
    this.groups.push(group);
  }
}
