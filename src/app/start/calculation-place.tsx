import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';

import type { Bench } from '../../calculation/bench.ts';
import { heldOf, type Paged, type PageState } from '../../calculation/page.ts';
import { CalculationView } from '../../controls/calculation-view.tsx';
import { useLoaded } from '../../controls/use-loaded.ts';
import type { Store } from '../../storage/store.ts';
import { openingDraft } from './last.ts';
import { Later } from './later.tsx';
import { wholeOf } from './registry.ts';
import type { Address } from './use-address.ts';
import { Waiting } from './waiting.tsx';

interface Props {
  store: Store;
  load: () => Paged | Promise<Paged | undefined>;
  address: Address;
  last: string | undefined;
  bench: Bench;
  onHome: () => void;
  /** What is shown where there is no such calculation. */
  nowhere: VNode;
}

const loadModes = () => import('./modes.tsx').then((part) => part.Modes);

/** One calculation at its address: worked out, followed, counted or kept. */
export function CalculationPlace(props: Props) {
  const first = useLoaded(props.load);
  const whole = useLoaded(wholeOf(props.load));
  const loaded = whole.state === 'here' && whole.value ? whole : first;
  if (loaded.state !== 'here') return <Waiting loaded={loaded} onHome={props.onHome} />;
  return loaded.value ? <Open {...props} calculation={loaded.value} /> : props.nowhere;
}

function Open(props: Props & { calculation: Paged }) {
  const { store, calculation, address, last, bench, onHome } = props;
  const { route } = address;
  const state = useMemo(
    () => openingDraft(calculation, route.draft, last, bench),
    // The last typing is only for the first look: from then on the address has it.
    [calculation, route.draft, bench],
  );
  const { page } = state;
  const onState = (next: PageState) => address.type({ ...route, draft: heldOf(next) });
  const to = (mode: string, next = state) => address.go({ ...route, mode, draft: heldOf(next) });
  if (route.mode || page.u !== bench.unit) {
    const give = { calculation, bench, state, store, mode: route.mode, onState, onMode: to };
    return <Later load={loadModes} onHome={() => to('')} give={give} />;
  }
  return (
    <CalculationView
      {...state}
      calculation={calculation}
      bench={bench}
      onDraft={(draft) => onState({ ...state, draft })}
      onMode={(mode, set) => to(mode, { ...state, page: { ...page, ...set } })}
      onLeave={onHome}
      onOpen={(screen, carried) =>
        address.go({ screen, mode: '', draft: { ...(carried && { u: bench.unit, ...carried }) } })
      }
    />
  );
}
