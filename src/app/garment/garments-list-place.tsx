import type { Bench } from '../../calculation/bench.ts';
import { backupDue, readStand } from '../../garment/backup/backup-due.ts';
import type { LastHome } from '../../screens/garment/home/last-home.tsx';
import type { GarmentDeeds } from '../../screens/garments/deeds.ts';
import { Fetched } from '../../screens/garments/fetched.tsx';
import { GarmentsScreen } from '../../screens/garments/garments.tsx';
import type { Store } from '../../storage/store.ts';
import type { Address } from '../start/use-address.ts';
import { useAhead } from './ahead.ts';
import { useHeld } from './garments-held.ts';
import { useGarments } from './garments-state.ts';

interface Props {
  store: Store;
  address: Address;
  bench: Bench;
  onHome: () => void;
  /** A backup that is to be looked at. */
  backup: File | undefined;
  /** A garment is about to be opened: what its home last said, where that still holds. */
  onOpening: (last: LastHome | undefined) => void;
}

const loadRestore = () =>
  import('./restore-place.tsx').then((loaded) => loaded.GarmentRestorePlace);

const loadProgress = () =>
  import('../../screens/garments/file-progress.tsx').then((loaded) => loaded.FileProgress);

/** Every garment on this phone, and everything done with them. */
export function GarmentsListPlace(props: Props) {
  const { store, address, bench, onHome, backup, onOpening } = props;
  const state = useGarments(store, address, onHome, backup);
  const lastHomeOf = useAhead(store, state.garments, bench);
  const deeds: GarmentDeeds = {
    ...state.deeds,
    open(id) {
      onOpening(lastHomeOf(id));
      state.deeds.open(id);
    },
  };
  const { garments, deleted, setAside, cleared, file, work } = state;
  const newer = setAside.filter(({ damage }) => damage.kind === 'newer').length;
  const held = useHeld(store, state.look);
  const last = readStand(state.lastBackup);
  return (
    <GarmentsScreen
      garments={garments}
      deleted={deleted}
      setAside={{ damaged: setAside.length - newer, newer }}
      cleared={cleared}
      lastBackup={last && new Date(last.at).toLocaleDateString()}
      due={backupDue(garments, last, readStand(state.putOff), Date.now())}
      said={state.said ?? held?.said}
      undo={state.undo ?? held?.undo}
      hand={bench.hand}
      deeds={deeds}
    >
      {work && <Fetched load={loadProgress} give={work} />}
      {file && (
        <Fetched
          load={loadRestore}
          onLeave={state.forgetFile}
          give={{
            store,
            file,
            onRestore: state.restore,
            onFault: state.forgetFile,
            onCancel: () => state.forgetFile(),
          }}
        />
      )}
    </GarmentsScreen>
  );
}
