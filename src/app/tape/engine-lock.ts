/** Held by the one page that fetches what could come later; who takes a newer build over steals it. */
const TURN = 'engine';

/** Held by the page that is at it, until nothing of it is under way any more. */
const AT_IT = 'engine-at-it';

/** A page that is stopped has ended its request long before this, or is frozen. */
const ENDS_MS = 1000;

const locksHere = () => (navigator as { locks?: LockManager }).locks;

/**
 * Does work that could come later: in one page of the app at a time, and not while `quietly` is at
 * work in any of them. What is under way then is to end by its signal, and is done anew afterwards.
 * Rejects as the work does. Where the browser has no locks the work is done at once.
 */
export async function inTurn(work: (stop?: AbortSignal) => Promise<void>): Promise<void> {
  const locks = locksHere();
  if (!locks) return work();
  for (;;) {
    const stop = new AbortController();
    let doing: Promise<void> | undefined;
    const begin = () => {
      doing = locks.request(AT_IT, () => work(stop.signal));
      return doing.catch(() => undefined);
    };
    const hadTurn = await locks.request(TURN, begin).then(
      () => true,
      () => false,
    );
    if (!doing) return work(); // refused
    if (hadTurn) return doing;
    stop.abort();
    const wasDone = await (doing as Promise<void>).then(
      () => true,
      () => false,
    );
    if (wasDone) return;
  }
}

/**
 * Does work while no page of the app is at what could come later. Resolves and rejects with it.
 * Where the browser has no locks, they go on.
 */
export async function quietly<Value>(work: () => Promise<Value>): Promise<Value> {
  const locks = locksHere();
  let doing: Promise<Value> | undefined;
  const once = () => {
    doing ??= work();
    return doing;
  };
  const begin = async () => {
    const signal = AbortSignal.timeout(ENDS_MS);
    await locks?.request(AT_IT, { signal }, () => undefined).catch(() => undefined);
    await once().catch(() => undefined);
  };
  // Another page may steal it in turn, to take over the same build: the work goes on.
  await locks?.request(TURN, { steal: true }, begin).catch(() => undefined);
  return once();
}
