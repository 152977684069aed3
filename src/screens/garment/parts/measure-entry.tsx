import type { ComponentChildren } from 'preact';
import { readWords } from '#words/common/read-words.ts';
import { measuresWords as words } from '#words/garment/garment-measures-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { LoneEntry } from '../../../controls/lone-entry.tsx';
import { readLength } from '../../../lengths/read-length.ts';
import { readCount, readNumber } from '../../../lengths/read-number.ts';

interface Props {
  /** What is typed here. */
  label: string;
  /** What keeping it is called. */
  deed: string;
  kind: keyof typeof READ;
  bench: Bench;
  /** Why what was read can't be kept; undefined where it can. */
  refuses?: (read: number) => string | undefined;
  /** What else can be done instead. */
  children?: ComponentChildren;
  /** In 1/8000 mm, or a number. */
  onKeep: (measured: number) => void;
  onLeave: () => void;
}

const READ = {
  length: (text: string, { unit, decimalMark }: Bench) => readLength(text, unit, decimalMark),
  count: (text: string) => readCount(text),
  number: (text: string) => readNumber(text),
};

/** A number that is typed for itself: what something measures, or how far off it may be. */
export function MeasureEntry(props: Props) {
  const { label, deed, kind, bench, refuses, children, onKeep, onLeave } = props;
  const read = (text: string) => READ[kind](text, bench);
  const faultOf = (text: string) => {
    const reading = read(text);
    if (text.trim() === '') return undefined;
    return reading.ok
      ? refuses?.(reading.value)
      : readWords(label, reading.fault, bench.decimalMark);
  };
  const goodOf = (text: string) => {
    const reading = read(text);
    return reading.ok && refuses?.(reading.value) === undefined ? reading.value : undefined;
  };
  const keep = (text: string) => {
    const good = goodOf(text);
    if (good !== undefined) onKeep(good);
  };
  return (
    <LoneEntry field={{ key: 'measure', kind, label }} {...{ bench, faultOf }} onNext={keep}>
      {(text) => (
        <>
          <button type="button" onClick={onLeave}>
            {words.cancel}
          </button>
          {children}
          <button
            type="button"
            class="main"
            disabled={goodOf(text) === undefined}
            onClick={() => keep(text)}
          >
            {deed}
          </button>
        </>
      )}
    </LoneEntry>
  );
}
