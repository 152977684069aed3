/** A place on cloth in mm: along it from its cut end, across it from the selvedge or the fold. */
export type ClothPlace = readonly [along: number, across: number];

/** A piece as it lies. */
export interface LayJobPiece {
  outline: readonly ClothPlace[];
  /** What it is called on the drawing. */
  label: string;
  /** The same with its name, and where it lies, in words. */
  heading: string;
  places: readonly string[];
}

/** A lay for paper, at reduced scale. Lengths in mm. */
export interface LayJob {
  title: string;
  /** What stands under it: the cloth, and what it takes. */
  under: readonly string[];
  width: number;
  length: number;
  folded: boolean;
  flaws: readonly (readonly ClothPlace[])[];
  pieces: readonly LayJobPiece[];
  /** How far apart marks along the edges may stand: the first that leaves room is taken. */
  steps: readonly number[];
}

/** What is written on the pages. */
export interface LayPaperWords {
  /** @param times smaller than it is */
  scale(times: number): string;
  /** Over the drawing: how wide it is, and which edges these are. */
  edges(width: number, folded: boolean): string;
  /** A length in mm, as it is marked along an edge. */
  mark(at: number): string;
  long(length: number): string;
  /** Under the list, where some pieces are too small for their number. */
  unnumbered: string;
  pageOf(page: number, pages: number): string;
}
