import type { Held, PageState } from './page.ts';

/** `PageKey` (`page-keys.ts`) for what is read. */
const PAGE_KEY =
  /^(u|kept|seen|taped|asked|run|stretch|counting(-from)?|(other|count)-dropped|paper(-\w+)?|(at|made|was|plan|earlier)(-\d+)?)$/;

/** What was held, parted by its keys into fields and page. */
export function stateOf(held: Held): PageState {
  const all = Object.entries(held);
  return {
    draft: Object.fromEntries(all.filter(([key]) => !PAGE_KEY.test(key))),
    page: Object.fromEntries(all.filter(([key]) => PAGE_KEY.test(key))),
  };
}
