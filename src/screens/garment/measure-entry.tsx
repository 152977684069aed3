import { useState } from 'preact/hooks';
import { measuresWords as words } from '#words/garment-measures-words.ts';
import { readWords } from '#words/read-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { FieldTile } from '../../controls/field-tile.tsx';
import { Pad } from '../../controls/pad.tsx';
import type { Fresh } from '../../controls/pad-keys.ts';
import { Rich } from '../../controls/rich.tsx';
import { readLength } from '../../lengths/read-length.ts';
import { readCount } from '../../lengths/read-number.ts';
import type { MeasureKind } from './measure-name.tsx';

interface Props {
  /** What is typed here. */
  label: string;
  /** What keeping it is called. */
  deed: string;
  kind: MeasureKind;
  bench: Bench;
  /** In 1/8000 mm, or how many. */
  onKeep: (measured: number) => void;
  onLeave: () => void;
}

/** A number that is typed for itself: what something measures, or how far off it may be. */
export function MeasureEntry({ label, deed, kind, bench, onKeep, onLeave }: Props) {
  const [{ text, fresh }, setTyped] = useState<{ text: string; fresh: Fresh }>({
    text: '',
    fresh: 'all',
  });
  const field = { key: 'measure', kind, label };
  const reading =
    kind === 'length' ? readLength(text, bench.unit, bench.decimalMark) : readCount(text);
  const wrong = !reading.ok && text.trim() !== '';
  const keep = () => {
    if (reading.ok) onKeep(reading.value);
  };
  return (
    <>
      {!reading.ok && wrong && (
        <p class="warning" id="measure-fault" role="status">
          <Rich text={readWords(field.label, reading.fault, bench.decimalMark)} />
        </p>
      )}
      <div class="actions">
        <button type="button" onClick={onLeave}>
          {words.cancel}
        </button>
        <button type="button" class="main" disabled={!reading.ok} onClick={keep}>
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
