/*
 * An address also holds what a page needs beside the fields: the unit it was typed in, where
 * it is kept and what it was there when it was opened, which marks are made and which one is followed, the choices of paper and glass.
 * No field may be called so, but for `into`, which only older addresses hold for a page.
 */

/** The same for the compiler: a field called so is refused by the schema it stands in. */
export type PageKey =
  | 'u'
  | 'kept'
  | 'seen'
  | 'taped'
  | 'asked'
  | 'run'
  | 'stretch'
  | 'counting'
  | 'counting-from'
  | `${'other' | 'count'}-dropped`
  | 'paper'
  | `paper-${string}`
  | FollowKey
  | `${FollowKey}-${number}`;

type FollowKey = 'at' | 'made' | 'was' | 'plan' | 'earlier';

const PAGE_KEY =
  /^(u|kept|seen|taped|into|asked|run|stretch|counting(-from)?|(other|count)-dropped|paper(-\w+)?|(at|made|was|plan|earlier)(-\d+)?)$/;

/** Whether a key of an address is a page's own, and no field's. */
export function isPageKey(key: string): boolean {
  return PAGE_KEY.test(key);
}
