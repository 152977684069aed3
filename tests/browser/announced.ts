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

/** Roles of what can be operated (WAI-ARIA 1.2, section 5.3.2, and the strip of tape). */
const OPERATED =
  /^(button|link|textbox|searchbox|combobox|listbox|option|radio|checkbox|switch|slider|spinbutton|menuitem|tab|application)$/i;

/** What the browser hands to a screen reader: each control's role and name. */
async function controls(page: Page): Promise<{ role: string; name: string }[]> {
  const session = await page.context().newCDPSession(page);
  const { nodes } = await session.send('Accessibility.getFullAXTree');
  await session.detach();
  return nodes
    .filter((node) => !node.ignored && OPERATED.test(String(node.role?.value)))
    .map(({ role, name }) => ({ role: String(role?.value), name: String(name?.value ?? '') }));
}

/** The longest that is waited for it where there is nothing. */
const TREE_MS = 10_000;

/** The roles of what can be operated on the page and has no name; it has something, or that is one fault. */
export async function nameless(page: Page): Promise<string[]> {
  let all = await controls(page);
  // What a screen reader is handed is made after the page, and anew after a change of its size.
  for (const late = Date.now() + TREE_MS; all.length === 0 && Date.now() < late; ) {
    await page.evaluate(() => new Promise((painted) => requestAnimationFrame(painted)));
    all = await controls(page);
  }
  if (all.length === 0) return ['nothing can be operated'];
  return all.filter(({ name }) => name.trim() === '').map(({ role }) => role);
}
