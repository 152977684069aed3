import type { TapeBridge } from '../../camera/tape-bridge.ts';

/** What reading a tape asks of the phone. */
export interface TapeServices {
  bridge: TapeBridge;
  speak(words: string): void;
  /** Keeps the screen on until the returned function is called. */
  keepAwake(): () => void;
  /** Keeps the page from being loaded anew, with a photo open, until the returned function is called. */
  holdPage(): () => void;
}
