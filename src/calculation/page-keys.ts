/*
 * An address also holds what a page needs beside the fields: the unit it was typed in, where
 * it is kept and what it was there when it was opened, which marks are made and which one is followed, the choices of paper and glass.
 * No field may be called so, but for `into`, which only older addresses hold for a page.
 */

const PAGE_KEY =
  /^(u|kept|seen|taped|into|asked|run|stretch|end|counting|(other|count)-dropped|paper(-\w+)?|(at|made|was|plan|earlier)(-\d+)?)$/;

/** Whether a key of an address is a page's own, and no field's. */
export function isPageKey(key: string): boolean {
  return PAGE_KEY.test(key);
}
