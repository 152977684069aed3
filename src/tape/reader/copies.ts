import { boxDown, doubled, type Field, fieldOf, takenAs } from '../picture/field.ts';
import type { GreyImage } from '../picture/grey-image.ts';
import { type Scaling, scalingOf } from '../picture/space.ts';
import { MEASURE_PX, SEARCH_PX, SMALL_PX } from './limits.ts';

/** The picture in the two sizes it is looked at in. */
export interface Copies {
  readonly search: Field<'search'>;
  readonly measuring: Field<'measuring'>;
  readonly toMeasuring: Scaling<'search', 'measuring'>;
  readonly toPicture: Scaling<'measuring', 'picture'>;
}

export function copiesOf(image: GreyImage): Copies {
  const enlarged = Math.max(image.width, image.height) < SMALL_PX;
  const source = enlarged ? doubled(fieldOf(image)) : image;
  const long = Math.max(source.width, source.height);
  const toSearch = Math.max(1, Math.round(long / SEARCH_PX));
  const toMeasuring = Math.max(1, Math.floor(long / MEASURE_PX));
  const measuring = boxDown<'measuring'>(source, toMeasuring);
  return {
    // One field where the two are alike: its logarithm is worked out once.
    search: toSearch === toMeasuring ? takenAs(measuring) : boxDown(source, toSearch),
    measuring,
    toMeasuring: scalingOf(toSearch / toMeasuring),
    toPicture: scalingOf(toMeasuring / (enlarged ? 2 : 1)),
  };
}
