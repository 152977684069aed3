import { useLayoutEffect, useRef } from 'preact/hooks';

import type { Place } from '../../camera/tape-eye.ts';

interface Props {
  picture: HTMLCanvasElement;
  /** What is looked at, in px of the photo. */
  at: Place;
  /** Where the finger is, in px of the view. */
  x: number;
  y: number;
}

const SIZE = 132;
/** Px of the lens for one px as the photo is shown without it. */
const TIMES = 5;
/** Nothing is gained by showing one px of the photo larger than this. */
const LARGEST = 4;
/** How far above the finger its middle is: clear of the fingertip. */
const ABOVE = 104;

/** The photo around a place, enlarged, where the finger doesn't cover it. */
export function Lens({ picture, at, x, y }: Props) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useLayoutEffect(() => {
    const pen = canvas.current?.getContext('2d');
    if (!pen) return;
    const shown = picture.getBoundingClientRect();
    const fit = Math.min(shown.width / picture.width, shown.height / picture.height);
    const scale = Math.min(LARGEST, TIMES * fit);
    const side = SIZE / scale;
    pen.fillStyle = 'black';
    pen.fillRect(0, 0, SIZE, SIZE);
    pen.drawImage(picture, at.x - side / 2, at.y - side / 2, side, side, 0, 0, SIZE, SIZE);
    pen.fillStyle = '#ffd95e';
    pen.fillRect(SIZE / 2 - 0.5, 0, 1, SIZE);
    pen.fillRect(0, SIZE / 2 - 0.5, SIZE, 1);
  });
  // Near the top of the view it goes beside the finger.
  const high = y < ABOVE;
  const left = high ? (x > SIZE + 40 ? x - ABOVE : x + ABOVE) : x;
  return (
    <canvas
      class="lens"
      ref={canvas}
      width={SIZE}
      height={SIZE}
      style={{ left: `${left}px`, top: `${high ? Math.max(y, SIZE / 2) : y - ABOVE}px` }}
    />
  );
}
