/** Lettering of a height of capitals is this much larger as a type size: capitals are 0.718 of it, taken as 0.72. */
export const TYPE_SIZE = 1 / 0.72;

/**
 * How wide the letters are that the pages have, in thousandths of the type size: of each the wider of
 * plain and bold, so that a text never takes more than it is reckoned with.
 *
 * Source: Adobe, Core 14 AFM files, Helvetica and Helvetica-Bold.
 */
const WIDTHS: readonly (readonly [number, string])[] = [
  [238, "'"],
  [278, ' ,./I\\ijl\u00a0·ÌÍÎÏìíîï‘’‚'],
  [280, '|¦'],
  [333, '!()-:;[]`ft¡¨\u00ad¯²³´¸¹ˆ˜‹›'],
  [350, '•'],
  [365, 'º'],
  [370, 'ª'],
  [389, '*r{}'],
  [400, '°'],
  [474, '"'],
  [500, 'zž“”„'],
  [556, '#$0123456789J_aceksvxy¢£¤¥§«¶»àáâãäåçèéêëýÿšŸƒ–†‡€'],
  [584, '+<=>^~¬±×÷'],
  [611, '?FLTZbdghnopquµ¿ßðñòóôõöøùúûüþŽ'],
  [667, 'EPSVXYÈÉÊËÝÞŠ'],
  [722, '&ABCDHKNRUÀÁÂÃÄÅÇÐÑÙÚÛÜ'],
  [737, '©®'],
  [778, 'GOQwÒÓÔÕÖØ'],
  [833, 'M'],
  [834, '¼½¾'],
  [889, '%mæ'],
  [944, 'Wœ'],
  [1000, 'ÆŒ—…‰™'],
  [1015, '@'],
];
/** As wide as the widest, for what the pages have no letter for. */
const WIDEST = 1015;

const WIDE = new Map(WIDTHS.flatMap(([wide, letters]) => [...letters].map((one) => [one, wide])));

/** How wide a text is at the most. @param size the height of its capitals, in mm */
export function textWidth(text: string, size: number): number {
  let thousandths = 0;
  for (const letter of text) thousandths += WIDE.get(letter) ?? WIDEST;
  return (thousandths / 1000) * size * TYPE_SIZE;
}

/** A type size in points as the height of its capitals in mm. */
export function points(size: number): number {
  return (size * 25.4) / 72 / TYPE_SIZE;
}

/** A text in lines no wider than this; a word that is wider than all of it is broken. @param wide in mm */
export function inLines(text: string, size: number, wide: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/u).filter((one) => one !== '')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (textWidth(longer, size) <= wide) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = '';
    for (const letter of word) {
      if (line !== '' && textWidth(line + letter, size) > wide) {
        lines.push(line);
        line = '';
      }
      line += letter;
    }
  }
  return line === '' ? lines : [...lines, line];
}
