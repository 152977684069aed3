import type { Page } from 'playwright-core';
import { CALCULATIONS } from '../../src/calculations/list.ts';
import { IN_HAND } from './in-hand.ts';

export interface Screen {
  name: string;
  hash: string;
  /** The route it is reached from, where that isn't the first page. */
  from?: string;
  /** What is pressed after the screen has opened, to reach a state that has no address. */
  steps?: (page: Page) => Promise<void>;
}

/** Every calculation by itself. */
export const EACH: readonly Screen[] = Object.keys(CALCULATIONS).map((id) => ({
  name: id,
  hash: `#/${id}`,
}));

/** The screen the first page is measured with. */
export const FIRST = EACH.find(({ hash }) => hash === '#/convert') as Screen;

/** Every screen that has an address: what is weighed, scored and opened offline goes through this list. */
export const SCREENS: readonly Screen[] = [
  ...EACH,
  { name: 'home', hash: '#/' },
  { name: 'counting', hash: '#/centre/count', from: '#/centre' },
  { name: 'on the glass', hash: '#/edging/glass', from: '#/edging' },
  { name: 'on paper', hash: '#/edging/paper', from: '#/edging' },
  { name: 'following the closures', hash: '#/closures/follow', from: '#/closures' },
  { name: 'reading a tape', hash: '#/tape' },
  { name: 'a tape for a field', hash: '#/closures/tape?taped=opening', from: '#/closures' },
  { name: 'finding', hash: '#/find' },
  { name: 'garments', hash: '#/garments' },
  { name: 'keeping', hash: '#/hem/keep', from: '#/hem' },
  { name: 'settings', hash: '#/settings' },
];

/** Every screen, and all that a garment in hand can look like: what is photographed, looked at and read out. */
export const EVERY_SCREEN: readonly Screen[] = [
  ...SCREENS,
  // What is fetched for it is weighed as that of a garment that is there.
  { name: 'a garment that is not there', hash: '#/garments/open?g=none' },
  ...IN_HAND,
];
