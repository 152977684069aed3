import type { Calculation, Draft } from './calculation.ts';
import type { PageKey, PlainKey } from './page-keys.ts';

/*
 * An address, and what is kept, hold beside the fields what a page needs: the unit its numbers were
 * typed in, where it is kept and what it was there when it was opened, which marks are made and
 * which one is followed, the choices of paper and glass. Where it is read the two are parted, and
 * a calculation is given the fields alone.
 */

/** What a page keeps for itself, as an address holds it. */
export type Page = { readonly [Key in PageKey]?: string };

/** A calculation's page: what is typed in its fields, and what the page keeps for itself. */
export interface PageState {
  draft: Draft;
  page: Page;
}

/** Fields and page together, as an address or a record holds them: what no calculation takes. */
export type Held = Readonly<Record<string, string>> & { readonly [Key in PlainKey]?: string };

/** A calculation as its page opens it. */
export interface Paged extends Calculation {
  /** Parts what was held into its fields and what is the page's own. */
  part(held: Held): PageState;
}

/** Fields and page together again. */
export function heldOf({ draft, page }: PageState): Held {
  return { ...draft, ...page };
}
