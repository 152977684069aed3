import { madeWords } from '#words/common/made-words.ts';
import { readWords } from '#words/common/read-words.ts';
import { viewWords } from '#words/controls/control-words.ts';
import { followWords } from '#words/controls/follow-words.ts';
import type { Bench } from '../calculation/bench.ts';
import { readLength } from '../lengths/read-length.ts';
import { LoneEntry } from './lone-entry.tsx';

interface Props {
  bench: Bench;
  /** Which mark: "Hook 3"; or what has a length. */
  item: string;
  /** A length is asked for, no place of a mark. */
  alone?: boolean;
  text: string;
  onKeep: (text: string) => void;
  onCancel: () => void;
  /** Reads it off a tape instead, where that is possible. */
  onTape?: (() => void) | undefined;
}

/** Where one mark was really made, or what a length came to. Empty takes the measure away again. */
export function MadeEntry({ bench, item, alone, text: first, onKeep, onCancel, onTape }: Props) {
  const label = alone ? madeWords.came(item) : madeWords.measured(item);
  const faultOf = (text: string) => {
    const reading = readLength(text, bench.unit, bench.decimalMark);
    if (reading.ok || text.trim() === '') return undefined;
    return readWords(label, reading.fault, bench.decimalMark);
  };
  const keep = (text: string) => {
    if (faultOf(text) === undefined) onKeep(text);
  };
  return (
    <LoneEntry
      field={{ key: 'made', kind: 'length', label }}
      {...{ bench, first, faultOf }}
      onNext={keep}
    >
      {(text) => (
        <>
          <button type="button" onClick={onCancel}>
            {followWords.cancel}
          </button>
          {onTape && (
            <button type="button" onClick={onTape}>
              {viewWords.tape}
            </button>
          )}
          <button
            type="button"
            class="main"
            disabled={faultOf(text) !== undefined}
            onClick={() => keep(text)}
          >
            {text.trim() === '' ? followWords.asPlanned : followWords.keep}
          </button>
        </>
      )}
    </LoneEntry>
  );
}
