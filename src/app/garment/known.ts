import { OUTPUTS } from '../../calculations/list.ts';
import type { Garment } from '../../garment/record/record.ts';
import type { Known } from '../../garment/work-out/seen-work.ts';

/** What each calculation on a garment gives; one that can't be fetched now is missing, and asked for the next time. */
export async function knownFor({ works }: Pick<Garment, 'works'>): Promise<Known> {
  const wanted = Object.values(works).map(
    (work) => (work as { calculation?: unknown } | null)?.calculation,
  );
  const ids = [...new Set(wanted)].filter(
    (id): id is string => typeof id === 'string' && Object.hasOwn(OUTPUTS, id),
  );
  const pairs = await Promise.all(
    ids.map(async (id) => {
      const outputs = await OUTPUTS[id]?.().catch(() => 'missing' as const);
      return [id, outputs ?? 'missing'] as const;
    }),
  );
  return new Map(pairs);
}
