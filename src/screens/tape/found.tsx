import { beside, type Question, type Reading } from '../../camera/tape-eye.ts';

interface Props {
  reading: Reading;
  question: Question | undefined;
}

/** The scales found, outlined, the numbers read beside their print, and where something is asked. */
export function Found({ reading, question }: Props) {
  const size = Math.max(reading.width, reading.height) / 44;
  return (
    <>
      {reading.scales.map((scale, i) => (
        <g key={i} class={scale.sure ? 'scale' : 'scale doubtful'}>
          <polygon points={scale.outline.map(({ x, y }) => `${x},${y}`).join(' ')} />
          {scale.numbers.map((number) => {
            const { x, y } = beside(scale, number);
            return (
              <text key={`${x},${y}`} x={x} y={y} font-size={size} stroke-width={size / 5}>
                {number.value}
              </text>
            );
          })}
        </g>
      ))}
      {question && <Asked at={question} size={size} />}
    </>
  );
}

function Asked({ at, size }: { at: Question; size: number }) {
  return (
    <g class="asked">
      <circle cx={at.x} cy={at.y} r={size * 1.2} />
      <text x={at.x} y={at.y - size * 1.5} font-size={size * 1.6} stroke-width={size / 4}>
        ?
      </text>
    </g>
  );
}
