import type { Garment, Kept, LinkPart, TextPart } from '../../../src/garment/record/record.ts';

/** A record with what a test is about. */
export function garmentOf(
  set: Partial<Record<'quantities' | 'works' | 'facts' | 'begun' | 'decisions', Kept>>,
): Garment {
  return {
    version: 3,
    id: 'g',
    name: 'Waistcoat (invented)',
    invented: true,
    changed: 1,
    edits: 0,
    quantities: {},
    works: {},
    facts: {},
    begun: {},
    decisions: {},
    ...set,
  };
}

/** What was typed, on a bench of centimetres. */
export const typed = (text: string, unit: TextPart['unit'] = 'cm'): TextPart[] => [{ text, unit }];
export const quantity = (id: string): LinkPart => ({ link: { quantity: id } });
export const output = (work: string, key: string, of?: string): LinkPart => ({
  link: { work, output: key, ...(of !== undefined && { of }) },
});
