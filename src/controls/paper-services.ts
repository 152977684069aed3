import type { PaperPage } from '../drawing/paper-job.ts';

/** What putting on paper asks of the app. */
export interface PaperServices {
  makePdf(
    title: string,
    pages: readonly PaperPage[],
    options: { signal: AbortSignal; onProgress: (done: number) => void },
  ): Promise<Blob>;
  save(name: string, file: Blob): Promise<void>;
  /** Hands a file to another app of the phone, or saves it where that is refused; undefined where it can't be done. */
  share: ((name: string, file: Blob) => Promise<unknown>) | undefined;
}
