import { sharedFile } from '../offline/shared-file.ts';
import { takeOver } from './hand-over.ts';

/** What a browser hands to an installed app whose file was touched (Web App Launch Handler API). */
interface LaunchQueue {
  setConsumer(take: (launch: { files?: readonly { getFile(): Promise<File> }[] }) => void): void;
}

/** A file that was touched is there at once, or none was. */
const SOON_MS = 500;

/** The file that was chosen on the first screen, that the app was opened with, or that another app has shared; undefined where there is none. */
export async function handedFile(): Promise<File | undefined> {
  const here = takeOver() ?? (await touchedFile());
  if (here) return here;
  const shared = await sharedFile();
  if (!shared) return undefined;
  return shared instanceof File ? shared : new File([shared], 'garment.json');
}

function touchedFile(): Promise<File | undefined> {
  const { launchQueue } = globalThis as { launchQueue?: LaunchQueue };
  if (!launchQueue) return Promise.resolve(undefined);
  return new Promise((taken) => {
    setTimeout(() => taken(undefined), SOON_MS);
    launchQueue.setConsumer(({ files = [] }) => {
      const [first] = files;
      taken(first?.getFile().catch(() => undefined));
    });
  });
}
