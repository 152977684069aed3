import type { Held } from '../../calculation/page.ts';

/** Where the app is: a screen, a mode of it, and what was typed, all in the address bar. */
export interface Route {
  screen: string;
  mode: string;
  /** Of a calculation, its fields and what its page keeps. */
  draft: Held;
}

/** No address typed by us is near this; a longer one is cut rather than read for ever. */
const LONGEST_HASH = 200_000;

/** Reads an address such as `#/closures/follow?opening=46.3&count=7`. Never throws. */
export function readRoute(hash: string): Route {
  const [path = '', query = ''] = hash
    .slice(0, LONGEST_HASH)
    .replace(/^#\/?/, '')
    .split(/\?(.*)/s);
  const [screen = '', mode = ''] = path.split('/');
  const draft: Record<string, string> = Object.create(null);
  for (const [key, value] of new URLSearchParams(query)) {
    // The same twice is said as a field there is none of.
    draft[key in draft ? `${key} ×2` : key] = value;
  }
  return { screen, mode, draft };
}

/** The address of a route. Empty fields are kept: an emptied field is as typed, too. */
export function writeRoute({ screen, mode, draft }: Route): string {
  const path = mode === '' ? screen : `${screen}/${mode}`;
  const query = new URLSearchParams(draft).toString();
  return `#/${path}${query === '' ? '' : `?${query}`}`;
}
