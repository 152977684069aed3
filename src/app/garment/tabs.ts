/** Where tabs of the app tell each other which garment has been changed. */
const CHANNEL = 'thumbrule-garment';

/** Tells other tabs that a garment has been changed. */
export function tellTabs(id: string): void {
  channel()?.postMessage(id);
}

/**
 * Calls with the id of what another tab has changed, and without one when this page is come
 * back to, as it may have missed something.
 * @returns what ends it
 */
export function whenTold(hear: (id?: unknown) => void): () => void {
  const told = ({ data }: MessageEvent) => hear(data);
  const back = ({ persisted }: PageTransitionEvent) => persisted && hear();
  const seen = () => document.visibilityState === 'visible' && hear();
  channel()?.addEventListener('message', told);
  addEventListener('pageshow', back);
  document.addEventListener('visibilitychange', seen);
  return () => {
    channel()?.removeEventListener('message', told);
    removeEventListener('pageshow', back);
    document.removeEventListener('visibilitychange', seen);
  };
}

let open: BroadcastChannel | undefined;

function channel(): BroadcastChannel | undefined {
  if (typeof BroadcastChannel === 'undefined') return undefined;
  open ??= new BroadcastChannel(CHANNEL);
  return open;
}
