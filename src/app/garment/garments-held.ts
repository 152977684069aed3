import { useEffect, useState } from 'preact/hooks';
import { garmentWords as words } from '#words/garment/garment-words.ts';
import type { Store } from '../../storage/store.ts';
import { keepersOf } from './keeper.ts';
import { useNotKept } from './not-kept.ts';

/**
 * What was done while following and could not be kept yet: said, and tried again by a press.
 * @param onKept called when some of it has come onto the disk
 */
export function useHeld(store: Store, onKept: () => void) {
  const [, look] = useState({});
  useEffect(() => {
    const stops = keepersOf(store).map((keeper) =>
      keeper.listen(({ kept }) => {
        look({});
        if (kept) onKept();
      }),
    );
    return () => {
      for (const stop of stops) stop();
    };
  }, [store]);
  const held = keepersOf(store).filter((keeper) => keeper.trouble());
  const count = held.reduce((sum, keeper) => sum + keeper.waiting().length, 0);
  const [first] = held;
  const why = useNotKept(first?.trouble());
  if (!first) return undefined;
  return {
    said: `${why} ${words.waiting(count)}`.trim(),
    undo: {
      words: words.tryNow,
      deed: () => {
        for (const keeper of held) keeper.again();
      },
    },
  };
}
