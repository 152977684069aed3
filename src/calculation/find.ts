/** What may be looked for: by its name, or by plain words for what it is for. */
export interface Sought {
  name: string;
  also: string;
}

/** Words this short only match as they begin: a longer one may be a word with an ending. */
const WITH_ENDING = 4;

/** A text without what is easily left out when it is typed: capitals, accents, spaces around it. */
export function plain(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().trim();
}

/**
 * Those of a list that most of the words typed fit, names before what they are for, else as they
 * stand. All of them where nothing is asked, none where no word fits. `passed` are words of a question that name nothing.
 */
export function found<It extends Sought>(
  typed: string,
  list: readonly It[],
  passed: string,
): readonly It[] {
  const without = new Set(wordsOf(passed));
  const asked = wordsOf(typed).filter((word) => !without.has(word));
  if (asked.length === 0) return list;
  const weighed = list.map((it) => ({ it, ...weigh(asked, it) }));
  const most = Math.max(...weighed.map(({ fit }) => fit));
  return weighed
    .filter(({ fit }) => fit > 0 && fit === most)
    .sort((one, other) => other.named - one.named)
    .map(({ it }) => it);
}

/** How many of the words fit it in all, and how many its name. */
function weigh(asked: readonly string[], { name, also }: Sought): { fit: number; named: number } {
  const inName = wordsOf(name);
  const all = [...inName, ...wordsOf(also)];
  return {
    fit: asked.filter((word) => all.some((other) => fits(word, other))).length,
    named: asked.filter((word) => inName.some((other) => fits(word, other))).length,
  };
}

/** Whether one begins with the other: “frills” is looked for by “frill”, “punching” finds “punch”. */
function fits(typed: string, word: string): boolean {
  return word.startsWith(typed) || (word.length >= WITH_ENDING && typed.startsWith(word));
}

function wordsOf(text: string): readonly string[] {
  return plain(text).match(/[\p{L}\p{N}]+/gu) ?? [];
}
