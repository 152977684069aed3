import type { Next } from '../../garment/next/next.ts';
import { readHome } from '../../garment/record/home.ts';
import type { Answer } from '../../garment/work-out/work-out.ts';

/** Where the number is given that a step lacks: among the measures, or in a work. */
export type MissingWay = { measure: string } | { work: string };

/** Follows what a step waits for to where it begins. */
export function missingWay(
  { sound }: Answer,
  { step, trouble }: Extract<Next, { kind: 'missing' }>,
): MissingWay {
  const root = trouble.kind === 'waits' ? trouble.root : step.home;
  const { id } = readHome(root);
  return sound.quantities.has(id) ? { measure: id } : { work: id };
}
