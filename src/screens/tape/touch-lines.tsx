import { useEffect, useRef, useState } from 'preact/hooks';

import type { Photo } from '../../camera/photo.ts';
import type { TapeBridge } from '../../camera/tape-bridge.ts';
import type { Place, Reading, Touched, TouchFault } from '../../camera/tape-eye.ts';
import { TapeError } from '../../camera/tape-fault.ts';
import type { Bench } from '../../controls/bench.ts';
import { FieldTile } from '../../controls/field-tile.tsx';
import { Pad } from '../../controls/pad.tsx';
import { unitOfTail } from '../../controls/pad-edit.ts';
import type { Fresh } from '../../controls/pad-keys.ts';
import { toInches, toMm } from '../../lengths/length.ts';
import { readLength } from '../../lengths/read-length.ts';
import { photoFaultWords, photoWords } from '../../words/photo-words.ts';
import { touchWords as words } from '../../words/touch-words.ts';
import { PictureView } from './picture-view.tsx';

interface Props {
  photo: Photo;
  bench: Bench;
  bridge: TapeBridge;
  onReading: (reading: Reading) => void;
  onLeave: () => void;
}

/** A line touched, and what was typed for it. */
interface Line {
  at: Place;
  text: string;
}

/** The scale made by hand: lines touched in the picture, their numbers typed. */
export function TouchLines({ photo, bench, bridge, onReading, onLeave }: Props) {
  const [lines, setLines] = useState<readonly Line[]>([]);
  const [current, setCurrent] = useState(0);
  const [fresh, setFresh] = useState<Fresh>('all');
  const [said, setSaid] = useState<string>();
  const leaving = useRef(new AbortController());
  useEffect(() => () => leaving.current.abort(), []);

  const change = (i: number, line: Partial<Line>) =>
    setLines((old) => old.map((one, at) => (at === i ? { ...one, ...line } : one)));
  const failed = (error: unknown) => {
    if (error instanceof TapeError) setSaid(photoFaultWords[error.fault]);
  };
  const place = async (finger: Place, handle: number | undefined) => {
    const i = handle ?? lines.length;
    setSaid(undefined);
    setCurrent(i);
    setFresh('all');
    setLines((old) => (i < old.length ? old : [...old, { at: finger, text: '' }]));
    if (handle !== undefined) change(handle, { at: finger });
    await bridge.snap(finger, leaving.current.signal).then((at) => change(i, { at }), failed);
  };
  const touched = lines.flatMap((line) => touchOf(line, bench) ?? []);
  const done = async () => {
    try {
      const made = await bridge.touch(touched, leaving.current.signal);
      if (made.ok) onReading(made.value);
      else setSaid(faultWords(made.reason));
    } catch (error) {
      failed(error);
    }
  };
  /** Away with the keys: the picture is larger for the next line. */
  const next = () => setCurrent(lines.length);
  const line = lines[current];
  const field = { key: 'value', kind: 'length', label: words.value(current + 1) } as const;
  const type = (text: string, then: Fresh) => {
    setSaid(undefined);
    setFresh(then);
    change(current, { text });
  };
  const size = Math.max(photo.image.width, photo.image.height) / 45;
  return (
    <>
      <main>
        <p class={said ? 'warning told' : 'told'} role="status">
          {said ?? words.how[Math.min(touched.length, words.how.length - 1)]}
        </p>
        <PictureView
          photo={photo}
          handles={lines.map(({ at }) => at)}
          onPlace={(at, handle) => void place(at, handle)}
        >
          {lines.map(({ at, text }, i) => (
            <g key={i} class={i === current ? 'hair now' : 'hair'}>
              <circle cx={at.x} cy={at.y} r={size} />
              <text x={at.x} y={at.y - size * 1.4} font-size={size * 1.4} stroke-width={size / 3}>
                {text || '?'}
              </text>
            </g>
          ))}
        </PictureView>
      </main>
      <div class="actions">
        <button type="button" onClick={onLeave}>
          {photoWords.back}
        </button>
        <button type="button" disabled={lines.length === 0} onClick={() => setLines([])}>
          {words.again}
        </button>
        <button
          type="button"
          class="main"
          disabled={touched.length < 2}
          onClick={() => void done()}
        >
          {words.done}
        </button>
      </div>
      {line && (
        <>
          <div class="tiles one">
            <FieldTile
              key={current}
              field={field}
              text={line.text}
              bench={bench}
              current
              wrong={undefined}
              onText={(_, text) => type(text, 'no')}
              onPick={() => undefined}
              onNext={next}
            />
          </div>
          {bench.keys === 'pad' && (
            <Pad
              field={field}
              text={line.text}
              fresh={fresh}
              bench={bench}
              onText={type}
              onNext={next}
            />
          )}
        </>
      )}
    </>
  );
}

function faultWords(fault: TouchFault): string {
  return words.faults[fault];
}

/** What a line and its typed number tell the reader; undefined while the number is unfinished. */
function touchOf({ at, text }: Line, bench: Bench): Touched | undefined {
  const read = readLength(text, bench.unit);
  if (!read.ok) return undefined;
  switch (unitOfTail(text, bench.unit)) {
    case 'in':
      return { ...at, value: toInches(read.value), unit: 'inch' };
    case 'mm':
      return { ...at, value: toMm(read.value), unit: 'mm' };
    default:
      return { ...at, value: toMm(read.value) / 10, unit: 'cm' };
  }
}
