import type { garmentListWords } from '#words/garment/garment-list-words.ts';
import type { Listed } from '../../garment/record/listed.ts';

/** Which invented garment is to be shown. */
export type InventedGarment = keyof typeof garmentListWords.demo;

/** What can be done with garments. */
export interface GarmentDeeds {
  make(name: string): void;
  /** Shows an invented garment. */
  demo(which: InventedGarment): void;
  /** Opens a garment on a page of its own. */
  open(id: string): void;
  rename(garment: Listed, name: string): void;
  /** Begins another one with its plans and links; what is made stays behind. */
  copy(garment: Listed): void;
  putAway(garment: Listed): void;
  bringBack(garment: Listed): void;
  /** Hands it on to someone. */
  share(garment: Listed): void;
  /** All of them in one file: saved, or handed to another app of the phone. */
  backup(way: 'save' | 'share'): void;
  putOffBackup(): void;
  restore(file: File): void;
  saveSetAside(): void;
  /** What the browser has cleared, and is still in memory: to a file, or back into the store. */
  saveCleared(): void;
  putBackCleared(): void;
  leave(): void;
}
