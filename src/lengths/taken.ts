import type { ExactLength } from './length.ts';
import type { Rational } from './rational.ts';

/** A number taken from elsewhere: a length in 1/8000 mm, or a plain number, read as if it were typed. */
export interface TakenNumber {
  readonly value: Rational;
  readonly isLength: boolean;
}

/** What is taken where a letter stands; undefined of any other text. */
export type Taken = (letter: string) => TakenNumber | undefined;

/** The first letter that may stand in a text for a number taken there: Unicode leaves them for private use. */
const FIRST_LETTER = 0xe000;

/** The letter that stands for the number taken at a place of a list, from 0. */
export function letterOf(place: number): string {
  return String.fromCharCode(FIRST_LETTER + place);
}

/** Where in the list the number of a letter is; of other text, beyond any list. */
export function placeOfLetter(text: string): number {
  return text.charCodeAt(0) - FIRST_LETTER;
}

/** Numbers by their letters, in the order of a list. */
export function takenFrom(all: readonly TakenNumber[]): Taken {
  return (letter) => all[placeOfLetter(letter)];
}

/** A text without letters that would stand for something taken. */
export function withoutLetters(text: string): string {
  return text.replace(/[\ue000-\uf8ff]/g, '\ufffd');
}

/** A length taken as it is, with whatever fraction of a unit it has. */
export function takenLength(units: ExactLength): TakenNumber {
  return { value: rationalOf(units), isLength: true };
}

/** A count, or another plain number, taken as it is. Where a length is read it has the unit of bare ones. */
export function takenNumber(value: number): TakenNumber {
  return { value: rationalOf(value), isLength: false };
}

/** A finite number exactly: every one of them is a whole number over a power of two. */
function rationalOf(value: number): Rational {
  let [over, under] = [value, 1n];
  while (!Number.isInteger(over)) {
    over *= 2;
    under *= 2n;
  }
  return { over: BigInt(over), under };
}
