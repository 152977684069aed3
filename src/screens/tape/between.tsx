import { useState } from 'preact/hooks';
import { cannotWords } from '#words/tape/cannot-words.ts';
import { photoFaultWords, photoWords as words } from '#words/tape/photo-words.ts';
import type { Photo } from '../../camera/photo.ts';
import { type Place, rowsSeen } from '../../camera/tape-eye.ts';
import type { TapeFault } from '../../camera/tape-fault.ts';
import { LoadNewer } from '../../controls/newer-part.tsx';
import { useLanding } from '../../controls/use-landing.ts';
import { PictureView } from './picture-view.tsx';
import type { Stage } from './use-reading.ts';

interface Props {
  stage: Exclude<Stage, { kind: 'choose' }>;
  /** Said where what reads the photo is gone from the app's host, since that has a newer build. */
  newer: string | undefined;
  onStop: () => void;
  onTouch: () => void;
  /** Looks at the photo once more, there. */
  onPoint: (photo: Photo, at: Place) => void;
  /** Reads the same photo once more. */
  onAgain: (photo: Photo) => void;
}

/** What may be over by now, and has nothing to do with the photo. */
const PASSING: readonly TapeFault[] = ['engine-missing', 'engine-failed', 'reader-failed'];

/** While a photo is being read, and where nothing could be read in it. */
export function Between({ stage, newer, onStop, onTouch, onPoint, onAgain }: Props) {
  const landing = useLanding(stage.kind);
  const again = stage.kind === 'failed' && PASSING.includes(stage.fault) && stage.photo;
  const busy = stage.kind === 'opening' || stage.kind === 'reading';
  return (
    <>
      <main class="intro" tabIndex={-1} ref={landing}>
        <h1>{words.title(undefined)}</h1>
        <p role={busy ? 'status' : 'alert'} class={busy ? '' : 'warning'}>
          {newer ?? saidOf(stage)}
        </p>
        {stage.kind === 'reading' && <progress max={1} value={stage.done} aria-hidden="true" />}
        {stage.kind === 'read' && <Refused {...stage} onPoint={onPoint} />}
      </main>
      <div class="ways">
        {!busy && (
          <button type="button" onClick={onTouch}>
            {words.byTouch}
          </button>
        )}
        {newer && <LoadNewer />}
        {again && !newer && (
          <button type="button" onClick={() => onAgain(again)}>
            {words.again}
          </button>
        )}
        <button type="button" class="main" onClick={onStop}>
          {busy ? words.stop : words.another}
        </button>
      </div>
    </>
  );
}

type RefusedProps = Extract<Stage, { kind: 'read' }> & Pick<Props, 'onPoint'>;

/** The photo that can't be read, with the rows of graduations whose numbers weren't: it can be touched. */
function Refused({ photo, reading, onPoint }: RefusedProps) {
  const [at, setAt] = useState<Place>();
  return (
    <>
      <p>{words.point}</p>
      <PictureView
        photo={photo}
        handles={[]}
        called={0}
        onPlace={setAt}
        onLetGo={(place) => onPoint(photo, place)}
      >
        {rowsSeen(reading).map((outline) => {
          const points = outline.map(({ x, y }) => `${x},${y}`).join(' ');
          return (
            <g key={points} class="doubtful">
              <polygon points={points} />
            </g>
          );
        })}
        {at && (
          <g class="hair now">
            <circle cx={at.x} cy={at.y} r={Math.max(reading.width, reading.height) / 45} />
          </g>
        )}
      </PictureView>
    </>
  );
}

function saidOf(stage: Props['stage']): string {
  switch (stage.kind) {
    case 'opening':
      return words.opening;
    case 'reading':
      return words.reading(stage.done);
    case 'read':
      return cannotWords[stage.reading.reason ?? 'no-tape'];
    case 'failed':
      return photoFaultWords[stage.fault];
  }
}
