import type { ReadFault } from '../../../lengths/read-fault.ts';

/** Says what was not understood in a field, where, and what to write instead. */
export function readWords(
  field: string,
  { kind, at, text, below = -1 }: ReadFault,
  mark: '.' | ',' = '.',
): string {
  const piece = `“${text}”${at > 0 ? ` at character ${at + 1}` : ''}`;
  switch (kind) {
    case 'empty':
      return `${field}: give a number.`;
    case 'unfinished':
      return `${field}: something is still missing at ${piece}.`;
    case 'not-understood':
      return `${field}: ${piece} was not understood. Write it like 12${mark}5, 1 5/8 in or 3 cm + 4 mm.`;
    case 'two-decimal-marks':
      return `${field}: ${piece} has two decimal marks. Use one, and don’t group thousands.`;
    case 'thousands-unclear':
      return `${field}: is ${piece} thousands or decimals? Write ${asThousands(text)}, or ${asDecimals(text)}.`;
    case 'fraction-of-decimals':
      return `${field}: ${piece} mixes a decimal and a stroke. Write 3/4 or 0${mark}75, or divide with ÷.`;
    case 'fraction-of-other':
      return `${field}: the stroke in ${piece} makes fractions of whole numbers only. Divide with ÷.`;
    case 'zero-denominator':
      return `${field}: the fraction ${piece} has nothing below the stroke. Write 2, 4, 8 or 16 there.`;
    case 'divide-by-zero':
      return `${field}: ${piece} can’t be divided by nothing. Give how many parts.`;
    case 'improper-mixed':
      return `${field}: in ${piece} the fraction is a whole or more. Write it as one number.`;
    case 'hyphen-unclear':
      return `${field}: is ${piece} joined or taken away? Leave a space on both sides to take away, none to join.`;
    case 'length-times-length':
      return `${field}: ${piece} is a length times a length. Take the unit off one of them.`;
    case 'divide-by-length':
      return `${field}: ${piece} divides by a length: of a length that gives how many, for a field that asks for a number. Divide by a plain number.`;
    case 'length-for-number':
      return `${field}: ${piece} is a length. Give a plain number, or divide it by a length.`;
    case 'too-long':
      return `${field}: ${piece} is over a kilometre. Check the number and its unit.`;
    case 'too-large':
      return `${field}: ${piece} is too large a number. Check it.`;
    case 'not-whole':
      return below < 0
        ? `${field}: ${piece} is not a whole number. Give how many.`
        : `${field}: ${piece} is not a whole number. Give ${below} or ${below + 1}.`;
    case 'too-much-text':
      return `${field}: that is more text than one length needs. Keep only the number.`;
    default:
      return unworded(kind);
  }
}

/** A number in which a mark may group thousands, with them joined. */
export function asThousands(text: string): string {
  return text.replace(/[.,]/, '');
}

/** The same as decimals that can't be taken for thousands. */
export function asDecimals(text: string): string {
  return text.replace(/[.,]?0+$/, '');
}

/** Fails to compile when a kind of fault has no words yet. */
function unworded(kind: never): never {
  throw new Error(`no words for ${JSON.stringify(kind)}`);
}
