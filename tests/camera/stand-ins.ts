import type { GreyImage } from '../../src/tape/picture/grey-image.ts';
import type { TapeReading } from '../../src/tape/scales/tape-reading.ts';

/** A worker that answers when the test says so. */
export class StandInWorker extends EventTarget {
  ended = false;
  sent: { kind?: string; id?: number; [key: string]: unknown }[] = [];

  postMessage(message: object): void {
    this.sent.push(message as never);
  }

  terminate(): void {
    this.ended = true;
  }

  say(data: unknown): void {
    this.dispatchEvent(new MessageEvent('message', { data }));
  }

  /** The last job it was given. */
  get job() {
    const job = this.sent.filter(({ kind }) => kind === 'job').at(-1);
    if (!job) throw new Error('the worker was given no job');
    return job as { id: number; job: { kind: string } };
  }

  answer(answer: unknown): void {
    this.say({ kind: 'done', id: this.job.id, answer });
  }
}

/** Hands out stand-ins, and shows them. */
export function hiring() {
  const all: StandInWorker[] = [];
  const hire = () => {
    const worker = new StandInWorker();
    all.push(worker);
    return worker as unknown as Worker;
  };
  const last = () => {
    const worker = all.at(-1);
    if (!worker) throw new Error('no worker was started');
    return worker;
  };
  return { hire, last, all };
}

export const photo = (): GreyImage => ({ width: 2, height: 1, pixels: new Uint8Array([7, 200]) });

/** A reading of a picture without a tape. */
export const nothing: TapeReading = {
  width: 2,
  height: 1,
  outcome: 'cannot',
  reason: 'no-tape',
  scales: [],
};
