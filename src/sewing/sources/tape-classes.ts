import type { Published } from './published.ts';

/**
 * Largest errors of new tapes by class, in mm: `fixed` and `perMetre` of a + bL.
 *
 * Reference: Directive 2014/32/EU, Annex X (MI-008), Table 1, as in UK SI 2016/1153, schedule 1I.
 * It says: maximum permissible error ±(a + bL) mm, L rounded up to whole metres: class II 0.3 and 0.2, class III 0.6 and 0.4.
 */
export const TAPE_CLASSES: Published<
  Readonly<Record<'II' | 'III', { fixed: number; perMetre: number }>>
> = {
  value: { II: { fixed: 0.3, perMetre: 0.2 }, III: { fixed: 0.6, perMetre: 0.4 } },
  grade: 'manual',
};
