import { sizesWords as words } from '#words/calculations/sizes-words.ts';
import { type Ask, choice, length, number } from '../../calculation/field-spec.ts';
import { type InputOf, schema } from '../../calculation/schema.ts';
import type { Measure } from '../../sewing/sources/usual.ts';

const what = choice(words.what);
const stitchBy = choice(words.stitchBy, { when: what.is('stitch') });

/** A stitch may be given by its length, or by how many there are. */
const stitchMeasure = (ask: Ask): Measure => {
  if (stitchBy.is('in')(ask)) return 'stitchesPerInch';
  return stitchBy.is('cm')(ask) ? 'stitchesPerCm' : 'stitchMm';
};

/** What is asked of each kind of size: its number first, which has the kind's own name. */
export const sizesFields = schema(words.labels, {
  stitch: number({ start: '2.5', when: what.is('stitch'), usual: stitchMeasure }),
  stitchBy,
  button: length({ start: '24 L', when: what.is('button'), usual: 'button' }),
  needle: number({ start: '80', when: what.is('needle') }),
  needleBy: choice(words.needleBy, { when: what.is('needle') }),
  what,
});

export type Sizes = InputOf<(typeof sizesFields)['specs']>;
