import { useState } from 'preact/hooks';
import type { Bench } from '../../calculation/bench.ts';
import { withUnits } from '../../calculation/with-units.ts';
import { readLength } from '../../lengths/read-length.ts';

interface Followed {
  made: string | undefined;
  asked?: string | undefined;
  /** Changes with every mark that is gone to. */
  turn: string;
  bench: Bench;
  onMeasured: (label: string, typed: string | undefined) => void;
}

/** The measures of the mark that is followed: none is written over unasked, and each can be undone. */
export function useMeasures({ made, asked, turn, bench, onMeasured }: Followed, label: string) {
  const [again, setAgain] = useState<{ typed: string; turn: string }>();
  const [before, setBefore] = useState<{ made: string | undefined; turn: string }>();
  const record = (typed: string | undefined) => {
    setAgain(undefined);
    onMeasured(label, typed);
  };
  const change = (typed: string) => {
    if (typed !== (made ?? '')) setBefore({ made, turn });
    record(typed);
  };
  const pending = asked ?? (again?.turn === turn ? again.typed : undefined);
  const first = before?.turn === turn ? before : undefined;
  return {
    /** What was measured anew of a mark that was measured already. */
    asked: pending,
    take: () => change(pending ?? ''),
    leave: () => record(made),
    keep(text: string) {
      // With its unit: a bench set to another one must not read another place.
      const typed = withUnits(text.trim(), bench.unit);
      if (differ(made ?? '', typed, bench)) setAgain({ typed, turn });
      else change(typed);
    },
    /** Back to what was said of the mark before. */
    undo: first && {
      first: first.made ?? '',
      deed: () => {
        setBefore(undefined);
        record(first.made);
      },
    },
  };
}

/** Whether a mark was measured before, and elsewhere. That it is as planned after all is no measure. */
function differ(before: string, now: string, { unit }: Bench): boolean {
  if (before === '' || now === '') return false;
  const [one, other] = [readLength(before, unit), readLength(now, unit)];
  return !(one.ok && other.ok && one.value === other.value);
}
