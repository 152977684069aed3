import type { Page } from 'playwright-core';

/** What a page shows that is in English, or that doesn't fit, each said by where it is. */
export async function misfits(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    // Units and letters that name a mark are no words.
    const plain = /(?<![\p{L}])(in|yd|[A-Z])(?![\p{L}])/gu;
    // A day is written as the phone writes it, whatever the app speaks.
    const today = new Date().toLocaleDateString(undefined, { dateStyle: 'long' });
    const english = (text: string) =>
      /[aeiou]/i.test(text.replaceAll(today, '').replace(plain, ''));
    const seen = (one: Element) =>
      one.checkVisibility({ checkOpacity: true, checkVisibilityCSS: true });
    const found = new Set<string>();
    const all = [...document.querySelectorAll('*')];
    for (const one of all) {
      for (const name of ['aria-label', 'title', 'placeholder', 'alt', 'aria-description']) {
        const said = one.getAttribute(name);
        if (said && english(said)) found.add(`in English: ${one.tagName} ${name}: ${said}`);
      }
      const own = [...one.childNodes].filter((node) => node.nodeType === Node.TEXT_NODE);
      const text = own
        .map((node) => node.textContent)
        .join('')
        .trim();
      if (text === '' || /^(SCRIPT|STYLE)$/.test(one.tagName)) continue;
      if (english(text)) {
        found.add(`in English: ${one.tagName}.${one.getAttribute('class')}: ${text}`);
      }
      if (!(one instanceof HTMLElement) || !seen(one) || one.closest('.unseen')) continue;
      const range = document.createRange();
      range.setStartBefore(own[0]!);
      range.setEndAfter(own[own.length - 1]!);
      if (one.querySelector('.unseen')) range.setEndAfter(own[0]!);
      const words = range.getBoundingClientRect();
      if (words.width === 0) continue;
      for (let box: HTMLElement | null = one; box; box = box.parentElement) {
        const { overflowX, overflowY, display, textOverflow } = getComputedStyle(box);
        // What can be scrolled is not cut off.
        if (/auto|scroll/.test(overflowX + overflowY) && box !== document.body) break;
        // What ends in dots is shortened on purpose: the name of a mark's kind, never its number.
        if (textOverflow === 'ellipsis') break;
        if (display === 'inline' || display === 'contents') continue;
        const clips = overflowX !== 'visible' || /^(BUTTON|A|LABEL)$/.test(box.tagName);
        const edge = box.getBoundingClientRect();
        if (clips && (words.right > edge.right + 1 || words.left < edge.left - 1)) {
          found.add(`cut off by ${box.tagName}.${box.className}: ${text}`);
        }
        if (clips && (words.bottom > edge.bottom + 2 || words.top < edge.top - 2)) {
          found.add(`cut off above or below by ${box.tagName}.${box.className}: ${text}`);
        }
        if (
          box.parentElement === document.body &&
          (words.right > innerWidth + 1 || words.left < -1)
        ) {
          found.add(`outside of the page: ${text}`);
        }
      }
    }
    const over = document.documentElement.scrollWidth - innerWidth;
    if (over > 0) found.add(`the page is ${over} px too wide`);
    if (english(document.title)) found.add(`in English: the title: ${document.title}`);
    return [...found];
  });
}
