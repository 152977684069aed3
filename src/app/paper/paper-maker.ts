import type { PaperPage } from '../../drawing/paper-job.ts';
import type { FromPaperWorker, ToPaperWorker } from '../../drawing/paper-protocol.ts';

/** A phone that needs longer for a file has stopped working on it. */
const LONGEST_MS = 60_000;

export interface MakeOptions {
  signal: AbortSignal;
  onProgress: (done: number) => void;
}

/**
 * Writes pages into a PDF file, in a worker of its own that is let go afterwards.
 * Rejects when the worker can't be started, fails or does not answer, and when it is called off.
 */
export function makePdf(
  title: string,
  pages: readonly PaperPage[],
  options: MakeOptions,
  startWorker = () =>
    new Worker(new URL('../../workers/paper.ts', import.meta.url), {
      type: 'module',
      name: 'paper',
    }),
): Promise<Blob> {
  const { signal, onProgress } = options;
  return new Promise<Blob>((done, failed) => {
    signal.throwIfAborted();
    const worker = startWorker();
    const limit = setTimeout(() => fail(new Error('the PDF was not finished in time')), LONGEST_MS);
    const settle = () => {
      clearTimeout(limit);
      signal.removeEventListener('abort', stop);
      worker.terminate();
    };
    const fail = (why: unknown) => {
      settle();
      failed(why);
    };
    const stop = () => fail(signal.reason);
    signal.addEventListener('abort', stop);
    worker.addEventListener('error', (event) => fail(new Error(event.message || 'no worker')));
    worker.addEventListener('messageerror', () => fail(new Error('an answer was unreadable')));
    worker.addEventListener('message', ({ data }: MessageEvent<FromPaperWorker>) => {
      if (data.kind === 'progress') onProgress(data.done);
      else if (data.kind === 'failed') fail(new Error(data.why));
      else {
        settle();
        done(new Blob([data.bytes], { type: 'application/pdf' }));
      }
    });
    const job: ToPaperWorker = { title, pages };
    worker.postMessage(job);
  });
}
