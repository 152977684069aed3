import type { Garment, Kept } from '../../garment/garment.ts';

/** What can be done with garments. */
export interface GarmentDeeds {
  make(name: string): void;
  demo(): void;
  /** Opens the garment with an id and closes the one that was open; undefined closes it. */
  open(id: string | undefined): void;
  rename(garment: Garment, name: string): void;
  copy(garment: Garment): void;
  remove(garment: Garment): void;
  bringBack(garment: Pick<Garment, 'id'>): void;
  openKept(garment: Garment, kept: Kept): void;
  /** Follows the marks of all that is kept, or of one of it. */
  follow(garment: Garment, only?: Kept): void;
  takeOff(garment: Garment, kept: Kept): void;
  putBack(garment: Garment, kept: Kept): void;
  backup(): void;
  putOffBackup(): void;
  restore(file: File): void;
  saveSetAside(): void;
  /** What the browser has cleared, and is still in memory: to a file, or back into the store. */
  saveCleared(): void;
  putBackCleared(): void;
  leave(): void;
}
