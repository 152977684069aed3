import type { Page, PageState } from '../calculation/page.ts';
import { typingOf } from './in-the-way.ts';
import { typedIn } from './kept.ts';

/** What a page keeps once it is kept: what is typed and measured now is what it was opened with. */
export function asKept(state: PageState): Page {
  const measured = Object.entries(state.page).flatMap(([key, text]) =>
    /^made(-\d+)?$/.test(key) ? [[key.replace('made', 'was'), text]] : [],
  );
  const seen = typingOf(typedIn(state));
  return { ...state.page, ...Object.fromEntries(measured), seen };
}
