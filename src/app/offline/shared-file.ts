/** The service worker answers at once, or never. */
const ANSWER_MS = 5000;

/**
 * What another app has shared, a photo or a garment's file, handed over by the service worker, which holds it in memory
 * only and once. Undefined when there is none any more: the page was loaded again.
 */
export async function sharedFile(): Promise<Blob | undefined> {
  const worker = navigator.serviceWorker;
  if (!worker) return undefined;
  const channel = new MessageChannel();
  const answer = new Promise<Blob | undefined>((arrived) => {
    channel.port1.onmessage = ({ data }) => arrived(data instanceof Blob ? data : undefined);
    setTimeout(() => arrived(undefined), ANSWER_MS);
    void worker.ready.then(({ active }) =>
      active?.postMessage({ type: 'SHARED_FILE' }, [channel.port2]),
    );
  });
  const file = await answer;
  channel.port1.close();
  return file;
}
