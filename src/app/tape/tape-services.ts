import type { TapeBridge } from '../../camera/tape-bridge.ts';
import type { TapeServices } from '../../screens/tape/services.ts';
import { holdPage } from '../offline/hand.ts';
import { keepAwake } from '../start/awake.ts';
import { speak } from '../start/voice.ts';

/** For the reader's own script to come over a slow connection. */
const COMES_MS = 30_000;

let reader: Promise<TapeBridge> | undefined;

/** One for all readings, since the engine takes its time to start; fetched after the screen. */
function theReader(): Promise<TapeBridge> {
  const fetched =
    reader ??
    Promise.race([import('./tape-reader.ts').then((part) => part.createReader()), tooLate()]);
  reader = fetched;
  // What could not be fetched may be there the next time.
  fetched.catch(() => {
    reader = undefined;
  });
  return fetched;
}

function tooLate(): Promise<never> {
  return new Promise((_, reject) => {
    setTimeout(() => reject(new Error('the reader does not come')), COMES_MS);
  });
}

const bridge: TapeBridge = {
  read: async (...given) => (await theReader()).read(...given),
  frame: async (...given) => (await theReader()).frame(...given),
  snap: async (...given) => (await theReader()).snap(...given),
  touch: async (...given) => (await theReader()).touch(...given),
  warm: () =>
    void theReader().then(
      ({ warm }) => warm(),
      () => undefined, // reading will say so
    ),
  close: () =>
    void reader?.then(
      ({ close }) => close(),
      () => undefined,
    ),
};

/** What reading a tape needs of this phone. */
export const TAPE_SERVICES: TapeServices = { bridge, keepAwake, holdPage, speak };
