import type { Bench } from '../../calculation/bench.ts';
import { OUTPUTS } from '../../calculations/list.ts';
import type { Garment, Work } from '../../garment/record/record.ts';

/**
 * A work of a calculation as it starts on a bench. It holds every field, so that none is left to
 * a start that another bench, or a later build, would have otherwise.
 */
export async function newWork(
  calculation: string,
  name: string,
  garment: Garment,
  bench: Bench,
): Promise<Work> {
  const outputs = await OUTPUTS[calculation]?.();
  const start = outputs?.fields.asked.start(bench) ?? {};
  const { unit, decimalMark: mark } = bench;
  const fields = Object.entries(start).map(([key, text]) => [key, [{ text, unit, mark }]] as const);
  return { name, calculation, rank: nextRank(garment.works), fields: Object.fromEntries(fields) };
}

/** The rank behind all that have one. */
function nextRank(all: Readonly<Record<string, unknown>>): number {
  const ranks = Object.values(all).map((one) => (one as { rank?: unknown } | null)?.rank);
  return (
    ranks.reduce<number>((most, rank) => Math.max(most, typeof rank === 'number' ? rank : 0), 0) + 1
  );
}
