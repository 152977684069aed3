import type { ComponentProps, FunctionComponent, VNode } from 'preact';

import type { RunTape } from './run-tape.tsx';
import { steady } from './steady.tsx';
import './parts.css';
import { useLoaded } from './use-loaded.ts';

/*
 * Parts that come just after the answer in words, so that the first answer
 * doesn't wait for them.
 */

/** A part fetched when first shown; until it is there, what stands instead of it. */
export function later<Props extends object>(
  load: () => Promise<FunctionComponent<Props>>,
  instead: VNode | null = null,
) {
  return (props: Props) => {
    const loaded = useLoaded(load);
    return loaded.state === 'here' ? <loaded.value {...props} /> : instead;
  };
}

/** Why there is no answer. */
export const FaultsOf = later(() => import('./fault-list.tsx').then((part) => part.FaultList));

/** Other solutions; the place of one tile is kept free, as nearly every answer has one. */
export const OffersOf = later(
  () => import('./offers.tsx').then((part) => part.Offers),
  <div class="tile" />,
);

/** A field with a few ways to be. */
export const ChoiceTileOf = later(
  () => import('./choice-tile.tsx').then((part) => part.ChoiceTile),
  <div class="tile" />,
);

/** The ways such a field can be. */
export const ChoicesOf = later(
  () => import('./choices.tsx').then((part) => part.Choices),
  <div class="choices" />,
);

const Drawn = later(() => import('./run-tape.tsx').then((part) => part.RunTape));

/** The run on its tape; its place is kept free until the drawing is there. */
export const TapeOfRun = steady(function Place(props: ComponentProps<typeof RunTape>) {
  return (
    <div class="tape-place">
      <Drawn {...props} />
    </div>
  );
});
