/**
 * Puts the style of a part fetched later on the page, once, with the part itself:
 * no second request, and nothing seen before it is styled. The content policy
 * allows no style elements; a constructed sheet needs none.
 */
export function adopt(css: string): void {
  if (!('adoptedStyleSheets' in document)) return;
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(css);
  document.adoptedStyleSheets.push(sheet);
}
