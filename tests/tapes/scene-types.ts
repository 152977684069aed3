export type Unit = 'cm' | 'mm' | 'inch';

/** What a reader should make of a scene: read it, not read it, or at the least never be wrong. */
export type Expect = 'read' | 'ask-or-cannot' | 'any';

/** A scale as it was printed, with where it is in the picture. */
export interface TrueScale {
  readonly id: string;
  readonly unit: Unit;
  /** Graduations in one unit. */
  readonly subdivisions: number;
  /** Units from number to number. */
  readonly numberEvery: number;
  /** In the picture, in the middle of the row of graduations; mm from the scale's zero. */
  pointAt(mmFromZero: number): { x: number; y: number };
  readonly visibleFromMm: number;
  readonly visibleToMm: number;
}

/** A place in the picture, and what the scale says there. */
export interface TruePoint {
  readonly x: number;
  readonly y: number;
  /** From that scale's zero, along the scale. */
  readonly mm: number;
  /** The id of the scale. */
  readonly scale: string;
  /** False beyond the printed ends and beside the tape: no reading there is right. */
  readonly onScale: boolean;
}

/** A place on a tape or on the ground close by, square beside the lines of its scales. */
export interface BesidePlace {
  readonly x: number;
  readonly y: number;
  /** What each of the tape's scales says there, in mm from its zero. */
  readonly says: readonly number[];
}
