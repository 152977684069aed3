import { typedOn } from '../../../garment/actions/typed-parts.ts';
import { letterOf, placeOfLetter } from '../../../lengths/taken.ts';

/** What a link is called where it is shown. */
export interface LinkName {
  name: string;
  number: string;
}

/** A piece of a field: typed text, or a link. */
export type Piece = { text: string } | { link: LinkName };

/** Round what stands for a link in a text field, where there are letters only. */
const [OPEN, CLOSE] = ['‹', '›'];

/** The pieces of a text with letters. */
export function piecesOf(text: string, names: readonly LinkName[]): Piece[] {
  return text.split(/([\ue000-\uf8ff])/u).flatMap((piece, i): Piece[] => {
    if (i % 2 === 0) return piece === '' ? [] : [{ text: piece }];
    const link = names[placeOfLetter(piece)];
    return link ? [{ link }] : [];
  });
}

/** A text with letters as a text field holds it, for a keyboard and a screen reader. */
export function fieldTextOf(text: string, names: readonly LinkName[]): string {
  return piecesOf(text, names)
    .map((piece) => ('text' in piece ? piece.text : token(piece.link)))
    .join('');
}

/** What was typed there with its letters again; a link that was broken into is gone as a whole. */
export function fromField(before: string, typed: string, names: readonly LinkName[]): string {
  const whole = names.reduce((text, name, i) => text.replace(token(name), letterOf(i)), typed);
  return typedOn(before, whole.replace(/‹[^›+−×÷]*›?|[^‹]*›/gu, ''));
}

function token({ name, number }: LinkName): string {
  return `${OPEN}${`${name} ${number}`.replace(/[‹›]/g, '')}${CLOSE}`;
}

/** In the place of a link that stands last, for the keys of the pad: a number they can replace and not reckon with. */
const STAND = ',,';

/** Whether something taken stands last. */
export function endsInLink(text: string): boolean {
  return /[\ue000-\uf8ff]$/u.test(text.trimEnd());
}

/** A text as the pad edits it. */
export function forPad(text: string): string {
  return endsInLink(text) ? text.trimEnd().slice(0, -1) + STAND : text;
}

/** What a key made of it: erase takes a link whole, a digit replaces it, a sign goes on. */
export function fromPad(before: string, after: string): string {
  if (!endsInLink(before)) return after;
  const base = before.trimEnd();
  const head = base.slice(0, -1);
  if (after === (head + STAND).slice(0, -1)) return head;
  return typedOn(before, after.replace(STAND, base.slice(-1)));
}
