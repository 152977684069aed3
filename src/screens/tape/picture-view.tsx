import type { ComponentChildren, TargetedPointerEvent } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';

import type { Photo } from '../../camera/photo.ts';
import type { Place } from '../../camera/tape-eye.ts';
import { hairlineWords as words } from '../../words/hairline-words.ts';
import { Lens } from './lens.tsx';

interface Props {
  photo: Photo;
  /** What can be dragged, nearest first when a finger comes down near it. */
  handles: readonly Place[];
  /** A finger comes down somewhere, or drags; `handle` is the one it moves. */
  onPlace: (at: Place, handle: number | undefined) => void;
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
  handle: number | undefined;
  /** Where the finger came down and what was there, in px of the photo. */
  finger: Place;
  from: Place;
  gain: number;
  /** How far it has been from there, in px of the screen. */
  travel: number;
}

/** The photo, as large as it fits, with what was found drawn on it, and a lens above the finger. */
export function PictureView({ photo, handles, onPlace, children }: Props) {
  const { picture, image } = photo;
  const place = useRef<HTMLDivElement>(null);
  const drag = useRef<Drag>(undefined);
  const [lens, setLens] = useState<{ at: Place; x: number; y: number }>();
  useLayoutEffect(() => {
    picture.setAttribute('aria-hidden', 'true');
    place.current?.prepend(picture);
    return () => picture.remove();
  }, [picture]);

  function move(event: Pointer, at: Place, handle: number | undefined) {
    const inside = within(at, image.width, image.height);
    onPlace(inside, handle);
    const box = event.currentTarget.getBoundingClientRect();
    setLens({ at: inside, x: event.clientX - box.left, y: event.clientY - box.top });
  }

  return (
    <div class="photo" ref={place}>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset can’t be drawn in */}
      <svg
        viewBox={`0 0 ${image.width} ${image.height}`}
        role="group"
        aria-label={words.picture}
        onPointerDown={(event) => {
          const finger = inPhoto(event);
          if (event.button > 0 || !finger) return;
          event.preventDefault();
          event.currentTarget.setPointerCapture?.(event.pointerId);
          const { handle, from } = gripped(handles, finger);
          drag.current = from
            ? { handle, finger, from, gain: FINE, travel: 0 }
            : { handle: undefined, finger, from: finger, gain: 1, travel: 0 };
          move(event, drag.current.from, handle);
        }}
        onPointerMove={(event) => {
          const finger = drag.current && inPhoto(event);
          if (!drag.current || !finger) return;
          const { from, finger: start, gain, handle } = drag.current;
          const apart = Math.hypot(finger.x - start.x, finger.y - start.y) / finger.scale;
          drag.current.travel = Math.max(drag.current.travel, apart);
          const at = {
            x: from.x + gain * (finger.x - start.x),
            y: from.y + gain * (finger.y - start.y),
          };
          move(event, at, handle);
        }}
        // No click follows: what a touch has brought up under the finger must not be pressed by it.
        onTouchEnd={(event) => event.preventDefault()}
        onPointerUp={() => {
          const { travel = PRESS, gain, finger, handle } = drag.current ?? {};
          if (finger && gain !== 1 && travel < PRESS) onPlace(finger, handle);
          drag.current = undefined;
          setLens(undefined);
        }}
        onPointerCancel={() => {
          drag.current = undefined;
          setLens(undefined);
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
  return nearest && nearest.apart < GRIP ? nearest : { handle: undefined, from: undefined };
}

function within({ x, y }: Place, width: number, height: number): Place {
  return {
    x: Math.min(width - 1, Math.max(0, x)),
    y: Math.min(height - 1, Math.max(0, y)),
  };
}
