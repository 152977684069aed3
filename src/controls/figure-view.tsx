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
        {drawnAll(figure, place)}
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
type FigureLine = Exclude<FigureShape, { label: string }>;

/**
 * The shapes of a drawing. Those of one look that come one after another are one path: a row of holes is
 * dozens of them, which move at each key. What is filled covers what is under it, and stays by itself.
 *
 * @param place from millimetres of the drawing to px
 */
export function drawnAll(figure: Figure, place: Place) {
  const together: FigureShape[][] = [];
  for (const shape of figure) {
    const last = together.at(-1);
    if (last?.[0] && goesWith(last[0], shape)) last.push(shape);
    else together.push([shape]);
  }
  return together.map((shapes) => {
    const [first] = shapes;
    if (!first || 'label' in first) return first && drawn(first, place);
    const lines = shapes as FigureLine[];
    return <path class={lookOf(first)} d={lines.map((line) => pathOf(line, place)).join('')} />;
  });
}

function goesWith(one: FigureShape, other: FigureShape): boolean {
  if ('label' in one || 'label' in other) return false;
  return one.made === undefined && lookOf(one) === lookOf(other);
}

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
  return <path class={lookOf(shape)} d={pathOf(shape, place)} />;
}

function lookOf({ line, ring, made }: FigureLine): string {
  const row = made === undefined ? '' : made ? ' made' : ' open';
  return `line-${line}${ring ? ' ring' : ''}${row}`;
}

function pathOf({ points }: FigureLine, place: Place): string {
  const said = points.map(place).map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`);
  return `M${said.join('L')}`;
}
