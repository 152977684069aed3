import type { PlaceOf } from './read.ts';

/** Keys of the outputs of one of each place and of all of it. */
export const KEYS: Readonly<Record<PlaceOf, readonly [one: string, all: string]>> = {
  sides: ['side-edge', 'side-edges'],
  frontDarts: ['front-dart', 'front-darts'],
  backDarts: ['back-dart', 'back-darts'],
  frontEdges: ['front-edge', 'front-edges'],
  backEdges: ['back-edge', 'back-edges'],
  panelEdges: ['panel-edge', 'panel-edges'],
  above: ['above-line', 'above-lines'],
  below: ['below-line', 'below-lines'],
  hem: ['hem-edge', 'hem-edges'],
};
