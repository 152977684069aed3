import { useMemo, useState } from 'preact/hooks';
import { layWords as words } from '#words/garment/garment-lay-words.ts';
import type { Action } from '../../garment/actions/act.ts';
import { idOfLaid, isSamePlace, type PlacedPiece } from '../../garment/record/cloth-lay.ts';
import type { LayFault } from '../../lay/check-lay.ts';
import { lostToFlaws } from '../../lay/lost-to-flaws.ts';
import type { Lay } from '../../lay/task.ts';
import { materialName } from '../../screens/garment/materials/materials-said.ts';
import type { LayProps } from '../../screens/lay/lay.tsx';
import { idsOtherSized } from '../lay/ids-other-sized.ts';
import { foundFor, keptPlace, putBy, soundLay, taskFor } from '../lay/lay-task.ts';
import { useCut } from '../lay/use-cut.ts';
import { useLook } from '../lay/use-look.ts';
import { isWarned } from './lay-is-warned.ts';
import { shownLay, sumsOf, type Told } from './lay-said.ts';
import type { Standing } from './lay-warned.tsx';

const NOTHING = {};

type Shown = Pick<
  LayProps,
  'lay' | 'sums' | 'looking' | 'fell' | 'canLook' | 'onStart' | 'onStop' | 'onPut' | 'onLetGo'
>;

/** With what is in the way, where something is. */
interface Found extends Shown {
  standing: Standing | undefined;
}

interface Given extends Told {
  act: (action: Action) => void;
}

/** A lay the maker tries: one piece put where it may lie over another. */
interface Tried {
  of: string;
  lay: Lay;
  faults: readonly LayFault[];
}

/** The lay of one cloth: as it is kept, as a search has it, or as a piece was just put. */
export function useClothLay({ act, ...told }: Given): Found {
  const { one, now, telling } = told;
  const { of, fixed } = now;
  const key = JSON.stringify([of, fixed]);
  const cut = useCut(of?.pieces ?? NOTHING);
  const outcome = useMemo(
    () => (of && typeof cut !== 'string' ? taskFor(of, fixed, cut) : undefined),
    [key, cut],
  );
  const { value: task, wasted = [] } = outcome?.ok ? outcome : {};
  const say = (set: object) => act({ do: 'lay', id: one.id, set, now: Date.now() });
  const keep = (lay: Lay) => {
    if (!of) return;
    const quantity = { id: crypto.randomUUID(), name: words.length(materialName(telling, one)) };
    act({ do: 'lay', id: one.id, found: foundFor(lay, of), quantity, now: Date.now() });
  };
  const { look, start, stop } = useLook(key, keep);
  const [tried, setTried] = useState<Tried>();
  const trying = tried?.of === JSON.stringify(of) && !look.best ? tried : undefined;
  const sound = useMemo(() => task && soundLay(task, now.found), [task, now.found]);
  const best = look.best && sound ? shorter(look.best, sound) : (look.best ?? sound);
  const lay = trying?.lay ?? best;
  const held = fixed.filter(({ id }) => now.needs.get(idOfLaid({ id }))?.state === 'planned');
  const onPut = (at: string, by: readonly [number, number]) => {
    if (!task || !lay || !of) return;
    stop();
    const put = putBy(task, lay, Number(at), by);
    const [was, is] = [lay.laid[Number(at)], put.lay.laid[Number(at)]].map(
      (it) => it && keptPlace(it),
    );
    if (!was || !is) return;
    say({ held: [...without(held, was), { ...is, folded: of.folded }] });
    if (put.faults.length === 0) keep(put.lay);
    setTried(put.faults.length > 0 ? { of: JSON.stringify(of), ...put } : undefined);
  };
  const onLetGo = (at: string) => {
    const laid = lay?.laid[Number(at)];
    if (!laid) return;
    const left = without(held, keptPlace(laid));
    say({ held: left.length > 0 ? left : undefined });
  };
  const standing: Standing = {
    ...{ ...told, outcome, faults: trying?.faults ?? [], ended: look.ended },
    ...{ shown: lay !== undefined, missing: cut === 'missing' },
    lost: task && lay ? lostToFlaws(task, lay) : 0,
    other: of && typeof cut !== 'string' ? idsOtherSized(of, cut) : [],
  };
  return {
    standing: isWarned(standing) ? standing : undefined,
    lay: task && lay && shownLay(told, task, lay),
    sums: task && lay && !trying ? sumsOf(told, { task, wasted }, lay) : undefined,
    looking: look.looking,
    fell: look.fell,
    canLook: task !== undefined && task.pieces.length > 0,
    onStart: () => task && start(task, trying ? undefined : best),
    onStop: stop,
    onPut,
    onLetGo,
  };
}

const shorter = (one: Lay, other: Lay) => (one.length <= other.length ? one : other);

/** Of pieces alike only the one at that place. */
function without(held: readonly PlacedPiece[], place: PlacedPiece): PlacedPiece[] {
  const at = held.findIndex((one) => isSamePlace(one, place));
  return held.filter((_, i) => i !== at);
}
