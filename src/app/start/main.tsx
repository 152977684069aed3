import { render } from 'preact';
import { loadAhead } from '../../controls/use-loaded.ts';
import { openStore, type Store, StoreError, type StoreFault } from '../../storage/store.ts';
import { App, loadHome } from './app.tsx';
import { Boundary } from './boundary.tsx';
import { type Last, loadLast } from './last.ts';
import { readRoute } from './route.ts';
import { checkBench, loadBench } from './settings.ts';
import { showTheme } from './theme.ts';
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
  const kept = await Promise.race([readKept(store), soon()]);
  // The page shows home already; it stays until the same is there to be pressed.
  if (readRoute(location.hash).screen === '') await loadAhead(loadHome).catch(() => undefined);
  showTheme(kept.bench.theme);
  const root = document.getElementById('app')!;
  root.replaceChildren();
  render(
    <Boundary>
      <App store={store} {...kept} />
    </Boundary>,
    root,
  );
}

async function readKept(store: Store): Promise<Kept> {
  try {
    const [bench, last] = await Promise.all([loadBench(store), loadLast(store)]);
    return { bench, last, storeFault: undefined };
  } catch (error) {
    return fresh(error instanceof StoreError ? error.fault : 'refused');
  }
}

function soon(): Promise<Kept> {
  return new Promise((resolve) => setTimeout(() => resolve(fresh('slow')), FIRST_LOOK_MS));
}

function fresh(storeFault: StoreFault): Kept {
  return { bench: checkBench(undefined), last: {}, storeFault };
}
