import { render } from 'preact';
import { loadAhead } from '../../controls/use-loaded.ts';
import { openStore, type Store, StoreError, type StoreFault } from '../../storage/store.ts';
import { App, loadHome } from './app.tsx';
import { Boundary } from './boundary.tsx';
import { type Last, loadLast } from './last.ts';
import { readRoute } from './route.ts';
import { checkBench, loadBench } from './settings.ts';
import './app.css';

/** Longer than a healthy store needs; the first screen waits no longer for a sick one. */
const FIRST_LOOK_MS = 1000;

interface Kept {
  bench: ReturnType<typeof checkBench>;
  last: Last;
  storeFault: StoreFault | undefined;
}

void start();

async function start(): Promise<void> {
  const store = openStore();
  const reading = readKept(store);
  const kept = await Promise.race([reading, soon()]);
  // The page shows home already; it stays until the same is there to be pressed.
  if (readRoute(location.hash).screen === '') await loadAhead(loadHome).catch(() => undefined);
  const root = document.getElementById('app')!;
  root.replaceChildren();
  const show = (kept: Kept) =>
    render(
      <Boundary>
        <App key={kept.storeFault} store={store} {...kept} />
      </Boundary>,
      root,
    );
  show(kept);
  // A store that was slow to wake may hold another bench: its units are not to be guessed.
  if (kept.storeFault) void reading.then(show);
}

async function readKept(store: Store): Promise<Kept> {
  try {
    const [bench, last] = await Promise.all([loadBench(store), loadLast(store)]);
    return { bench, last, storeFault: undefined };
  } catch (error) {
    const fault = error instanceof StoreError ? error.fault : 'refused';
    return fault === 'slow' ? readKept(store) : fresh(fault);
  }
}

function soon(): Promise<Kept> {
  return new Promise((resolve) => setTimeout(() => resolve(fresh('slow')), FIRST_LOOK_MS));
}

function fresh(storeFault: StoreFault): Kept {
  return { bench: checkBench(undefined), last: {}, storeFault };
}
