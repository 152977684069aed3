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
  useLayoutEffect(() => {
    const now = room.current?.offsetHeight ?? 0;
    if (drawn && now > 0) high.current = `${now}px`;
  });
  const kept = drawn ? undefined : (high.current ?? (awaited ? USUAL : undefined));
  return (
    <div ref={room} class="drawing-room" style={{ minHeight: kept ?? '' }}>
      {children}
    </div>
  );
}
