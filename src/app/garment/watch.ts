/** How a piece of work that may take long is watched. */
export interface Watch {
  /** Says how far it is. */
  show: (done: number, of: number) => void;
  /** The maker may stop it. */
  signal: AbortSignal;
}

/** What is being done, how far it is, and how it is stopped. */
export interface Work {
  kind: 'writing' | 'reading' | 'restoring';
  done: number;
  of: number;
  stop: () => void;
}

/** Shows a piece of work, and undefined when there is none any more. */
export type ShowWork = (work: Work | undefined) => void;

/** Shows a piece of work while it is done. */
export async function watched<Value>(
  kind: Work['kind'],
  show: ShowWork,
  deed: (watch: Watch) => Promise<Value>,
): Promise<Value> {
  const control = new AbortController();
  const stop = () => control.abort();
  try {
    return await deed({
      signal: control.signal,
      show: (done, of) => show({ kind, done, of, stop }),
    });
  } finally {
    show(undefined);
  }
}
