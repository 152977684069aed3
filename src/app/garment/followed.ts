import { useEffect, useMemo, useState } from 'preact/hooks';
import { garmentFollowWords as words } from '#words/garment-follow-words.ts';
import { garmentWords as heldWords } from '#words/garment-words.ts';
import { CALCULATIONS } from '../../calculations/list.ts';
import type { Garment, Kept } from '../../garment/garment.ts';
import { type Known, loadKnown } from '../../garment/stops.ts';
import { loadGarment } from '../../storage/garments.ts';
import type { Store } from '../../storage/store.ts';
import { notKept } from './deeds.ts';
import { type Change, changedBy, type KeeperNews, keeperOf } from './keeper.ts';
import { useNotKept } from './not-kept.ts';

export interface Followed {
  /** With everything done to it, also what is still being kept. */
  garment: Garment | undefined;
  /** As it is on the disk. */
  stored: Garment | undefined;
  known: Known | undefined;
  /** Why something was not kept, or can't be read. */
  said: string | undefined;
  /** How many changes could not be kept yet, and are tried again; none as long as it goes well. */
  held: number;
  again(): void;
  /** Changes one kept calculation, as it was seen: shown at once, and in the store. */
  change(seen: Kept, by: (kept: Kept) => Kept): void;
  /** Says what went wrong. */
  fail(error: unknown): void;
}

/** A garment whose marks are followed: each mark made is kept as it is made. */
export function useFollowed(store: Store, id: string): Followed {
  const keeper = keeperOf(store, id);
  const [{ stored, known }, setLoaded] = useState<{ stored?: Garment; known?: Known }>({});
  const [said, setSaid] = useState<string>();
  const [looked, look] = useState({});
  const garment = useMemo(
    () => stored && keeper.waiting().reduce(shownWith, stored),
    [stored, looked],
  );

  const fail = (error: unknown) => void notKept(error).then(setSaid);
  const show = async (loaded: Garment) => {
    const calculations = await loadKnown(loaded, CALCULATIONS);
    setLoaded({ stored: loaded, known: calculations });
  };
  const load = () => loadGarment(store, id).then(show);
  const hear = ({ kept, refused }: KeeperNews) => {
    look({});
    if (kept) {
      const { change, garment: now } = kept;
      const isOn = now.kept.some((one) => one.id === change.seen.id);
      setSaid(isOn ? undefined : words.takenOff(change.seen.name));
      setLoaded((old) => ({ ...old, stored: now }));
    } else if (refused !== undefined) {
      fail(refused);
      load().catch(() => undefined);
    }
  };
  useEffect(() => {
    load().catch(fail);
    return keeper.listen(hear);
  }, []);

  const trouble = keeper.trouble();
  const why = useNotKept(trouble);
  const held = trouble ? keeper.waiting().length : 0;
  return {
    garment,
    stored,
    known,
    said: trouble ? `${why} ${heldWords.waiting(held)}`.trim() : said,
    held,
    again: keeper.again,
    change(seen, by) {
      keeper.add({ seen, by });
      look({});
    },
    fail,
  };
}

/** What is still being kept is shown as it will be; what will be refused is not. */
function shownWith(garment: Garment, change: Change): Garment {
  try {
    return changedBy(garment, change);
  } catch {
    return garment;
  }
}
