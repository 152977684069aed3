import { useLayoutEffect, useMemo, useState } from 'preact/hooks';
import { garmentWords } from '#words/garment-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { FollowedMark } from '../../garment/following.ts';
import type { Garment, Kept } from '../../garment/garment.ts';
import { differing, withMark } from '../../garment/mark-made.ts';
import type { SpacingFault, Stop } from '../../garment/stop.ts';
import { hereIn, type Known, stopsOf } from '../../garment/stops.ts';
import { Fetched } from '../../screens/garments/fetched.tsx';
import { FollowGarment } from '../../screens/garments/follow-garment.tsx';
import type { Store } from '../../storage/store.ts';
import { keepAwake } from '../start/awake.ts';
import type { Address } from '../start/use-address.ts';
import { speak } from '../start/voice.ts';
import { part } from './deeds.ts';
import { type Followed, useFollowed } from './followed.ts';

const SERVICES = { speak, keepAwake };

interface Props {
  store: Store;
  address: Address;
  bench: Bench;
  onLeave: () => void;
}

/** All marks of a garment, or of one thing kept on it: where it has come to is in the address. */
export function GarmentFollowPlace(props: Props) {
  const { store, address, bench, onLeave } = props;
  const followed = useFollowed(store, address.route.draft.g ?? '');
  const { garment, stored, known, said } = followed;
  if (garment && stored && known) {
    return <Following {...props} {...followed} garment={garment} stored={stored} known={known} />;
  }
  return (
    <div class="garments" data-hand={bench.hand}>
      <main>
        <h1>{garmentWords.title}</h1>
        {said !== undefined && <p role="alert">{said}</p>}
      </main>
      <nav class="actions" aria-label={garmentWords.title}>
        <button type="button" onClick={onLeave}>
          {garmentWords.back}
        </button>
      </nav>
    </div>
  );
}

type FollowingProps = Props & Followed & { garment: Garment; stored: Garment; known: Known };

function Following(props: FollowingProps) {
  const { garment, stored, known, change, fail, said, held, address, bench, onLeave } = props;
  const { route } = address;
  const { only } = route.draft;
  const { stops, blocked } = useMemo(
    () => stopsOf(garment, known, bench, only),
    [garment, known, bench, only],
  );
  const [fault, setFault] = useState<SpacingFault>();
  const [undo, setUndo] = useState<Kept>();
  const [leaving, setLeaving] = useState(false);
  const here = hereIn(stops, route.draft);
  const goTo = (mark: FollowedMark | undefined) => {
    const stop = mark && stops[mark.run];
    const place = stop
      ? { k: stop.kept.id, run: String(stop.run), at: String(mark.mark) }
      : { k: '', run: '', at: 'end' };
    if (mark?.run !== here?.run) setUndo(undefined);
    setFault(undefined);
    address.type({ ...route, draft: { ...route.draft, ...place } });
  };
  // At once, not after the paint: a press must start from where this led.
  useLayoutEffect(() => {
    // Once begun, the place stays where it is, whatever is made.
    if (route.draft.at === undefined) goTo(here);
  }, []);
  const made = (stop: Stop, label: string, typed: string | undefined) =>
    change(stop.kept, (kept) => withMark(kept, stop, label, differing(stop, label, typed, bench)));
  const respace = async (stop: Stop) => {
    const calculation = known.get(stop.kept.calculation);
    if (calculation === undefined || typeof calculation === 'string') return;
    const { spacedAnew } = await spacing();
    const spaced = spacedAnew(calculation, stop, bench);
    setFault(spaced?.ok === false ? spaced.fault : undefined);
    if (!spaced?.ok) return;
    setUndo(stop.kept);
    change(stop.kept, spaced.change);
  };
  const spacedNow = undo && garment.kept.find(({ id }) => id === undo.id);
  const undoSpacing =
    spacedNow &&
    (() => {
      setUndo(undefined);
      void spacing()
        .then(({ unspaced }) => change(spacedNow, (now) => unspaced(now, undo, bench)))
        .catch(fail);
    });
  if (leaving && held > 0) {
    const give = { said, bench, onStay: () => setLeaving(false), onLeave };
    return <Fetched load={loadLeave} onLeave={onLeave} give={give} />;
  }
  return (
    <FollowGarment
      garment={garment}
      stored={stored}
      stops={stops}
      blocked={blocked}
      here={here}
      bench={bench}
      services={SERVICES}
      said={said}
      spacingFault={fault}
      deeds={{
        goTo,
        made,
        respace: (stop) => void respace(stop).catch(fail),
        undoSpacing,
        openKept: (kept) =>
          void part(import('./plans.ts'))
            .then(({ openingOf }) => openingOf(garment, kept, bench))
            .then(address.go, fail),
        leave: held > 0 ? () => setLeaving(true) : onLeave,
        keepNow: held > 0 ? props.again : undefined,
      }}
    />
  );
}

const spacing = () => part(import('../../garment/spacing.ts'));
const loadLeave = () =>
  import('../../screens/garments/follow-leave.tsx').then((part) => part.FollowLeave);
