import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';

import { type Route, readRoute, writeRoute } from './route.ts';

/** Browsers refuse more than about three address changes a second for long. */
const APART_MS = 350;
/** Long enough for the answer to be painted first. */
const PAINT_MS = 50;

/** The address bar as state: what is typed goes into it, back and reload bring it back. */
export interface Address {
  route: Route;
  /** Another place, with a way back to this one. */
  go(route: Route): void;
  /** The same place with other typing: no step in the history. */
  type(route: Route): void;
  /** Writes what was typed last, now. */
  flush(): void;
}

/** @param onWritten called with each route once it is in the address bar */
export function useAddress(onWritten: (route: Route) => void): Address {
  const [route, setRoute] = useState(() => readRoute(location.hash));
  const written = useRef(onWritten);
  written.current = onWritten;

  const writer = useMemo(() => createWriter((done) => written.current(done)), []);
  useLayoutEffect(() => {
    const back = () => {
      // The news of an earlier change may come late; what was typed since is not taken back by it.
      if (!writer.isElsewhere()) return;
      writer.handOver();
      writer.arrive();
      setRoute(readRoute(location.hash));
    };
    const hide = () => writer.flush();
    addEventListener('hashchange', back);
    addEventListener('pagehide', hide);
    document.addEventListener('visibilitychange', hide);
    return () => {
      writer.flush();
      removeEventListener('hashchange', back);
      removeEventListener('pagehide', hide);
      document.removeEventListener('visibilitychange', hide);
    };
  }, [writer]);

  return {
    route,
    go(next) {
      writer.flush();
      // Also what came with the address and was only looked at, or followed, is held last.
      if (Object.keys(route.draft)[0]) written.current(route);
      history.pushState(null, '', writeRoute(next));
      writer.arrive();
      setRoute(next);
    },
    type(next) {
      setRoute(next);
      writer.soon(next);
    },
    flush: writer.flush,
  };
}

/** Writes the latest route once its answer is painted, or as soon as browsers allow. */
function createWriter(onWritten: (route: Route) => void) {
  let pending: Route | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let last = -APART_MS;
  let here = location.hash;
  const arrive = () => {
    here = location.hash;
  };
  const isElsewhere = () => location.hash !== here;
  /** The address is another's already: what was typed is kept, not written there. */
  const handOver = () => {
    clearTimeout(timer);
    if (pending) onWritten(pending);
    pending = undefined;
  };
  const flush = () => {
    // Another address may have come, and its event not yet.
    if (pending && !isElsewhere()) {
      last = performance.now();
      history.replaceState(null, '', writeRoute(pending));
      arrive();
    }
    handOver();
  };
  return {
    arrive,
    isElsewhere,
    flush,
    handOver,
    soon(route: Route) {
      pending = route;
      clearTimeout(timer);
      timer = setTimeout(flush, Math.max(PAINT_MS, last + APART_MS - performance.now()));
    },
  };
}
