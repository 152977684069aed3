/** The service worker answers at once, or never. */
const ANSWER_MS = 5000;

/**
 * The photo another app has shared, handed over by the service worker, which holds it in memory
 * only and once. Undefined when there is none any more: the page was loaded again.
 */
export async function sharedPhoto(): Promise<Blob | undefined> {
  const worker = navigator.serviceWorker;
  if (!worker) return undefined;
  const channel = new MessageChannel();
  const answer = new Promise<Blob | undefined>((arrived) => {
    channel.port1.onmessage = ({ data }) => arrived(data instanceof Blob ? data : undefined);
    setTimeout(() => arrived(undefined), ANSWER_MS);
    void worker.ready.then(({ active }) =>
      active?.postMessage({ type: 'SHARED_PHOTO' }, [channel.port2]),
    );
  });
  const photo = await answer;
  channel.port1.close();
  return photo;
}
