import { tapeWords } from '../words/mark-words.ts';
import { adopt } from './adopt.ts';
import type { Bench } from './bench.ts';
import type { NamedRun } from './calculation.ts';
import sideways from './sideways.css?inline';
import css from './tape.css?inline';
import { Tape } from './tape.tsx';
import { onTape } from './tape-text.ts';

adopt(css);
adopt(sideways);

interface Props {
  named: NamedRun;
  bench: Bench;
  /** The mark being followed. */
  here?: number;
  onPick?: (index: number) => void;
}

/** A run on its strip of tape, described for those who do not see it. */
export function RunTape({ named, bench, here, onPick }: Props) {
  const { run, name } = named;
  return (
    <Tape
      run={run}
      here={here}
      following={here !== undefined}
      unit={bench.unit}
      decimalMark={bench.decimalMark}
      words={tapeWords}
      label={tapeWords.tape(name, run.marks.length, onTape(run.length, bench))}
      {...(onPick && { onPick })}
    />
  );
}
