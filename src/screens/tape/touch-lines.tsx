import { useEffect, useRef, useState } from 'preact/hooks';
import { photoFaultWords, photoWords } from '#words/tape/photo-words.ts';
import { touchWords as words } from '#words/tape/touch-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Photo } from '../../camera/photo.ts';
import type { TapeBridge } from '../../camera/tape-bridge.ts';
import type { Place, Reading, Touched, TouchFault } from '../../camera/tape-eye.ts';
import { TapeError } from '../../camera/tape-fault.ts';
import { FieldTile } from '../../controls/field-tile.tsx';
import { Pad } from '../../controls/pad.tsx';
import { unitOfTail } from '../../controls/pad-edit.ts';
import type { Fresh } from '../../controls/pad-keys.ts';
import { useLanding } from '../../controls/use-landing.ts';
import { toInches, toMm } from '../../lengths/length.ts';
import { readLength } from '../../lengths/read-length.ts';
import { PictureView } from './picture-view.tsx';
import { TouchedLine } from './touched-line.tsx';

interface Props {
  photo: Photo;
  /** A line that was touched before. */
  first?: Place | undefined;
  bench: Bench;
  bridge: TapeBridge;
  onReading: (reading: Reading) => void;
  onLeave: () => void;
}

/** A line touched, and what was typed for it. */
interface Line {
  at: Place & Pick<Touched, 'spread'>;
  text: string;
  /** It was not touched: keys are to move it to its place. */
  byKeys?: boolean;
}

const changed = (lines: readonly Line[], i: number, to: Partial<Line>) =>
  lines.map((line, at) => (at === i ? { ...line, ...to } : line));

/** The scale made by hand: lines touched in the picture, their numbers typed. */
export function TouchLines({ photo, first, bench, bridge, onReading, onLeave }: Props) {
  const [lines, setLines] = useState<readonly Line[]>(first ? [{ at: first, text: '' }] : []);
  /** The line whose number is being typed; −1 when none is. */
  const [current, setCurrent] = useState(first ? 0 : -1);
  const [fresh, setFresh] = useState<Fresh>('all');
  const [said, setSaid] = useState<string | undefined>(first && words.type);
  const { width, height } = photo.image;
  const leaving = useRef(new AbortController());
  useEffect(() => () => leaving.current.abort(), []);
  const landing = useLanding();
  const other = useRef<HTMLButtonElement>(null);

  const change = (i: number, line: Partial<Line>) => setLines((old) => changed(old, i, line));
  const failed = (error: unknown) => {
    if (error instanceof TapeError) setSaid(photoFaultWords[error.fault]);
  };
  const place = (at: Place, i: number) => {
    setSaid(undefined);
    setLines((old) => (i < old.length ? changed(old, i, { at }) : [...old, { at, text: '' }]));
  };
  const snap = (at: Place) => {
    const snapped = (to: Place) =>
      // Moved on meanwhile, it stays where it is now.
      setLines((old) => old.map((line) => (line.at === at ? { ...line, at: to } : line)));
    void bridge.snap(at, leaving.current.signal).then(snapped, failed);
  };
  /** Where the line was left, it goes to the graduation there, and its number can be typed. */
  const leave = (at: Place, i: number) => {
    setSaid(undefined);
    setCurrent(i);
    setFresh('all');
    snap(at);
  };
  useEffect(() => {
    if (first) snap(first);
  }, []);
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
  const next = () => {
    other.current?.focus();
    setCurrent(-1);
  };
  const line = lines[current];
  /** For who can't touch: a line away from the last one, to be moved by keys. */
  const add = () => {
    const at = { x: width * (lines.length % 2 ? 0.75 : 0.25), y: height / 2 };
    setLines([...lines, { at, text: '', byKeys: true }]);
    setSaid(words.keys);
  };
  const remove = () => {
    setLines(lines.filter((one) => one !== line));
    setCurrent(-1);
  };
  const field = { key: 'value', kind: 'length', label: words.value(current + 1) } as const;
  const type = (text: string, then: Fresh) => {
    setSaid(undefined);
    setFresh(then);
    change(current, { text });
  };
  return (
    <>
      <main tabIndex={-1} ref={landing}>
        <p
          class={said && said !== words.keys && said !== words.type ? 'warning told' : 'told'}
          role="status"
        >
          {said ?? words.how[Math.min(touched.length, words.how.length - 1)]}
        </p>
        <PictureView
          photo={photo}
          handles={lines.map(({ at }) => at)}
          called={lines.length}
          onPlace={place}
          onLetGo={leave}
        >
          {lines.map((one, i) => (
            <TouchedLine
              key={i}
              {...one}
              nth={i + 1}
              now={i === current}
              width={width}
              height={height}
              onMove={(at) => change(i, { at })}
              onSet={() => leave(one.at, i)}
            />
          ))}
        </PictureView>
      </main>
      <div class="actions">
        <button type="button" onClick={onLeave}>
          {photoWords.back}
        </button>
        <button type="button" ref={other} onClick={line ? remove : add}>
          {line ? words.remove(current + 1) : words.add}
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
