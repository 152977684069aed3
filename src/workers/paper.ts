import type { FromPaperWorker, ToPaperWorker } from '../drawing/paper-protocol.ts';
import { pdfOf } from './pdf.ts';

declare const self: DedicatedWorkerGlobalScope;

const say = (message: FromPaperWorker) => self.postMessage(message);

self.addEventListener('message', ({ data }: MessageEvent<ToPaperWorker>) => {
  pdfOf(data.title, data.pages, (done) => say({ kind: 'progress', done })).then(
    (bytes) => say({ kind: 'done', bytes }),
    (error: unknown) => say({ kind: 'failed', why: String(error) }),
  );
});
