import type { Page } from 'playwright-core';

/**
 * Hears what a screen reader would say by itself: every change of a live region that was
 * there before the change. A region that comes together with its words is not read out.
 *
 * @returns what was said so far, each time it is asked
 */
export async function listen(page: Page): Promise<() => Promise<string[]>> {
  const heard = await page.evaluateHandle(() => {
    const live = '[aria-live]:not([aria-live=off]), [role=status], [role=alert], output';
    const known = new Set<Element>(document.querySelectorAll(live));
    const said: string[] = [];
    new MutationObserver((changes) => {
      const regions = new Set(
        changes.flatMap(({ target }) => {
          const from = target instanceof Element ? target : target.parentElement;
          return from?.closest(live) ?? [];
        }),
      );
      for (const region of regions) {
        if (known.has(region) && region.isConnected) said.push(region.textContent ?? '');
      }
      for (const region of document.querySelectorAll(live)) {
        // An alert is the one kind that is read out as it comes.
        if (!known.has(region) && region.role === 'alert') said.push(region.textContent ?? '');
        known.add(region);
      }
    }).observe(document, { childList: true, characterData: true, subtree: true });
    return said;
  });
  return () => heard.jsonValue();
}
