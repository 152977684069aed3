import { useMemo } from 'preact/hooks';
import { tapeWords } from '#words/common/mark-words.ts';
import { drawnRun } from '../calculation/as-made.ts';
import type { Bench } from '../calculation/bench.ts';
import type { NamedRun } from '../calculation/calculation.ts';
import type { Page } from '../calculation/page.ts';
import { onTape } from '../calculation/tape-text.ts';
import { inPlaceOrder, placeOrder } from '../sewing/made-run.ts';
import { adopt } from './adopt.ts';
import sideways from './sideways.css?inline';
import css from './tape.css?inline';
import { Tape } from './tape.tsx';

adopt(css);
adopt(sideways);

interface Props {
  named: NamedRun;
  /** With what was measured of the run, where it is a calculation's first one as planned. */
  page?: Page;
  bench: Bench;
  /** The mark being followed. */
  here?: number;
  onPick?: (index: number) => void;
}

/** A run on its strip of tape, described for those who do not see it. */
export function RunTape({ named, page, bench, here, onPick }: Props) {
  const { name } = named;
  const { run, order } = useMemo(() => drawn(named, page, bench), [named, page, bench]);
  return (
    <Tape
      run={run}
      here={here === undefined ? undefined : order.indexOf(here)}
      following={here !== undefined}
      unit={bench.unit}
      decimalMark={bench.decimalMark}
      words={tapeWords}
      label={tapeWords.tape(name, run.marks.length, onTape(run.length, bench))}
      {...(onPick && { onPick: (index: number) => onPick(order[index] ?? index) })}
    />
  );
}

/** The run as it lies, and of each of its marks the place in the order it is followed in. */
function drawn({ run }: NamedRun, page: Page | undefined, bench: Bench) {
  if (page) return { run: drawnRun(run, page, 0, bench), order: [] };
  return { run: inPlaceOrder(run), order: placeOrder(run) };
}
