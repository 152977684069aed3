import { needed } from '../../calculation/needed.ts';
import type { StripInput } from '../../sewing/strip.ts';
import type { EdgingAsked } from './fields.ts';

/** A strip, its iron and its pieces. */
export interface EdgingInput extends Pick<EdgingAsked, 'teeth' | 'stock' | 'crossings'> {
  strip: StripInput;
}

/** Without corners nothing turns, whatever the angle. */
const SQUARE = 90;

/** What the places of the holes depend on: the other fields say how they are punched, and of what pieces. */
export const STRIP_FIELDS = [
  'length',
  'pitch',
  'rows',
  'fit',
  'middle',
  'width',
  'margin',
  'hole',
  'end',
  'corners',
  'angle',
  'radius',
] as const satisfies readonly (keyof EdgingAsked)[];

export type StripAsked = Pick<EdgingAsked, (typeof STRIP_FIELDS)[number]>;

/** The strip that is asked for. */
export function stripOf(asked: StripAsked): StripInput {
  const { angle } = asked.corners.length > 0 ? needed({ angle: asked.angle }) : { angle: SQUARE };
  return { ...asked, angle };
}
