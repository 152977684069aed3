import type { PhotoFault } from '../../camera/photo.ts';
import type { TapeFault } from '../../camera/tape-fault.ts';
import { useNewer } from '../../controls/newer-part.tsx';

/** What may be missing because the app's host has a newer build. */
const FETCHED: readonly unknown[] = ['unfetched', 'engine-missing', 'reader-failed'];

/** What to say in place of a fault whose cause is that the app's host has a newer build. */
export function useNewerPhoto(
  fault: PhotoFault | TapeFault | 'not-shared' | undefined,
): string | undefined {
  return useNewer('photo', FETCHED.includes(fault));
}
