import type { PaperPage } from './paper-job.ts';

/** What the page asks of the worker that writes PDFs; it is asked once, and let go. */
export interface ToPaperWorker {
  title: string;
  pages: readonly PaperPage[];
}

/** What it says in return. */
export type FromPaperWorker =
  | { kind: 'progress'; done: number }
  | { kind: 'done'; bytes: Uint8Array<ArrayBuffer> }
  | { kind: 'failed'; why: string };
