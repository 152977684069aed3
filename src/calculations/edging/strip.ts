import { needed } from '../../calculation/needed.ts';
import type { StripInput } from '../../sewing/strip.ts';
import type { EdgingAsked } from './fields.ts';

/** A strip, its iron and its pieces. */
export interface EdgingInput extends Pick<EdgingAsked, 'teeth' | 'stock' | 'crossings'> {
  strip: StripInput;
}

/** Without corners nothing turns, whatever the angle. */
const SQUARE = 90;

/** The strip that is asked for; its iron and its pieces are not of it. */
export function stripOf({ teeth, stock, crossings, ...asked }: EdgingAsked): StripInput {
  const { angle } = asked.corners.length > 0 ? needed({ angle: asked.angle }) : { angle: SQUARE };
  return { ...asked, angle };
}
