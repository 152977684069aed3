import { useEffect, useState } from 'preact/hooks';
import { photoFaultWords } from '#words/tape/photo-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Photo } from '../../camera/photo.ts';
import type { Reading } from '../../camera/tape-eye.ts';
import { adopt } from '../../controls/adopt.ts';
import { Choose } from './choose.tsx';
import { useNewerPhoto } from './newer-photo.ts';
import { Part } from './part.tsx';
import type { Use } from './picture-stage.tsx';
import type { TapeServices } from './services.ts';
import css from './tape.css?inline';
import { useBackSteps } from './use-back-steps.ts';
import { useReading } from './use-reading.ts';

adopt(css);

export interface TapeScreenProps {
  bench: Bench;
  /** The field that asked for a number; undefined when no field did. */
  field: string | undefined;
  uses: readonly Use[];
  /** Why the number did not go where it was last to. */
  unused?: string | undefined;
  /** A photo handed over by another app, once it is here; it gives undefined when it got lost. */
  shared?: (() => Promise<Blob | undefined>) | undefined;
  services: TapeServices;
  onLeave: () => void;
}

const loadBetween = () => import('./between.tsx').then((part) => part.Between);
const loadPicture = () => import('./picture-stage.tsx').then((part) => part.PictureStage);
const loadLive = () => import('./live.tsx').then((part) => part.Live);
const loadTouch = () => import('./touch-lines.tsx').then((part) => part.TouchLines);

/** A tape read off a photo or a live picture, for the field that asked. */
export function TapeScreen(props: TapeScreenProps) {
  const { bench, shared, services } = props;
  const state = useReading(services.bridge);
  const [aside, setAside] = useState<'live' | 'touch'>();
  useEffect(() => {
    if (shared) void shared().then(state.open);
  }, [shared]);
  const back = () => setAside(undefined);
  const steps = Number(state.stage.kind !== 'choose') + Number(aside !== undefined);
  useBackSteps(steps, (depth) => {
    back();
    if (depth === 0) state.stop();
  });
  useHeld(steps > 0, services);
  return (
    <div class="eye" data-hand={bench.hand}>
      {aside === 'live' ? (
        <Part
          load={loadLive}
          onLeave={back}
          give={{
            bench,
            services,
            onLeave: back,
            onFreeze: (photo: Photo) => {
              back();
              void state.read(photo);
            },
          }}
        />
      ) : (
        <Still {...props} state={state} touching={aside === 'touch'} onAside={setAside} />
      )}
    </div>
  );
}

/**
 * What a photo that is open may need is fetched with it, and the page stays: once a newer build
 * has taken over, it can't be had any more.
 */
function useHeld(isOpen: boolean, { holdPage }: TapeServices): void {
  useEffect(() => {
    if (!isOpen) return;
    for (const load of [loadBetween, loadPicture, loadTouch]) load().catch(() => undefined);
    return holdPage();
  }, [isOpen, holdPage]);
}

interface StillProps extends TapeScreenProps {
  state: ReturnType<typeof useReading>;
  /** The maker touches lines in the photo. */
  touching: boolean;
  onAside: (aside: 'live' | 'touch' | undefined) => void;
}

/** One photo, from being chosen to being read. */
function Still({
  bench,
  field,
  uses,
  unused,
  services,
  onLeave,
  state,
  touching,
  onAside,
}: StillProps) {
  const { stage, open, read, readAt, take, stop } = state;
  const newer = useNewerPhoto('fault' in stage ? stage.fault : undefined);
  if (stage.kind === 'choose') {
    return (
      <Choose
        field={field}
        said={newer ?? (stage.fault && photoFaultWords[stage.fault])}
        isOld={newer !== undefined}
        onFile={(file) => void open(file)}
        onLive={() => onAside('live')}
        onLeave={onLeave}
      />
    );
  }
  const onTouch = () => onAside('touch');
  // Looked at closely it still can't be read: the place touched is the first line of those by hand.
  const isRefused = stage.kind === 'read' && stage.reading.outcome === 'cannot';
  const first = isRefused ? stage.pointed : undefined;
  if ((touching || first) && 'photo' in stage) {
    const { photo } = stage;
    const onReading = (reading: Reading) => {
      onAside(undefined);
      take(photo, reading);
    };
    const back = () => {
      onAside(undefined);
      if (isRefused) take(photo, stage.reading);
    };
    const give = { photo, first, bench, bridge: services.bridge, onReading, onLeave: back };
    return <Part load={loadTouch} onLeave={back} give={give} />;
  }
  if (stage.kind === 'read' && !isRefused) {
    const { photo, reading } = stage;
    const onReading = (next: Reading) => take(photo, next);
    const give = { photo, reading, bench, uses, unused, onAnother: stop, onTouch, onReading };
    return <Part load={loadPicture} onLeave={stop} give={give} />;
  }
  const give = { stage, newer, onStop: stop, onTouch, onPoint: readAt, onAgain: read };
  return <Part load={loadBetween} onLeave={stop} give={give} />;
}
