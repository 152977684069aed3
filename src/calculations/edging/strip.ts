import { needed } from '../../calculation/needed.ts';
import type { StripInput } from '../../sewing/edging/strip.ts';
import { widestOf } from '../../sewing/edging/strip-followed.ts';
import { placesOf } from '../../sewing/followed-places.ts';
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
  'follow',
  'offset',
] as const satisfies readonly (keyof EdgingAsked)[];

export type StripAsked = Pick<EdgingAsked, (typeof STRIP_FIELDS)[number]>;

/** The strip that is asked for. */
export function stripOf({ follow, offset, ...asked }: StripAsked): StripInput {
  const { angle } = asked.corners.length > 0 ? needed({ angle: asked.angle }) : { angle: SQUARE };
  if (!follow) return { ...asked, ...needed({ pitch: asked.pitch }), angle };
  const places = placesOf(follow, offset);
  const pitch = widestOf(places, asked.length);
  // Its holes are where they are: nothing is fitted.
  return { ...asked, angle, pitch, fit: 'split', middle: 'any', end: undefined, follow: places };
}
