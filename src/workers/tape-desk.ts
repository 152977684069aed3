import type { PageSymbol, ReadPage } from '../tape/characters/read-page.ts';
import type { GreyImage } from '../tape/picture/grey-image.ts';
import type { Point } from '../tape/picture/place.ts';
import type {
  FromTapeWorker,
  TapeAnswers,
  TapeJob,
  ToTapeWorker,
  TouchedScale,
} from '../tape/protocol.ts';
import type { TapeReading } from '../tape/scales/tape-reading.ts';
import type { Placed } from '../tape/touch/finger.ts';
import type { Touch } from '../tape/touch/touch.ts';

/** The reader, as the worker uses it; a test may put another in its place. */
export interface TapeReader<Lock extends { readonly reading: TapeReading }> {
  readTape(
    image: GreyImage,
    readPage: ReadPage,
    onProgress?: (done: number) => void,
    at?: Point,
  ): Promise<TapeReading>;
  lockOn(reading: TapeReading, image: GreyImage): Lock | undefined;
  follow(lock: Lock, image: GreyImage): Lock | undefined;
  snapTo(image: GreyImage, at: Point): Placed;
  scaleByTouch(image: GreyImage, touches: readonly Touch[]): TouchedScale;
  /** A page as a picture file the engine can open. */
  pgmOf(page: GreyImage): Uint8Array;
}

/**
 * Where the worker's messages are dealt with: jobs in, answers out. Pages of numbers go out to
 * the engine, which lives on the page's side, and what it saw comes back in between.
 */
export function createDesk<Lock extends { readonly reading: TapeReading }>(
  reader: TapeReader<Lock>,
  post: (message: FromTapeWorker) => void,
) {
  const pages = new Map<number, (symbols: readonly PageSymbol[] | undefined) => void>();
  let lastPage = 0;
  let held: GreyImage | undefined;
  let lock: Lock | undefined;

  const readPage: ReadPage = async (page) => {
    lastPage += 1;
    const number = lastPage;
    const seen = await new Promise<readonly PageSymbol[] | undefined>((look) => {
      pages.set(number, look);
      post({ kind: 'page', page: number, bytes: reader.pgmOf(page) });
    });
    if (!seen) throw new Error('the engine could not look at a page');
    return seen;
  };

  async function frame(image: GreyImage): Promise<TapeAnswers['frame']> {
    if (lock) {
      lock = reader.follow(lock, image);
      // Reading takes a while: that the tape is lost is told before, and the next frame is read.
      return lock ? { held: true, reading: lock.reading } : { held: false, asks: false };
    }
    const reading = await reader.readTape(image, readPage);
    lock = reading.outcome === 'read' ? reader.lockOn(reading, image) : undefined;
    return lock
      ? { held: true, reading: lock.reading }
      : { held: false, asks: reading.outcome === 'ask' };
  }

  function photo(): GreyImage {
    if (!held) throw new Error('no photo is at hand');
    return held;
  }

  function work(
    id: number,
    job: TapeJob,
  ): Promise<TapeAnswers[TapeJob['kind']]> | TapeAnswers[TapeJob['kind']] {
    switch (job.kind) {
      case 'read':
        held = job.image;
        return reader.readTape(
          job.image,
          readPage,
          (done) => post({ kind: 'progress', id, done }),
          job.at,
        );
      case 'hold':
        held = job.image;
        return undefined;
      case 'frame':
        return frame(job.image);
      case 'snap':
        return reader.snapTo(photo(), job.at);
      case 'touch':
        return reader.scaleByTouch(photo(), job.touches);
    }
  }

  return async function receive(message: ToTapeWorker): Promise<void> {
    if (message.kind === 'symbols') {
      pages.get(message.page)?.(message.symbols);
      pages.delete(message.page);
      return;
    }
    const { id, job } = message;
    try {
      post({ kind: 'done', id, answer: await work(id, job) });
    } catch (error) {
      post({ kind: 'failed', id, message: String(error) });
    }
  };
}
