import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { readWords } from '#words/common/read-words.ts';
import { measuresWords as words } from '#words/garment/garment-measures-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { FieldTile } from '../../../controls/field-tile.tsx';
import { Pad } from '../../../controls/pad.tsx';
import type { Fresh } from '../../../controls/pad-keys.ts';
import { Rich } from '../../../controls/rich.tsx';
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
  const [{ text, fresh }, setTyped] = useState<{ text: string; fresh: Fresh }>({
    text: '',
    fresh: 'all',
  });
  const field = { key: 'measure', kind, label };
  const reading = READ[kind](text, bench);
  const why = reading.ok
    ? refuses?.(reading.value)
    : readWords(label, reading.fault, bench.decimalMark);
  const wrong = why !== undefined && text.trim() !== '';
  const good = reading.ok && why === undefined;
  const keep = () => {
    if (good) onKeep(reading.value);
  };
  return (
    <>
      {wrong && (
        <p class="warning" id="measure-fault" role="status">
          <Rich text={why} />
        </p>
      )}
      <div class="actions">
        <button type="button" onClick={onLeave}>
          {words.cancel}
        </button>
        {children}
        <button type="button" class="main" disabled={!good} onClick={keep}>
          {deed}
        </button>
      </div>
      <div class="tiles one">
        <FieldTile
          field={field}
          text={text}
          bench={bench}
          current
          wrong={wrong ? 'measure-fault' : undefined}
          onText={(_, typed) => setTyped({ text: typed, fresh: 'no' })}
          onPick={() => undefined}
          onNext={keep}
        />
      </div>
      {bench.keys === 'pad' && (
        <Pad
          field={field}
          text={text}
          fresh={fresh}
          bench={bench}
          onText={(typed, then) => setTyped({ text: typed, fresh: then })}
          onNext={keep}
        />
      )}
    </>
  );
}
