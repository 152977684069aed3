/** How many links may be looked at in search of circles, so that a hostile record stays cheap. */
const MOST_STEPS = 300_000;

type Sources = readonly (readonly number[])[];

/**
 * For each number of a group that goes round, the shortest way through it, beginning with
 * itself; of several the one used first. A circle that was found is shared by all on it. Where
 * the search takes too long, the number alone.
 */
export function circlesOf(group: readonly number[], sources: Sources): Map<number, number[]> {
  const inside = new Set(group);
  const paths = new Map<number, number[]>();
  const budget = { steps: MOST_STEPS };
  for (const v of [...group].sort((a, b) => a - b)) {
    if (paths.has(v)) continue;
    const path = shortest(v, inside, sources, budget);
    path.forEach((w, i) => {
      if (!paths.has(w)) paths.set(w, [...path.slice(i), ...path.slice(0, i)]);
    });
  }
  return paths;
}

function shortest(
  v: number,
  inside: ReadonlySet<number>,
  sources: Sources,
  budget: { steps: number },
): number[] {
  const from = new Map<number, number | undefined>([[v, undefined]]);
  for (const w of from.keys()) {
    for (const x of sources[w] ?? []) {
      budget.steps -= 1;
      if (x === v) return wayTo(w, from);
      if (budget.steps <= 0) return [v];
      if (inside.has(x) && !from.has(x)) from.set(x, w);
    }
  }
  return [v];
}

function wayTo(end: number, from: ReadonlyMap<number, number | undefined>): number[] {
  const path: number[] = [];
  for (let w: number | undefined = end; w !== undefined; w = from.get(w)) path.unshift(w);
  return path;
}
