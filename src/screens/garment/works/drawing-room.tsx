import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

/** What a drawing mostly takes, until it is known. */
const USUAL = '20rem';

interface Props {
  /** It is on its way. */
  awaited: boolean;
  /** The drawing, where there is one. */
  children: ComponentChildren;
}

/** The place of a drawing: as high as it was while it is on its way, or its numbers are being typed, so that nothing below jumps. */
export function DrawingRoom({ awaited, children }: Props) {
  const room = useRef<HTMLDivElement>(null);
  const high = useRef<string | undefined>(undefined);
  const drawn = Boolean(children);
  // Told by the browser once it is laid out: to ask would have it laid out at each key.
  useLayoutEffect(() => {
    if (!drawn || !room.current || !('ResizeObserver' in globalThis)) return;
    const watch = new ResizeObserver(([now]) => {
      const height = now?.contentRect.height ?? 0;
      if (height > 0) high.current = `${height}px`;
    });
    watch.observe(room.current);
    return () => watch.disconnect();
  }, [drawn]);
  const kept = drawn ? undefined : (high.current ?? (awaited ? USUAL : undefined));
  return (
    <div ref={room} class="drawing-room" style={{ minHeight: kept ?? '' }}>
      {children}
    </div>
  );
}
