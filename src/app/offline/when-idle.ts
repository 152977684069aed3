/** Where the browser doesn't say when it is idle: long after the first screen has settled. */
const IDLE_MS = 3000;

/** Does what can wait once nothing else is to be done. */
export function whenIdle(work: () => void): void {
  if ('requestIdleCallback' in window) requestIdleCallback(work, { timeout: 4 * IDLE_MS });
  else setTimeout(work, IDLE_MS);
}
