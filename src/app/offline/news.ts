/**
 * Why the app can't be had without a connection.
 * - `insecure`: the address isn't https, so the browser offers no service worker;
 * - `unsupported`: the browser has none, or hides it (some private windows);
 * - `refused`: it has them and refused ours (blocked by a setting, or storage is full);
 * - `incomplete`: a part didn't arrive; it is tried again at the next start or connection.
 */
export type OfflineBlock = 'insecure' | 'unsupported' | 'refused' | 'incomplete';

/** How far a newer build has come that is being taken over. */
export type Taking = 'asked' | 'held up';

/** What the app wants to know, and what it must do before the page is given up. */
export interface OfflineNews {
  /** Every part of the app is on the device. Said once at each start. */
  onReady(): void;
  /**
   * A newer build waits. `apply` takes it over, and reloads every open page of the app:
   * this one at once, another one that is being typed in at the next pause.
   */
  onUpdate(apply: () => void): void;
  /**
   * The newer build is being taken over, as the maker asked: told again when it is held up. It ends
   * with the page loaded anew, or with `onUpdate`.
   */
  onTaking(how: Taking): void;
  onBlocked(reason: OfflineBlock): void;
  /**
   * No build is being taken over at this start. Until then the page fetches nothing it could
   * fetch later: a request may hold the newer build up.
   */
  onSettled(): void;
  /** Puts away what was typed. The page reloads only after this has settled without an error. */
  flush(): void | Promise<void>;
}
