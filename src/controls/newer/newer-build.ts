import { newerWords } from '#words/phone/newer-words.ts';

/*
 * Fetched ahead of need, by what watches over the app's being on the phone
 * (src/app/offline/watch.ts).
 */

/**
 * What to say of a screen, or of something to be done, where a part of the app is gone from its
 * host because a newer build is there. Undefined when the host has this
 * build, can't be asked, or something else answers for it.
 */
export async function newerOnHost(
  what: keyof typeof newerWords = 'screen',
): Promise<string | undefined> {
  // With a query, or the service worker would answer with the page it has stored.
  const page = await fetch('./?now', { cache: 'no-store' }).catch(() => undefined);
  const theirs = /src="([^"]+\/base-[^"]+)"/.exec((await page?.text()) ?? '')?.[1];
  const same = !theirs || document.querySelector(`script[src="${theirs}"]`);
  return same ? undefined : newerWords[what];
}
