import { type Action, act } from '../../garment/actions/act.ts';
import { begin, type Done, type Refused, type State } from '../../garment/actions/state.ts';
import { withKeys } from '../../garment/actions/with-keys.ts';
import { same } from '../../garment/work-out/same.ts';
import type { Known } from '../../garment/work-out/seen-work.ts';
import { type Logged, loadGarment } from '../../storage/garments.ts';
import { type Store, StoreError } from '../../storage/store.ts';
import { AGAIN_MS, type Deed, keeperOf } from './keeper.ts';
import { knownFor } from './known.ts';
import { tellTabs, whenTold } from './tabs.ts';

/** A garment in hand: with everything done to it, also what is still on its way to the disk. */
export interface Holder {
  /** Undefined until it has been read. */
  state(): State | undefined;
  /** Why the last thing was not done. */
  refused(): Refused | undefined;
  /** How much is not on the disk yet. */
  waiting(): number;
  /** Why the oldest of it could not be kept: it is tried again. */
  trouble(): StoreError | undefined;
  /** Why it can't be read, or not be kept for good. */
  failed(): unknown;
  act(action: Action): void;
  /** Tries to keep it now. */
  again(): void;
  /** Reads it anew where another tab, or a restored backup, may have changed it. */
  look(): void;
  listen(hear: () => void): () => void;
}

const holders = new WeakMap<Store, Map<string, Holder>>();

/** The one holder of a garment; it lasts as long as the page. */
export function holderOf(store: Store, id: string): Holder {
  const all = holders.get(store) ?? new Map<string, Holder>();
  holders.set(store, all);
  const holder = all.get(id) ?? createHolder(store, id);
  all.set(id, holder);
  return holder;
}

/** What was done, and is not on the disk yet. */
interface Doing {
  action: Action;
  /** What it came to here. */
  state: State;
  /** What it came to on what another tab had left. */
  redone?: Done | undefined;
}

function createHolder(store: Store, id: string): Holder {
  const keeper = keeperOf(store, id);
  const hearers = new Set<() => void>();
  const doing = new Map<Deed, Doing>();
  let state: State | undefined;
  /** What was on the disk when this was last in step with it. */
  let disk: Logged | undefined;
  let refused: Refused | undefined;
  let failed: unknown;
  /** How much was kept from here: what was read meanwhile may be from before it. */
  let keptHere = 0;
  /** Whether `failed` is of the last reading. */
  let unread = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tell = () => {
    for (const hear of hearers) hear();
  };

  /** Takes what is on the disk in hand, and does again on it what is still waiting. */
  const takeUp = (kept: Logged, known: Known) => {
    disk = kept;
    let now = begun(kept, known);
    for (const one of doing.values()) {
      now = act(now, one.action).state;
      one.state = now;
    }
    state = now;
  };
  const read = async () => {
    const before = keptHere;
    try {
      const kept = await loadGarment(store, id);
      const known = await knownFor(kept.record);
      if (keptHere !== before) return void read();
      // What is on its way comes upon what is there, and tells of it.
      const inStep = doing.size > 0 || (disk && state && isSame(kept, disk));
      if (inStep && !unread) return;
      if (!inStep) takeUp(kept, known);
      unread = false;
      failed = undefined;
    } catch (error) {
      // A store that is slow to wake takes no press to be asked again; what is gone stays gone.
      clearTimeout(timer);
      if (error instanceof StoreError) timer = setTimeout(() => void read(), AGAIN_MS);
      // What is said already isn't said anew each time.
      if (unread && (failed as Partial<StoreError>).fault === (error as Partial<StoreError>).fault)
        return;
      failed = error;
      unread = true;
    }
    tell();
  };
  /** With the calculations of what has come to the garment. */
  const know = async () => {
    if (!state) return;
    const known = await knownFor(state.record);
    if ([...known].every(([id, gives]) => state?.known.get(id) === gives)) return;
    state = begun(state, known);
    tell();
  };
  keeper.listen(({ kept, refused: why }) => {
    const one = kept && doing.get(kept.deed);
    if (one) doing.delete(kept.deed);
    if (kept) keptHere += 1;
    if (kept && one?.redone) {
      takeUp(kept.now, one.state.known);
      refused = one.redone.refused ?? refused;
      void know();
    } else if (kept && one) disk = kept.now;
    else if (kept) void read();
    if (why !== undefined) {
      doing.clear();
      disk = undefined;
      failed = why;
      void read().then(() => {
        failed ??= why;
        tell();
      });
    }
    if (kept) tellTabs(id);
    tell();
  });
  // It lasts as long as the page: it is never told to end.
  whenTold((told = id) => told === id && void read());
  void read();
  return {
    state: () => state,
    refused: () => refused,
    waiting: () => doing.size,
    trouble: keeper.trouble,
    failed: () => failed,
    act(action) {
      if (!state) return;
      const done = act(state, action);
      refused = done.refused;
      if (done.state !== state) {
        const { works } = state.record;
        state = done.state;
        // What was refused here only settled what was typed: it isn't done behind that on the disk.
        const rest: Action = done.refused ? { do: 'settle', now: action.now } : action;
        const one: Doing = { action: rest, state };
        const deed: Deed = (now) => {
          // It took the store too long, and is there all the same.
          if (isThere(now, one.redone?.state ?? one.state)) return now;
          const inStep = disk !== undefined && isSame(now, disk);
          one.redone = inStep ? undefined : act(begun(now, one.state.known), rest);
          const { record, log } = one.redone?.state ?? one.state;
          // What is being typed is in no log: then there is nothing to write of it.
          return { record, log: inStep && log === disk?.log ? now.log : log };
        };
        doing.set(deed, one);
        keeper.add(deed);
        // A key typed brings no calculation along.
        if (state.record.works !== works) void know();
      }
      tell();
    },
    again: keeper.again,
    look: () => void read(),
    listen(hear) {
      hearers.add(hear);
      return () => hearers.delete(hear);
    },
  };
}

function begun({ record, log }: Pick<State, 'record' | 'log'>, known: Known): State {
  return begin(withKeys(record, known), known, log);
}

/** Whether just this was written: another tab may have done something else in the same millisecond. */
function isThere(now: Logged, done: Logged): boolean {
  return isSame(now, done) && same(now.log, done.log);
}

/** Whether a record is the one that was seen: each change counts on, and what is being typed is compared. */
function isSame({ record: one }: Logged, { record: other }: Logged): boolean {
  return (
    one.edits === other.edits &&
    one.changed === other.changed &&
    JSON.stringify(one.pending) === JSON.stringify(other.pending)
  );
}
