import type { Bench } from '../../calculation/bench.ts';
import { MadeEntry } from '../made-entry.tsx';
import { MadeAgain } from './made-again.tsx';
import type { useMeasures } from './use-measures.ts';

interface Props {
  measures: ReturnType<typeof useMeasures>;
  bench: Bench;
  /** Which mark: "Hook 3". */
  item: string;
  /** What was measured of it before, as typed; empty when nothing was. */
  made: string;
  onDone: () => void;
  /** Reads it off a tape instead, where that is possible. */
  onTape?: (() => void) | undefined;
}

/** Where a mark was really made: asked for, or asked about where it was measured before. */
export function Measure({ measures, bench, item, made, onDone, onTape }: Props) {
  const { asked, take, leave, keep } = measures;
  if (asked !== undefined) {
    return <MadeAgain before={made} now={asked} onLeave={leave} onTake={take} />;
  }
  return (
    <MadeEntry
      bench={bench}
      item={item}
      text={made}
      onKeep={(text) => {
        keep(text);
        onDone();
      }}
      onCancel={onDone}
      onTape={onTape}
    />
  );
}
