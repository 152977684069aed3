/** Those that may have been the last: no other began only after they were confirmed. */
export function lastOf<One extends { from: number; to: number }>(changes: readonly One[]): One[] {
  return changes.filter((one) => !changes.some(({ from }) => from > one.to));
}

/** Numbers from 0 to below 1, the same ones for the same seed (Park and Miller's generator). */
export function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}
