import { vi } from 'vitest';

/** The page of a newer build than this page is of. */
export const NEWER_PAGE =
  '<script type="module" crossorigin src="./assets/base-second.js"></script>';

/** The host answers with the page of a build, and this page is of the build `first`. */
export function hostHas(page: string | Error) {
  document.head.innerHTML = '<script type="module/x" src="./assets/base-first.js"></script>';
  const ask = async () => {
    if (page instanceof Error) throw page;
    return new Response(page);
  };
  vi.stubGlobal('fetch', vi.fn(ask));
}
