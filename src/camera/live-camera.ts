import type { GreyImage } from '../tape/picture/grey-image.ts';
import { greyOf } from './grey.ts';

/**
 * Why there is no live picture.
 * - `refused`: the maker or the phone's settings said no;
 * - `missing`: there is no camera, or none this browser offers;
 * - `busy`: another app has it.
 */
export type CameraFault = 'refused' | 'missing' | 'busy';

export type CameraOutcome = { ok: true; value: MediaStream } | { ok: false; fault: CameraFault };

/** The browser may leave the question open for ever; the maker is told after this long. */
const ANSWER_MS = 60_000;
/** A frame to be followed is this long at most: small, so that many a second can be looked at. */
const FRAME_SIDE = 1280;

/** Asks for the camera at the back. Never rejects. */
export async function openCamera(signal: AbortSignal): Promise<CameraOutcome> {
  if (!navigator.mediaDevices?.getUserMedia) return { ok: false, fault: 'missing' };
  const asked = navigator.mediaDevices.getUserMedia({
    audio: false,
    video: {
      facingMode: { ideal: 'environment' },
      width: { ideal: 1920 },
      height: { ideal: 1080 },
    },
  });
  // Answered after it was given up, the camera must not stay on unseen.
  const late = new Promise<'late'>((tell) => {
    const limit = setTimeout(() => tell('late'), ANSWER_MS);
    signal.addEventListener('abort', () => {
      clearTimeout(limit);
      tell('late');
    });
  });
  try {
    const stream = await Promise.race([asked, late]);
    if (stream !== 'late') return { ok: true, value: stream };
    asked.then(stopCamera, () => undefined);
    return { ok: false, fault: 'refused' };
  } catch (error) {
    const name = error instanceof DOMException ? error.name : '';
    return { ok: false, fault: FAULTS[name] ?? 'busy' };
  }
}

const FAULTS: Readonly<Record<string, CameraFault>> = {
  NotAllowedError: 'refused',
  SecurityError: 'refused',
  NotFoundError: 'missing',
  OverconstrainedError: 'missing',
  NotReadableError: 'busy',
  AbortError: 'busy',
};

export function stopCamera(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop();
}

/** Takes small grey copies of what a camera shows; one canvas serves for all of them. */
export function frameTaker() {
  const canvas = document.createElement('canvas');
  const pen = canvas.getContext('2d', { willReadFrequently: true });
  /** @returns undefined as long as the camera has nothing to show */
  return function take(video: HTMLVideoElement): GreyImage | undefined {
    const { videoWidth, videoHeight } = video;
    if (!pen || videoWidth === 0) return undefined;
    const factor = Math.max(1, Math.max(videoWidth, videoHeight) / FRAME_SIDE);
    const width = Math.round(videoWidth / factor);
    const height = Math.round(videoHeight / factor);
    if (canvas.width !== width) canvas.width = width;
    if (canvas.height !== height) canvas.height = height;
    pen.drawImage(video, 0, 0, width, height);
    return greyOf(pen, width, height);
  };
}
