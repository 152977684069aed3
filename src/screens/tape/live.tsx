import { useEffect, useRef, useState } from 'preact/hooks';
import { spoken } from '#words/common/spoken.ts';
import { hairlineWords } from '#words/tape/hairline-words.ts';
import { liveWords as words } from '#words/tape/live-words.ts';
import { photoFaultWords, photoWords } from '#words/tape/photo-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { type Seen, underCross } from '../../camera/cross.ts';
import { photoOf } from '../../camera/drawn.ts';
import { type CameraFault, frameTaker, openCamera, stopCamera } from '../../camera/live-camera.ts';
import type { Photo } from '../../camera/photo.ts';
import { TapeError, type TapeFault } from '../../camera/tape-fault.ts';
import { LoadNewer } from '../../controls/newer-part.tsx';
import { useLanding } from '../../controls/use-landing.ts';
import { Found } from './found.tsx';
import { useNewerPhoto } from './newer-photo.ts';
import type { TapeServices } from './services.ts';
import { showReading } from './show.ts';

interface Props {
  bench: Bench;
  services: TapeServices;
  onFreeze: (photo: Photo) => void;
  onLeave: () => void;
}

/** A number is said again only when it has moved by more than its doubt, and not more often. */
const SAY_MS = 2500;

/** The camera's picture with a cross in its middle, and what the tape reads under it. */
export function Live({ bench, services, onFreeze, onLeave }: Props) {
  const video = useRef<HTMLVideoElement>(null);
  const [running, setRunning] = useState(false);
  const [fault, setFault] = useState<CameraFault>();
  const [engineFault, setEngineFault] = useState<TapeFault>();
  const [seen, setSeen] = useState<Seen>();
  const landing = useLanding();
  useEffect(() => services.keepAwake(), [services]);
  useCamera(video, setRunning, setFault);
  useFrames(video, running, services, setSeen, setEngineFault);

  const read = seen?.held && seen.at.ok ? seen.at : undefined;
  const shown = read && showReading(read.mm, read.uncertaintyMm, bench);
  const aloud = shown ? spoken(hairlineWords.spoken(shown.length, shown.within)) : undefined;
  useVoice(bench.voice === 'on', seen?.held === true, aloud, read, services);
  const newer = useNewerPhoto(engineFault);
  const said = fault
    ? words.faults[fault]
    : (newer ?? (engineFault && photoFaultWords[engineFault]));
  return (
    <>
      <main tabIndex={-1} ref={landing}>
        <div class="told live">
          <p class="number">
            <strong>{shown ? shown.length : '—'}</strong>
            {shown && <span>{hairlineWords.within(shown.within)}</span>}
          </p>
          {shown && <p>{shown.other}</p>}
          <p role="status" class={said ? 'warning' : ''}>
            {said ?? statusOf(running, seen)}
          </p>
        </div>
        <div class="photo">
          <video ref={video} muted playsInline aria-label={words.title} />
          {seen?.held && (
            <svg
              class="outlined"
              viewBox={`0 0 ${seen.outlined.width} ${seen.outlined.height}`}
              aria-hidden="true"
            >
              <Found reading={seen.outlined} question={undefined} />
            </svg>
          )}
          <svg class="cross" viewBox="-50 -50 100 100" aria-hidden="true">
            <path class="halo" d="M-50,0H-4M4,0H50M0-50V-4M0,4V50" />
            <path d="M-50,0H-4M4,0H50M0-50V-4M0,4V50" />
          </svg>
        </div>
      </main>
      <div class="ways">
        <button
          type="button"
          class="main"
          disabled={!running}
          onClick={() => video.current && onFreeze(photoOf(video.current, seen?.held === true))}
        >
          {words.freeze}
        </button>
        <button type="button" disabled={!aloud} onClick={() => aloud && services.speak(aloud)}>
          {words.say}
        </button>
        {newer && !fault && <LoadNewer />}
        <button type="button" onClick={onLeave}>
          {photoWords.back}
        </button>
      </div>
    </>
  );
}

function statusOf(running: boolean, seen: Seen | undefined): string {
  if (!running) return words.starting;
  if (!seen?.held) return seen?.asks ? words.asks : words.looking;
  return seen.at.ok ? words.held : words.aim;
}

type Video = { readonly current: HTMLVideoElement | null };

function useCamera(
  video: Video,
  onRunning: (running: boolean) => void,
  onFault: (fault: CameraFault) => void,
): void {
  useEffect(() => {
    const leaving = new AbortController();
    let stream: MediaStream | undefined;
    void openCamera(leaving.signal).then(async (opened) => {
      if (leaving.signal.aborted) return opened.ok && stopCamera(opened.value);
      if (!opened.ok) return onFault(opened.fault);
      stream = opened.value;
      for (const track of stream.getTracks()) {
        // The phone takes the camera away: a call comes in, another app asks for it.
        track.addEventListener('ended', () => {
          onRunning(false);
          onFault('busy');
        });
      }
      const screen = video.current;
      if (!screen) return;
      screen.srcObject = stream;
      await screen.play().catch(() => undefined);
      onRunning(true);
    });
    return () => {
      leaving.abort();
      if (stream) stopCamera(stream);
    };
  }, []);
}

/** Hands frames to the reader, the next one when it is done with the last. */
function useFrames(
  video: Video,
  running: boolean,
  { bridge }: TapeServices,
  onSeen: (seen: Seen | undefined) => void,
  onFault: (fault: TapeFault | undefined) => void,
): void {
  useEffect(() => {
    if (!running) return;
    const leaving = new AbortController();
    const take = frameTaker();
    let timer: ReturnType<typeof setTimeout> | undefined;
    const next = async () => {
      const image = video.current && document.visibilityState === 'visible' && take(video.current);
      let wait = 60;
      try {
        if (image) {
          onSeen(underCross(await bridge.frame(image, leaving.signal)));
          onFault(undefined);
        }
      } catch (error) {
        if (leaving.signal.aborted) return;
        onSeen(undefined);
        onFault(error instanceof TapeError ? error.fault : 'reader-failed');
        wait = 2000;
      }
      if (!leaving.signal.aborted) timer = setTimeout(() => void next(), wait);
    };
    void next();
    return () => {
      leaving.abort();
      clearTimeout(timer);
      // What was read in a picture that is gone must not stand.
      onSeen(undefined);
    };
  }, [running, bridge]);
}

/** Speaks what is read when it has changed, and once that it is lost. */
function useVoice(
  on: boolean,
  held: boolean,
  aloud: string | undefined,
  read: { mm: number; uncertaintyMm: number } | undefined,
  { speak }: TapeServices,
): void {
  /** What was said last; without a number, that the tape is lost. */
  const last = useRef<{ mm?: number; at: number }>(undefined);
  useEffect(() => {
    const now = performance.now();
    const before = last.current;
    if (on && !held && before?.mm !== undefined) {
      last.current = { at: now };
      speak(words.lost);
    }
    if (!on || !aloud || !read) return;
    const moved =
      before?.mm === undefined || Math.abs(read.mm - before.mm) > Math.max(read.uncertaintyMm, 0.5);
    if (!moved || (before && now - before.at < SAY_MS)) return;
    last.current = { mm: read.mm, at: now };
    speak(aloud);
  });
}
