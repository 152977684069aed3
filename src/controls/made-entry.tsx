import { useState } from 'preact/hooks';
import { madeWords } from '#words/common/made-words.ts';
import { readWords } from '#words/common/read-words.ts';
import { viewWords } from '#words/controls/control-words.ts';
import { followWords } from '#words/controls/follow-words.ts';
import type { Bench } from '../calculation/bench.ts';
import { readLength } from '../lengths/read-length.ts';
import { FieldTile } from './field-tile.tsx';
import { Pad } from './pad.tsx';
import type { Fresh } from './pad-keys.ts';
import { Rich } from './rich.tsx';

interface Props {
  bench: Bench;
  /** Which mark: "Hook 3". */
  item: string;
  text: string;
  onKeep: (text: string) => void;
  onCancel: () => void;
  /** Reads it off a tape instead, where that is possible. */
  onTape?: (() => void) | undefined;
}

/** Where one mark was really made. Empty takes the measure away again. */
export function MadeEntry({ bench, item, text: first, onKeep, onCancel, onTape }: Props) {
  const [{ text, fresh }, setTyped] = useState<{ text: string; fresh: Fresh }>({
    text: first,
    fresh: 'all',
  });
  const field = { key: 'made', kind: 'length', label: madeWords.measured(item) } as const;
  const reading = readLength(text, bench.unit, bench.decimalMark);
  const empty = text.trim() === '';
  const keep = () => {
    if (empty || reading.ok) onKeep(text);
  };
  return (
    <>
      {!empty && !reading.ok && (
        <p class="warning" id="made-fault" role="status">
          <Rich text={readWords(field.label, reading.fault, bench.decimalMark)} />
        </p>
      )}
      <div class="actions">
        <button type="button" onClick={onCancel}>
          {followWords.cancel}
        </button>
        {onTape && (
          <button type="button" onClick={onTape}>
            {viewWords.tape}
          </button>
        )}
        <button type="button" class="main" disabled={!empty && !reading.ok} onClick={keep}>
          {empty ? followWords.asPlanned : followWords.keep}
        </button>
      </div>
      <div class="tiles one">
        <FieldTile
          field={field}
          text={text}
          bench={bench}
          current
          wrong={!empty && !reading.ok ? 'made-fault' : undefined}
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
