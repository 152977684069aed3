/** Where tabs of the app tell each other which garment has been changed. */
const CHANNEL = 'thumbrule-garment';

/** Tells other tabs that a garment has been changed. */
export function tellTabs(id: string): void {
  channel()?.postMessage(id);
}

/** Calls when another tab has changed a garment, and when this page is come back to. */
export function whenTold(id: string, hear: () => void): void {
  channel()?.addEventListener('message', ({ data }) => {
    if (data === id) hear();
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') hear();
  });
}

let open: BroadcastChannel | undefined;

function channel(): BroadcastChannel | undefined {
  if (typeof BroadcastChannel === 'undefined') return undefined;
  open ??= new BroadcastChannel(CHANNEL);
  return open;
}
