import type { newerWords } from '#words/phone/newer-words.ts';

/**
 * What to say where something could not be fetched because the app's host has a newer build;
 * undefined where that is not the cause, or can't be known. Never rejects.
 *
 * @param missing what it is to the maker
 */
export function askNewer(missing: keyof typeof newerWords): Promise<string | undefined> {
  return import('./newer-build.ts')
    .then(({ newerOnHost }) => newerOnHost(missing))
    .catch(() => undefined);
}
