import { useEffect, useMemo, useState } from 'preact/hooks';
import { garmentKeepWords as words } from '#words/garment-keep-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Calculation } from '../../calculation/calculation.ts';
import { recordOf } from '../../calculation/made.ts';
import type { Page, PageState } from '../../calculation/page.ts';
import { STAGE_OF } from '../../calculations/list.ts';
import { placeOf } from '../../garment/address.ts';
import { asKept } from '../../garment/as-kept.ts';
import { hasRoom, withKept } from '../../garment/changes.ts';
import { type Garment, type Kept, newGarment } from '../../garment/garment.ts';
import { inTheWay, type Seen, typingOf } from '../../garment/in-the-way.ts';
import { isMeasuredElsewhere, keptOf } from '../../garment/kept.ts';
import type { Listed } from '../../garment/listed.ts';
import { KeepScreen, type KeepWish } from '../../screens/garments/keep.tsx';
import { loadList } from '../../storage/garment-list.ts';
import {
  addGarment,
  changeGarment,
  GarmentError,
  type GarmentFault,
} from '../../storage/garments.ts';
import type { Store } from '../../storage/store.ts';
import { askToPersist, loadOpen, notKept, rememberOpen } from './deeds.ts';
import { loadOpened, type Opened } from './opened.ts';

interface Props {
  store: Store;
  calculation: Calculation;
  state: PageState;
  bench: Bench;
  /** Back to the calculation, with where it is kept now if it was. */
  onDone: (state: PageState) => void;
}

/** Keeps what is typed on a garment: as something new, or in place of what it was opened from. */
export function KeepPlace({ store, calculation, state, bench, onDone }: Props) {
  const { draft, page } = state;
  const [garments, setGarments] = useState<readonly Listed[]>();
  const [from, setFrom] = useState<Opened>();
  const [open, setOpen] = useState('');
  const [said, setSaid] = useState<string>();
  /** Why the last press kept nothing: a second one may be the maker's answer to it. */
  const [asked, setAsked] = useState<GarmentFault>();
  useEffect(() => {
    const load = async () => {
      const list = await loadList(store);
      setOpen(await loadOpen(store, list.garments));
      setFrom(await loadOpened(store, page.kept));
      setGarments(list.garments);
    };
    load().catch((error: unknown) => {
      setGarments([]);
      return notKept(error).then(setSaid);
    });
  }, [store]);
  const leftOut = useMemo(() => {
    const work = calculation.work(draft, bench);
    const runs = work.ok ? work.answer.runs : [];
    const measures = runs.flatMap(({ run, item }, i) =>
      [...recordOf(page, i, run).refused.values()].flatMap((made) =>
        [...made].map(([label, typed]) => words.measured(item, label, typed)),
      ),
    );
    return measures.length > 0 ? words.leftOut(measures.join(', ')) : undefined;
  }, [calculation, draft, page, bench]);
  if (!garments) return null;

  const keep = async (wish: KeepWish) => {
    const { kept } = from ?? {};
    const inPlace = kept && wish.name === kept.name && wish.garment === from?.garment.id;
    const id = inPlace ? kept.id : crypto.randomUUID();
    const seen = inPlace ? seenOf(page, kept) : undefined;
    const target = wish.garment === '' ? fresh(wish.newName) : undefined;
    const to = target?.id ?? wish.garment;
    // With what another tab, or following its marks, has made of it meanwhile.
    const keptAs = (garment: Garment) => {
      const before = garment.kept.find((one) => one.id === id);
      const { name, stage } = wish;
      return { ...keptOf(calculation, state, bench, before), id, name: name.trim(), stage };
    };
    const keepOn = (garment: Garment) => {
      const now = keptAs(garment);
      const before = garment.kept.find((one) => one.id === id);
      const fault =
        inTheWay(garment, now, seen) ??
        (isMeasuredElsewhere(calculation, state, bench, before) ? 'measured' : undefined);
      if (fault && fault !== asked) throw new GarmentError(fault);
      return keptOn(garment, now);
    };
    try {
      if (target) {
        await addGarment(store, keptOn(target, keptAs(target)));
        await rememberOpen(store, to);
      } else await changeGarment(store, to, keepOn);
      askToPersist();
      onDone({ draft, page: { ...asKept(state), kept: placeOf(to, id) } });
    } catch (error) {
      setAsked(error instanceof GarmentError ? error.fault : undefined);
      setSaid(await notKept(error));
    }
  };
  const isThere = garments.some(({ id }) => id === open);
  return (
    <KeepScreen
      garments={garments}
      first={{
        name: from?.kept.name ?? calculation.title,
        stage: from?.kept.stage ?? STAGE_OF[calculation.id] ?? 'cut',
        garment: from?.garment.id ?? (isThere ? open : (garments[0]?.id ?? '')),
        newName: '',
      }}
      hand={bench.hand}
      said={said ?? leftOut}
      onKeep={(wish) => void keep(wish)}
      onLeave={() => onDone(state)}
    />
  );
}

function fresh(name: string): Garment {
  return newGarment(crypto.randomUUID(), name, Date.now());
}

/** What was seen of it: in an address of before without what was typed, that of this form's opening. */
function seenOf({ seen }: Page, kept: Kept): Seen {
  return { typing: seen || typingOf(kept.draft), stage: kept.stage };
}

/**
 * With a calculation kept on it.
 * @throws GarmentError when it holds as many as one can
 */
function keptOn(garment: Garment, kept: Kept): Garment {
  if (!hasRoom(garment.kept) && !garment.kept.some(({ id }) => id === kept.id)) {
    throw new GarmentError('many');
  }
  return withKept(garment, kept, Date.now());
}
