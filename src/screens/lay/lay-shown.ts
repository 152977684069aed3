/** A place in mm: along the cloth from its cut end, across it from the selvedge or the fold. */
export type Place = readonly [along: number, across: number];

/** A piece as it lies. */
export interface PieceShown {
  key: string;
  name: string;
  outline: readonly Place[];
  /** End for end. */
  turned: boolean;
  /** By so many degrees off the grain; above 0 its far end lies towards the right edge. */
  tilt: number;
  /** The other of a pair: face down. */
  mirrored: boolean;
  onFold: boolean;
  /** It is cut there, or the maker put it there. */
  stays?: 'cut' | 'put' | undefined;
}

/** A lay to look at, in mm; its pieces in the order in which they are laid out. */
export interface LayShown {
  width: number;
  length: number;
  folded: boolean;
  /** Places no piece lies on. */
  flaws: readonly (readonly Place[])[];
  pieces: readonly PieceShown[];
}

export interface Extent {
  along: readonly [from: number, to: number];
  across: readonly [from: number, to: number];
}

/** How far a piece goes along the cloth and across it. */
export function extentOf({ outline }: Pick<PieceShown, 'outline'>): Extent {
  const range = (which: 0 | 1) => {
    const all = outline.map((place) => place[which]);
    return [Math.min(...all), Math.max(...all)] as const;
  };
  return { along: range(0), across: range(1) };
}

/** By how much a piece may be moved so that it stays on the cloth, and on the fold where it is on it. */
export function movedOnCloth(
  piece: PieceShown,
  { width }: Pick<LayShown, 'width'>,
  [along, across]: Place,
): Place {
  const box = extentOf(piece);
  const [least, most] = [-box.across[0], width - box.across[1]];
  const aside = piece.onFold ? 0 : Math.max(least, Math.min(most, across));
  return [Math.max(-box.along[0], along), aside];
}
