import { points, textWidth } from '../../src/drawing/helvetica.ts';
import type { PaperPage, PaperShape } from '../../src/drawing/paper-job.ts';

interface Box {
  text: string;
  x: number;
  y: number;
  right: number;
  foot: number;
}

const HAIR = 1e-6;

/** What is wrong with a page by its shapes: lettering too small, on other lettering, struck by a line, off the page. */
export function pageFaults({ width, height, shapes }: PaperPage, margin: number): string[] {
  const texts = shapes.flatMap((shape) => (shape.kind === 'text' ? [shape] : []));
  const boxes = texts.map(({ at, text, size }): Box => {
    return { text, x: at.x, y: at.y - size, right: at.x + textWidth(text, size), foot: at.y };
  });
  const small = texts
    .filter(({ size }) => size < points(9) - HAIR)
    .map(({ text }) => `${text} is smaller than 9 pt`);
  const over = boxes.flatMap((one, i) =>
    boxes
      .slice(i + 1)
      .filter((other) => lies(one, other))
      .map((other) => `${one.text} lies on ${other.text}`),
  );
  const off = [
    ...boxes.flatMap((box) => [
      [box.x, box.y, box.text],
      [box.right, box.foot, box.text],
    ]),
    ...shapes.flatMap((shape) => placesOf(shape).map(({ x, y }) => [x, y, shape.kind])),
  ] as [number, number, string][];
  const outside = off
    .filter(
      ([x, y]) =>
        !(x > margin - 0.5 && y > margin - 0.5) ||
        !(x < width - margin + 0.5 && y < height - margin + 0.5),
    )
    .map(([x, y, what]) => `${what} leaves the page at ${x.toFixed(1)} ${y.toFixed(1)}`);
  const struck = shapes.flatMap((shape) =>
    shape.kind === 'line'
      ? boxes
          .filter((box) => crosses(shape, box))
          .map(
            (box) =>
              `a line strikes ${box.text} at ${shape.from.x.toFixed(1)} ${shape.from.y.toFixed(1)}`,
          )
      : [],
  );
  return [...small, ...over, ...outside, ...struck];
}

function placesOf(shape: PaperShape) {
  if (shape.kind === 'line') return [shape.from, shape.to];
  if (shape.kind === 'path') return shape.points;
  return [];
}

function lies(one: Box, other: Box): boolean {
  return (
    Math.min(one.right, other.right) - Math.max(one.x, other.x) > HAIR &&
    Math.min(one.foot, other.foot) - Math.max(one.y, other.y) > HAIR
  );
}

type Line = Extract<PaperShape, { kind: 'line' }>;

/** Whether some of a line lies in a box: tried at places along it. */
function crosses({ from, to }: Line, box: Box): boolean {
  if (Math.max(from.x, to.x) <= box.x || Math.min(from.x, to.x) >= box.right) return false;
  if (Math.max(from.y, to.y) <= box.y || Math.min(from.y, to.y) >= box.foot) return false;
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  const steps = Math.max(1, Math.ceil(long / 0.3));
  for (let i = 0; i <= steps; i++) {
    const x = from.x + ((to.x - from.x) * i) / steps;
    const y = from.y + ((to.y - from.y) * i) / steps;
    if (x > box.x + HAIR && x < box.right - HAIR && y > box.y + HAIR && y < box.foot - HAIR) {
      return true;
    }
  }
  return false;
}
