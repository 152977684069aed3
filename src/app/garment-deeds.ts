import { type Garment, type Kept, newGarment } from '../garment/garment.ts';
import { GarmentError } from '../storage/garments.ts';
import { StoreError } from '../storage/store.ts';
import { garmentWords as words } from '../words/garment-words.ts';

/** Why something was not kept, as a sentence with the mend. */
export function notKept(error: unknown): string {
  if (error instanceof GarmentError || error instanceof StoreError)
    return words.failed[error.fault];
  throw error;
}

/** A garment made now. */
export function makeGarment(name: string): Garment {
  return newGarment(crypto.randomUUID(), name, Date.now());
}

/** The address of something kept: its calculation, as typed, and where it is kept. */
export function addressOf(garment: Garment, kept: Kept, mode: string) {
  return {
    screen: kept.calculation,
    mode,
    draft: { ...kept.draft, kept: `${garment.id}.${kept.id}` },
  };
}

/** Asks once that the browser doesn't clear what is kept when space runs out. */
export function askToPersist(): void {
  void navigator.storage?.persist?.().catch(() => false);
}

/** Hands a text to the phone as a file. */
export function saveFile(name: string, text: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
