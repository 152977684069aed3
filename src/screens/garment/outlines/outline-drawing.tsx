import { outlineWords as words } from '#words/garment/garment-outline-words.ts';
import { UNITS_PER_MM } from '../../../lengths/length.ts';
import type { OutlineShown } from './outline-shown.ts';

interface Props {
  shown: OutlineShown;
  /** How large it is, in words. */
  size: string;
}

/** The page around an outline, as a share of its size; and how long the grain line is. */
const [EDGE, GRAIN] = [0.08, 0.4];

/** An outline as it is cut, its top above; within it, where something is added, the one entered. */
export function OutlineDrawing({ shown: { drawn, name, fold, said }, size }: Props) {
  if (!drawn) return null;
  const { cut, entered } = drawn;
  const [down, across] = ([0, 1] as const).map((way) => cut.map((place) => place[way]));
  const [top, bottom] = [Math.min(...(down ?? [])), Math.max(...(down ?? []))];
  const [left, right] = [Math.min(...(across ?? [])), Math.max(...(across ?? []))];
  const edge = EDGE * Math.max(bottom - top, right - left);
  const box = [left - edge, top - edge, right - left + 2 * edge, bottom - top + 2 * edge];
  const [x, y] = [(left + right) / 2, (top + bottom) / 2];
  const half = (GRAIN * (bottom - top)) / 2;
  const tip = edge / 2;
  return (
    <svg
      class="outline-drawing"
      role="img"
      aria-label={words.drawing(name, size)}
      viewBox={box.join(' ')}
    >
      <polygon class="cut" points={inDrawing(cut)} />
      {said.outline?.adds !== undefined && <polygon class="sewn" points={inDrawing(entered)} />}
      {fold && <line class="fold" x1={left} x2={left} y1={top} y2={bottom} />}
      <path
        class="grain"
        d={`M${x} ${y - half}V${y + half}M${x - tip} ${y - half + tip}l${tip} ${-tip}l${tip} ${tip}`}
      />
      {said.match && (
        <circle
          class="match"
          cx={said.match[1] / UNITS_PER_MM}
          cy={said.match[0] / UNITS_PER_MM}
          r={edge / 4}
        />
      )}
    </svg>
  );
}

const inDrawing = (outline: readonly (readonly [number, number])[]) =>
  outline.map(([down, across]) => `${across},${down}`).join(' ');
