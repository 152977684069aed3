import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';

import type { Bench } from '../controls/bench.ts';
import type { Calculation, Draft } from '../controls/calculation.ts';
import { CalculationView } from '../controls/calculation-view.tsx';
import { useLoaded } from '../controls/use-loaded.ts';
import type { Store } from '../storage/store.ts';
import { openingDraft } from './last.ts';
import { Later } from './later.tsx';
import type { Address } from './use-address.ts';
import { Waiting } from './waiting.tsx';

interface Props {
  store: Store;
  load: () => Calculation | Promise<Calculation | undefined>;
  address: Address;
  last: string | undefined;
  bench: Bench;
  onHome: () => void;
  /** What is shown where there is no such calculation. */
  nowhere: VNode;
}

const loadOtherUnit = () => import('./other-unit-place.tsx').then((part) => part.OtherUnitPlace);
const loadKeep = () => import('./keep-place.tsx').then((part) => part.KeepPlace);
const loadFollow = () => import('./follow-place.tsx').then((part) => part.FollowPlace);

/** One calculation at its address: worked out, followed, counted or kept. */
export function CalculationPlace(props: Props) {
  const loaded = useLoaded(props.load);
  if (loaded.state !== 'here') return <Waiting loaded={loaded} onHome={props.onHome} />;
  return loaded.value ? <Open {...props} calculation={loaded.value} /> : props.nowhere;
}

function Open(props: Props & { calculation: Calculation }) {
  const { store, calculation, address, last, bench, onHome } = props;
  const { route } = address;
  const draft = useMemo(
    () => openingDraft(calculation, route.draft, last, bench),
    // The last typing is only for the first look: from then on the address has it.
    [calculation, route.draft, bench],
  );
  const onDraft = (next: Draft) => address.type({ ...route, draft: next });
  const to = (mode: string, next: Draft = draft) => address.go({ ...route, mode, draft: next });
  const same = { calculation, draft, bench };
  if (draft.u !== bench.unit) {
    return <Later load={loadOtherUnit} onHome={onHome} give={{ ...same, onDraft }} />;
  }
  const onLeave = () => to('');
  switch (route.mode) {
    case 'keep': {
      const onDone = (next: Draft) => to('', next);
      return <Later load={loadKeep} onHome={onLeave} give={{ ...same, store, onDone }} />;
    }
    case 'follow':
    case 'count': {
      const counting = route.mode === 'count' && calculation.tally === true;
      return (
        <Later load={loadFollow} onHome={onLeave} give={{ ...same, counting, onDraft, onLeave }} />
      );
    }
    default:
      return (
        <CalculationView
          {...same}
          onDraft={onDraft}
          onFollow={(run) => to('follow', { ...draft, run: String(run) })}
          onKeep={() => to('keep')}
          onCount={() => to('count')}
          onLeave={onHome}
          onOpen={(screen) => address.go({ screen, mode: '', draft: {} })}
        />
      );
  }
}
