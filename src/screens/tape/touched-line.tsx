import type { TargetedKeyboardEvent } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { touchWords as words } from '#words/tape/touch-words.ts';
import type { Place } from '../../camera/tape-eye.ts';

interface Props {
  at: Place;
  text: string;
  byKeys?: boolean;
  nth: number;
  now: boolean;
  /** Of the photo, in its px. */
  width: number;
  height: number;
  onMove: (at: Place) => void;
  /** It stands where it should: its number comes next. */
  onSet: () => void;
}

/** Where each key moves a line, in px of the photo. */
const KEYS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowRight: [1, 0],
  ArrowLeft: [-1, 0],
  ArrowDown: [0, 1],
  ArrowUp: [0, -1],
};

/** A line touched in the photo, with the number typed for it; keys can move it, too. */
export function TouchedLine(props: Props) {
  const { at, text, byKeys, nth, now, width, height, onMove, onSet } = props;
  const line = useRef<SVGGElement>(null);
  useEffect(() => {
    if (byKeys) line.current?.focus();
  }, []);
  const press = (event: TargetedKeyboardEvent<SVGGElement>) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const by = KEYS[event.key];
    if (!by && event.key !== 'Enter') return;
    event.preventDefault();
    if (!by) return onSet();
    const far = event.shiftKey ? 10 : 1;
    onMove({
      x: Math.min(width - 1, Math.max(0, at.x + far * by[0])),
      y: Math.min(height - 1, Math.max(0, at.y + far * by[1])),
    });
  };
  const size = Math.max(width, height) / 45;
  const across = Math.round((100 * at.x) / width);
  return (
    <g
      ref={line}
      class={now ? 'hair now' : 'hair'}
      role="slider"
      tabindex={0}
      aria-label={words.line(nth)}
      aria-valuemin={0}
      aria-valuemax={100}
      aria-valuenow={across}
      aria-valuetext={words.stands(text, across, Math.round((100 * at.y) / height))}
      onKeyDown={press}
    >
      <circle cx={at.x} cy={at.y} r={size} />
      <path d={`M${at.x - size / 2},${at.y}h${size}M${at.x},${at.y - size / 2}v${size}`} />
      <text x={at.x} y={at.y - size * 1.4} font-size={size * 1.4} stroke-width={size / 3}>
        {text || '?'}
      </text>
    </g>
  );
}
