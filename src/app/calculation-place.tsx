import type { ComponentProps, VNode } from 'preact';
import { useEffect, useMemo } from 'preact/hooks';

import type { Bench } from '../controls/bench.ts';
import type { Calculation, Draft } from '../controls/calculation.ts';
import { CalculationView } from '../controls/calculation-view.tsx';
import { useLoaded } from '../controls/use-loaded.ts';
import type { FollowPlace } from './follow-place.tsx';
import { openingDraft } from './last.ts';
import type { inUnitOf } from './other-unit.ts';
import type { Address } from './use-address.ts';
import { Waiting } from './waiting.tsx';

interface Props {
  load: () => Calculation | Promise<Calculation | undefined>;
  address: Address;
  last: string | undefined;
  bench: Bench;
  onHome: () => void;
  /** What is shown where there is no such calculation. */
  nowhere: VNode;
}

const loadOtherUnit = async () => (await import('./other-unit.ts')).inUnitOf;
const loadFollow = async () => (await import('./follow-place.tsx')).FollowPlace;

/** One calculation at its address: being worked out, or its marks being followed. */
export function CalculationPlace(props: Props) {
  const loaded = useLoaded(props.load);
  if (loaded.state !== 'here') return <Waiting loaded={loaded} onHome={props.onHome} />;
  return loaded.value ? <Open {...props} calculation={loaded.value} /> : props.nowhere;
}

function Open({ calculation, address, last, bench, onHome }: Props & { calculation: Calculation }) {
  const { route } = address;
  const draft = useMemo(
    () => openingDraft(calculation, route.draft, last, bench),
    // The last typing is only for the first look: from then on the address has it.
    [calculation, route.draft, bench],
  );
  const type = (next: Draft) => address.type({ ...route, draft: next });
  if (draft.u !== bench.unit) {
    return (
      <OtherUnit rewrite={(inUnit) => type(inUnit(bench, calculation, draft))} onHome={onHome} />
    );
  }
  if (route.mode === 'follow' || route.mode === 'count') {
    return (
      <Following
        counting={route.mode === 'count' && calculation.tally === true}
        calculation={calculation}
        draft={draft}
        bench={bench}
        onDraft={type}
        onLeave={() => address.go({ ...route, mode: '', draft })}
      />
    );
  }
  return (
    <CalculationView
      calculation={calculation}
      draft={draft}
      bench={bench}
      onDraft={type}
      onFollow={(run) =>
        address.go({ ...route, mode: 'follow', draft: { ...draft, run: String(run) } })
      }
      onCount={() => address.go({ ...route, mode: 'count', draft })}
      onLeave={onHome}
      onOpen={(screen) => address.go({ screen, mode: '', draft: {} })}
    />
  );
}

interface OtherUnitProps {
  rewrite: (inUnit: typeof inUnitOf) => void;
  onHome: () => void;
}

/** Numbers typed in another unit get it written out before they are shown. */
function OtherUnit({ rewrite, onHome }: OtherUnitProps) {
  const loaded = useLoaded(loadOtherUnit);
  useEffect(() => {
    if (loaded.state === 'here') rewrite(loaded.value);
  }, [loaded]);
  return <Waiting loaded={loaded} onHome={onHome} />;
}

/** Following is fetched when first wanted. */
function Following(props: ComponentProps<typeof FollowPlace>) {
  const loaded = useLoaded(loadFollow);
  if (loaded.state !== 'here') return <Waiting loaded={loaded} onHome={props.onLeave} />;
  return <loaded.value {...props} />;
}
