import { figureWords } from '#words/common/figure-words.ts';
import { boundsOf, type Figure, type FigureShape, stylesOf } from '../drawing/figure.ts';
import { adopt } from './adopt.ts';
import css from './figure.css?inline';
import { Rich } from './rich.tsx';

adopt(css);

interface Props {
  name: string;
  figure: Figure;
}

/** How wide and high a drawing may be on the screen, in px. */
const BOX = { width: 328, height: 190 };
/** Room round it, and the size of its lettering, in px. */
const ROOM = 14;
const LETTER = 14;

/** A drawing to scale, with the key of its lines in words. */
export function FigureView({ name, figure }: Props) {
  const { x, y, width, height } = boundsOf(figure);
  const lettered = BOX.width - 2 * ROOM - labelWidth(figure);
  const pxPerMm = Math.min(lettered / (width || 1), (BOX.height - 2 * ROOM) / (height || 1));
  const place = (point: { x: number; y: number }) => ({
    x: (point.x - x) * pxPerMm + ROOM,
    y: (point.y - y) * pxPerMm + ROOM,
  });
  return (
    <figure class="drawing">
      <svg role="img" aria-label={name} viewBox={`0 0 ${BOX.width} ${height * pxPerMm + 2 * ROOM}`}>
        {figure.map((shape) => drawn(shape, place))}
      </svg>
      <figcaption>
        {stylesOf(figure).map((style) => (
          <span key={style}>
            <svg viewBox="0 0 34 10" aria-hidden="true">
              <path class={`line-${style}`} d="M0 5H34" />
            </svg>
            {figureWords[style]}
          </span>
        ))}
        <b>
          <Rich text={name} />
        </b>
      </figcaption>
    </figure>
  );
}

/** Labels stand to the right of their point, and need room there. */
function labelWidth(figure: Figure): number {
  const letters = figure.map((shape) => ('label' in shape ? shape.label.length : 0));
  return Math.max(...letters) * LETTER * 0.6;
}

type Place = (point: { x: number; y: number }) => { x: number; y: number };

/** One shape of a drawing, in the look of its line. @param place from millimetres of the drawing to px */
export function drawn(shape: FigureShape, place: Place) {
  if ('label' in shape) {
    const { x, y } = place(shape.at);
    return (
      <text x={x + 4} y={y + LETTER / 3}>
        {shape.label}
      </text>
    );
  }
  const points = shape.points.map(place).map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`);
  const ring = shape.ring ? ' ring' : '';
  const made = shape.made === undefined ? '' : shape.made ? ' made' : ' open';
  return <path class={`line-${shape.line}${ring}${made}`} d={`M${points.join('L')}`} />;
}
