import { isSum } from '../../../garment/actions/measure.ts';
import type { Next } from '../../../garment/next/next.ts';
import { readHome } from '../../../garment/record/home.ts';
import type { Answer } from '../../../garment/work-out/work-out.ts';

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

/** Whether what a step lacks can be read off a tape: a length of the garment that is no sum of others. */
export function canBeRead(answer: Answer, next: Extract<Next, { kind: 'missing' }>): boolean {
  const way = missingWay(answer, next);
  const quantity = 'measure' in way ? answer.sound.quantities.get(way.measure) : undefined;
  return quantity?.kind === 'length' && !isSum(quantity);
}
