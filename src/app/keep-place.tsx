import { useEffect, useState } from 'preact/hooks';

import type { Bench } from '../controls/bench.ts';
import type { Calculation, Draft } from '../controls/calculation.ts';
import { type Garment, type Kept, type Stage, withKept } from '../garment/garment.ts';
import { KeepScreen, type KeepWish } from '../screens/garments/keep.tsx';
import { addGarment, changeGarment, loadGarments } from '../storage/garments.ts';
import type { Store } from '../storage/store.ts';
import { askToPersist, makeGarment, notKept } from './garment-deeds.ts';

interface Props {
  store: Store;
  calculation: Calculation;
  draft: Draft;
  bench: Bench;
  /** Back to the calculation, with where it is kept now if it was. */
  onDone: (draft: Draft) => void;
}

/** The stage a calculation most often belongs to. */
const STAGE_OF: Readonly<Record<string, Stage>> = {
  convert: 'measure',
  sizes: 'measure',
  seam: 'join',
  hem: 'turn-up',
  closures: 'close',
  buttonhole: 'close',
  centre: 'edge',
};

/** Keeps what is typed on a garment: as something new, or in place of what it was opened from. */
export function KeepPlace({ store, calculation, draft, bench, onDone }: Props) {
  const [garments, setGarments] = useState<readonly Garment[]>();
  const [said, setSaid] = useState<string>();
  useEffect(() => {
    loadGarments(store).then(
      (all) => setGarments(all.garments),
      (error: unknown) => {
        setGarments([]);
        setSaid(notKept(error));
      },
    );
  }, [store]);
  if (!garments) return null;

  const [garmentId, keptId] = (draft.kept ?? '').split('.');
  const before = garments.find(({ id }) => id === garmentId)?.kept.find(({ id }) => id === keptId);
  const keep = async (wish: KeepWish) => {
    const id =
      before && wish.name === before.name && wish.garment === garmentId
        ? before.id
        : crypto.randomUUID();
    const kept = {
      ...keptOf(calculation, draft, bench),
      id,
      name: wish.name.trim(),
      stage: wish.stage,
    };
    const target = wish.garment === '' ? makeGarment(wish.newName) : undefined;
    try {
      if (target) await addGarment(store, target);
      const to = target?.id ?? wish.garment;
      await changeGarment(store, to, (garment) => withKept(garment, kept, Date.now()));
      askToPersist();
      onDone({ ...draft, kept: `${to}.${id}` });
    } catch (error) {
      setSaid(notKept(error));
    }
  };
  return (
    <KeepScreen
      garments={garments}
      first={{
        name: before?.name ?? calculation.title,
        stage: before?.stage ?? STAGE_OF[calculation.id] ?? 'cut',
        garment: before ? (garmentId ?? '') : (garments[0]?.id ?? ''),
        newName: '',
      }}
      hand={bench.hand}
      said={said}
      onKeep={(wish) => void keep(wish)}
      onLeave={() => onDone(draft)}
    />
  );
}

/** What is typed and where its marks are planned, without the place it was kept at. */
function keptOf(
  calculation: Calculation,
  { kept: _, ...draft }: Draft,
  bench: Bench,
): Pick<Kept, 'calculation' | 'draft' | 'planned'> {
  const work = calculation.work(draft, bench);
  const marks = work.ok ? work.answer.runs.flatMap(({ run }) => run.marks) : [];
  const planned = marks.filter(({ label }) => label !== '').map(({ label, at }) => [label, at]);
  return { calculation: calculation.id, draft, planned: Object.fromEntries(planned) };
}
