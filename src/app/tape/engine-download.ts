/** A dead connection may stay open for minutes: one that brings nothing for this long is given up. */
const STALLED_MS = 10_000;

/**
 * A file with all of its bytes. Rejects when it can't be had, breaks off, or stalls twice: what
 * has stalled is asked for once more, since the connection may have changed meanwhile.
 *
 * @param until ends it; it rejects then
 */
export function download(url: string, until?: AbortSignal): Promise<Response> {
  return whole(url, until).catch((error: unknown) => {
    if (error instanceof Stalled) return whole(url, until);
    throw error;
  });
}

class Stalled extends Error {}

async function whole(url: string, until: AbortSignal | undefined): Promise<Response> {
  until?.throwIfAborted();
  const stop = new AbortController();
  const end = () => stop.abort(until?.reason);
  until?.addEventListener('abort', end);
  let limit: ReturnType<typeof setTimeout> | undefined;
  const goOn = () => {
    clearTimeout(limit);
    limit = setTimeout(() => stop.abort(new Stalled(`${url}: nothing comes`)), STALLED_MS);
  };
  goOn();
  try {
    const { ok, status, headers, body } = await fetch(url, { signal: stop.signal });
    if (!ok) throw new Error(`${url}: ${status}`);
    const watched = body?.pipeThrough(
      new TransformStream<Uint8Array<ArrayBuffer>>({
        transform(piece, out) {
          goOn();
          out.enqueue(piece);
        },
      }),
    );
    return new Response(await new Response(watched).arrayBuffer(), { headers });
  } finally {
    clearTimeout(limit);
    until?.removeEventListener('abort', end);
  }
}
