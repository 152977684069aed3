import type { ComponentChildren, TargetedPointerEvent } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { hairlineWords as words } from '#words/tape/hairline-words.ts';
import type { Photo } from '../../camera/photo.ts';
import type { Place } from '../../camera/tape-eye.ts';
import { Lens } from './lens.tsx';

interface Props {
  photo: Photo;
  /** What can be dragged, nearest first when a finger comes down near it. */
  handles: readonly Place[];
  /** The handle a finger calls that comes down away from them all; one past the last makes one. */
  called: number;
  /** A finger has brought a handle somewhere, and may drag it on. */
  onPlace: (at: Place, handle: number) => void;
  /** It has let go of the handle, there. */
  onLetGo?: (at: Place, handle: number) => void;
  /** What is drawn over the photo, in its pixels. */
  children: ComponentChildren;
}

type Pointer = TargetedPointerEvent<SVGSVGElement>;

/** A finger this near, in px of the screen, takes hold of a line instead of calling it. */
const GRIP = 36;
/** A held line moves less than the finger, so that a thumb can set it to a hair. */
const FINE = 0.35;
/** A finger that travels less than this has pressed, not dragged: the line comes to it. */
const PRESS = 5;

interface Drag {
  /** The finger it belongs to: another one moves nothing. */
  pointer: number;
  handle: number;
  /** Where the finger came down and what was there, in px of the photo. */
  finger: Place;
  from: Place;
  gain: number;
  /** How far it has been from there, in px of the screen. */
  travel: number;
  /** Where the handle is now. */
  at: Place;
}

/** The photo, as large as it fits, with what was found drawn on it, and a lens above the finger. */
export function PictureView({ photo, handles, called, onPlace, onLetGo, children }: Props) {
  const { picture, image } = photo;
  const place = useRef<HTMLDivElement>(null);
  const drag = useRef<Drag>(undefined);
  const [lens, setLens] = useState<{ at: Place; x: number; y: number }>();
  useLayoutEffect(() => {
    picture.setAttribute('aria-hidden', 'true');
    place.current?.prepend(picture);
    return () => picture.remove();
  }, [picture]);

  function move(event: Pointer, held: Drag, to: Place) {
    held.at = within(to, image.width, image.height);
    onPlace(held.at, held.handle);
    const box = event.currentTarget.getBoundingClientRect();
    setLens({ at: held.at, x: event.clientX - box.left, y: event.clientY - box.top });
  }

  function letGo({ at, handle }: Drag) {
    drag.current = undefined;
    setLens(undefined);
    onLetGo?.(at, handle);
  }

  const heldBy = ({ pointerId }: Pointer) =>
    drag.current?.pointer === pointerId ? drag.current : undefined;

  return (
    <div class="photo" ref={place}>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset can’t be drawn in */}
      <svg
        viewBox={`0 0 ${image.width} ${image.height}`}
        role="group"
        aria-label={words.picture}
        onPointerDown={(event) => {
          const finger = inPhoto(event);
          // The first finger of all is let in even if the last one’s leaving was never told.
          if (event.button > 0 || !finger || (drag.current && !event.isPrimary)) return;
          event.preventDefault();
          event.currentTarget.setPointerCapture?.(event.pointerId);
          const grip = gripped(handles, finger);
          const { handle, from } = grip ?? { handle: called, from: finger };
          const gain = grip ? FINE : 1;
          const pointer = event.pointerId;
          drag.current = { pointer, handle, finger, from, gain, travel: 0, at: from };
          move(event, drag.current, from);
        }}
        onPointerMove={(event) => {
          const held = heldBy(event);
          const finger = held && inPhoto(event);
          if (!held || !finger) return;
          const { from, finger: start, gain } = held;
          const apart = Math.hypot(finger.x - start.x, finger.y - start.y) / finger.scale;
          held.travel = Math.max(held.travel, apart);
          move(event, held, {
            x: from.x + gain * (finger.x - start.x),
            y: from.y + gain * (finger.y - start.y),
          });
        }}
        // No click follows: what a touch has brought up under the finger must not be pressed by it.
        onTouchEnd={(event) => event.cancelable && event.preventDefault()}
        onPointerUp={(event) => {
          const held = heldBy(event);
          if (!held) return;
          if (held.gain !== 1 && held.travel < PRESS) {
            held.at = within(held.finger, image.width, image.height);
            onPlace(held.at, held.handle);
          }
          letGo(held);
        }}
        onPointerCancel={(event) => {
          const held = heldBy(event);
          if (held) letGo(held);
        }}
      >
        {children}
      </svg>
      {lens && <Lens picture={picture} {...lens} />}
    </div>
  );
}

/** Where a finger is, in px of the photo; `scale` px of the photo make one of the screen. */
function inPhoto(event: Pointer): (Place & { scale: number }) | undefined {
  const matrix = event.currentTarget.getScreenCTM()?.inverse();
  if (!matrix) return undefined;
  const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix);
  return { x, y, scale: matrix.a };
}

/** The handle under the finger. */
function gripped(handles: readonly Place[], finger: Place & { scale: number }) {
  const apart = (at: Place) => Math.hypot(at.x - finger.x, at.y - finger.y) / finger.scale;
  const [nearest] = handles
    .map((from, handle) => ({ from, handle, apart: apart(from) }))
    .sort((one, other) => one.apart - other.apart);
  return nearest && nearest.apart < GRIP ? nearest : undefined;
}

function within({ x, y }: Place, width: number, height: number): Place {
  return {
    x: Math.min(width - 1, Math.max(0, x)),
    y: Math.min(height - 1, Math.max(0, y)),
  };
}
