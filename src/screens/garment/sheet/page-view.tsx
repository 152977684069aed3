import { TYPE_SIZE, textWidth } from '../../../drawing/helvetica.ts';
import type { PaperPage, PaperShape } from '../../../drawing/paper-job.ts';

/** A page of paper on the screen: the same shapes that are written into the file. */
export function PageView({ page, name }: { page: PaperPage; name: string }) {
  const { width, height, shapes } = page;
  return (
    <svg class="page" role="img" aria-label={name} viewBox={`0 0 ${width} ${height}`}>
      {shapes.map(drawn)}
    </svg>
  );
}

function drawn(shape: PaperShape, key: number) {
  switch (shape.kind) {
    case 'line': {
      const { from, to, weight } = shape;
      const d = `M${mm(from.x)} ${mm(from.y)}L${mm(to.x)} ${mm(to.y)}`;
      return <path key={key} d={d} stroke-width={weight} />;
    }
    case 'circle':
      return (
        <circle
          key={key}
          cx={mm(shape.at.x)}
          cy={mm(shape.at.y)}
          r={mm(shape.radius)}
          stroke-width={shape.weight}
        />
      );
    case 'path': {
      const points = shape.points.map(({ x, y }) => `${mm(x)} ${mm(y)}`);
      const dash = shape.dash.length > 0 ? shape.dash.join(' ') : undefined;
      return (
        <path
          key={key}
          d={`M${points.join('L')}`}
          stroke-width={shape.weight}
          stroke-dasharray={dash}
        />
      );
    }
    case 'text':
      return (
        <text
          key={key}
          x={mm(shape.at.x)}
          y={mm(shape.at.y)}
          font-size={mm(shape.size * TYPE_SIZE)}
          font-weight={shape.bold ? 700 : undefined}
          // The phone's face may be wider than that of the file.
          textLength={mm(textWidth(shape.text, shape.size))}
          lengthAdjust="spacingAndGlyphs"
        >
          {shape.text}
        </text>
      );
  }
}

/** A hundredth of a millimetre is finer than any screen. */
function mm(length: number): number {
  return Math.round(length * 100) / 100;
}
