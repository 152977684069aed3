import { figureWords } from '#words/common/figure-words.ts';
import { type Figure, type FigureShape, stylesOf } from '../drawing/figure.ts';
import { LETTER, layFigure } from '../drawing/figure-layout.ts';
import { adopt } from './adopt.ts';
import css from './figure.css?inline';
import { Rich } from './rich.tsx';

adopt(css);

interface Props {
  name: string;
  figure: Figure;
}

/** A drawing to scale, with the key of its lines in words. */
export function FigureView({ name, figure }: Props) {
  const { width, height, place } = layFigure(figure);
  return (
    <figure class="drawing">
      <svg role="img" aria-label={name} viewBox={`0 0 ${width} ${height}`}>
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
