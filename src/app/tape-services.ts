import type { TapeBridge } from '../camera/tape-bridge.ts';
import type { TapeServices } from '../screens/tape/services.ts';
import { keepAwake } from './awake.ts';
import { speak } from './voice.ts';

let reader: Promise<TapeBridge> | undefined;

/** One for all readings, since the engine takes its time to start; fetched after the screen. */
function theReader(): Promise<TapeBridge> {
  const fetched = reader ?? import('./tape-reader.ts').then((part) => part.createReader());
  reader = fetched;
  // What could not be fetched may be there the next time.
  fetched.catch(() => {
    reader = undefined;
  });
  return fetched;
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
export const TAPE_SERVICES: TapeServices = { bridge, keepAwake, speak };
