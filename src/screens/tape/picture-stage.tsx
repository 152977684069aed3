import { useRef, useState } from 'preact/hooks';
import { hairlineWords as words } from '#words/tape/hairline-words.ts';
import { photoWords } from '#words/tape/photo-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Photo } from '../../camera/photo.ts';
import {
  firstPlace,
  type Hair,
  movedBy,
  type Place,
  type Question,
  questionAt,
  type Reading,
  secondPlace,
  told,
} from '../../camera/tape-eye.ts';
import { Found } from './found.tsx';
import { Hairlines } from './hairlines.tsx';
import { Part } from './part.tsx';
import { PictureView } from './picture-view.tsx';
import { Readout } from './readout.tsx';
import { showReading } from './show.ts';

/** Somewhere the number can go. */
export interface Use {
  name: string;
  /** Takes the number as it is typed, with its ±: `46.32 ± 0.02 cm`. */
  onUse: (text: string) => void;
}

interface Props {
  photo: Photo;
  reading: Reading;
  bench: Bench;
  uses: readonly Use[];
  /** Why the number did not go where it was last to. */
  unused: string | undefined;
  onAnother: () => void;
  onTouch: () => void;
  /** What the maker has answered makes another reading. */
  onReading: (reading: Reading) => void;
}

const loadAsk = () => import('./ask.tsx').then((part) => part.Ask);

/** A thumb's press moves a line by this, in mm. */
const NUDGE = 0.1;

/** A tape that was read: the lines on it, what they read, and where the number goes. */
export function PictureStage(props: Props) {
  const { photo, reading, bench, uses, unused } = props;
  const [moved, setMoved] = useState<readonly Hair[]>([]);
  const [current, setCurrent] = useState(0);
  const [held, setHeld] = useState(false);
  // Where the live cross was held is what was aimed at, read there or not; else no place is yet.
  const first: Hair | undefined = photo.aimed ?? firstPlace(reading, 0.5);
  const lines = moved.length > 0 ? moved : first ? [first] : [];
  const read = told(reading, lines);
  const waits = lines.some((line) => line.waits);
  const move = (line: number, at: Place) =>
    setMoved(lines.length > 0 ? lines.map((old, i) => (i === line ? at : old)) : [at]);
  const nudge = (by: number) => {
    const at = lines[current];
    if (at) move(current, movedBy(reading, at, by));
  };
  const toggleSecond = () => {
    const second = first && secondPlace(reading, lines[0] ?? first);
    if (lines.length > 1) setMoved(lines.slice(0, 1));
    else if (second) setMoved([...lines, second]);
    setCurrent(lines.length > 1 ? 0 : 1);
  };
  // A question that came up under a finger would move the photo away from it.
  const resting = useRef<Question>(undefined);
  if (!held) resting.current = questionAt(reading, lines);
  const asked = resting.current;
  const shown = read.ok ? showReading(read.mm, read.uncertaintyMm, bench) : undefined;
  return (
    <>
      <main>
        <Readout reading={reading} told={read} between={lines.length > 1} bench={bench} />
        <PictureView
          photo={photo}
          handles={lines}
          called={current}
          onPlace={(at, handle) => {
            setHeld(true);
            setCurrent(handle);
            move(handle, at);
          }}
          onLetGo={() => setHeld(false)}
        >
          <Found reading={reading} question={asked} />
          <Hairlines
            reading={reading}
            lines={lines}
            current={current}
            bench={bench}
            onMove={move}
            onPick={setCurrent}
          />
        </PictureView>
      </main>
      {asked ? (
        <Part
          key={`${asked.scale} ${asked.kind}`}
          load={loadAsk}
          onLeave={props.onAnother}
          give={{ reading, question: asked, bench, onAnswered: props.onReading }}
        />
      ) : (
        <div class="thumb">
          <button
            type="button"
            aria-label={words.less}
            disabled={lines[current]?.waits}
            onClick={() => nudge(-NUDGE)}
          >
            −
          </button>
          <button type="button" disabled={waits && lines.length < 2} onClick={toggleSecond}>
            {lines.length > 1 ? words.oneLine : words.twoLines}
          </button>
          <button
            type="button"
            aria-label={words.more}
            disabled={lines[current]?.waits}
            onClick={() => nudge(NUDGE)}
          >
            +
          </button>
        </div>
      )}
      <div class="actions">
        <button type="button" onClick={props.onAnother}>
          {photoWords.another}
        </button>
        <button type="button" onClick={props.onTouch}>
          {photoWords.byTouch}
        </button>
      </div>
      {unused && (
        <p class="warning" role="alert">
          {unused}
        </p>
      )}
      <div class="uses">
        {uses.map(({ name, onUse }) => (
          <button
            type="button"
            key={name}
            class="plain main"
            disabled={!shown}
            onClick={() => shown && onUse(shown.typed)}
          >
            {words.use(name)}
          </button>
        ))}
      </div>
    </>
  );
}
