import type { Page } from 'playwright-core';

export interface Screen {
  name: string;
  hash: string;
  /** The route it is reached from, where that isn't the first page. */
  from?: string;
  /** What is pressed after the screen has opened, to reach a state that has no address. */
  steps?: (page: Page) => Promise<void>;
}

/** The screen the first page is measured with. */
export const FIRST: Screen = { name: 'inches and centimetres', hash: '#/convert' };

/** Every screen of the app: what is photographed, weighed and checked goes through this list. */
export const SCREENS: readonly Screen[] = [
  FIRST,
  { name: 'home', hash: '#/' },
  { name: 'sizes', hash: '#/sizes' },
  { name: 'buttonhole', hash: '#/buttonhole' },
  { name: 'seam allowance', hash: '#/seam' },
  { name: 'hem', hash: '#/hem' },
  { name: 'faced hem', hash: '#/facing' },
  { name: 'mitred corner', hash: '#/corner' },
  { name: 'centre by counting', hash: '#/centre' },
  { name: 'counting', hash: '#/centre/count', from: '#/centre' },
  { name: 'edging strips', hash: '#/edging' },
  { name: 'crossing strips', hash: '#/crossing' },
  { name: 'lacing', hash: '#/lacing' },
  { name: 'on the glass', hash: '#/edging/glass', from: '#/edging' },
  { name: 'on paper', hash: '#/edging/paper', from: '#/edging' },
  { name: 'halves, quarters, eighths', hash: '#/parts' },
  { name: 'closures', hash: '#/closures' },
  { name: 'following the closures', hash: '#/closures/follow', from: '#/closures' },
  { name: 'reading a tape', hash: '#/tape' },
  { name: 'a tape for a field', hash: '#/closures/tape?taped=opening', from: '#/closures' },
  { name: 'garments', hash: '#/garments' },
  {
    name: 'following a garment',
    hash: '#/garments/follow?g=none',
    from: '#/garments',
  },
  { name: 'keeping', hash: '#/hem/keep', from: '#/hem' },
  { name: 'settings', hash: '#/settings' },
];
