import type { Lettering } from './pen.ts';

const plain = {
  flagged: true,
  openFour: false,
  serifs: false,
  straightSides: false,
  roundEnds: true,
  slant: 0,
  stretch: 1,
  space: 0.14,
};

/** Ways of lettering seen on tapes and rules, each of our own drawing. */
export const letterings: readonly Lettering[] = [
  { ...plain, name: 'light', stem: 0.09, bar: 0.09 },
  { ...plain, name: 'light, bare 1', stem: 0.1, bar: 0.1, flagged: false, space: 0.2 },
  { ...plain, name: 'bold', stem: 0.19, bar: 0.17, roundEnds: false, stretch: 0.95 },
  { ...plain, name: 'bold, bare 1', stem: 0.18, bar: 0.16, flagged: false, roundEnds: false },
  { ...plain, name: 'condensed', stem: 0.13, bar: 0.11, stretch: 0.68, straightSides: true },
  { ...plain, name: 'engraved', stem: 0.12, bar: 0.12, straightSides: true, openFour: true },
  { ...plain, name: 'serif', stem: 0.16, bar: 0.07, serifs: true, roundEnds: false },
  { ...plain, name: 'leaning', stem: 0.12, bar: 0.11, slant: 0.18, roundEnds: false },
];
