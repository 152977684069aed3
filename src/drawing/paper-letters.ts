/** What the font of the pages has no shape for: it knows the letters of western Europe. */
const LACKING = /[^ -~\u00a0-\u00ff€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ]/gu;

/** The letters of a text that the pages can't show, each once. */
export function lettersLacking(text: string): string {
  return [...new Set(text.normalize('NFC').match(LACKING))].join('');
}

/** The text as the pages show it: of a letter they can't show it keeps the place. */
export function asPrinted(text: string): string {
  return text.normalize('NFC').replace(LACKING, '?');
}
