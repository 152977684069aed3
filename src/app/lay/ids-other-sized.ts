import type { LaidOf } from '../../garment/record/cloth-lay.ts';
import { otherSized } from '../../lay/pieces/other-sized.ts';
import type { CutOutlines } from './cut-outlines.ts';
import { inMm } from './lay-units.ts';

/** Pieces whose shape of their own isn't as large as the garment cuts them, by id. */
export function idsOtherSized({ pieces }: Pick<LaidOf, 'pieces'>, cut: CutOutlines): string[] {
  return Object.entries(pieces).flatMap(([id, { along, across, fold }]) => {
    const own = cut.get(id);
    const wide = inMm(fold ? across / 2 : across);
    return own?.ok && otherSized(own.value.exact, inMm(along), wide) ? [id] : [];
  });
}
