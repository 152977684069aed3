import { viewWords } from '#words/controls/control-words.ts';
import type { Field, Work } from '../calculation/calculation.ts';
import type { Page } from '../calculation/page.ts';
import { isLength } from './pad-keys.ts';

interface Props {
  work: Work;
  padOpen: boolean;
  onPad: () => void;
  /** There is something to count. */
  counts: true | undefined;
  /** The field that is typed into; a length can also be read off a tape. */
  field: Field | undefined;
  onMode: (mode: string, set?: Page) => void;
  onLeave: () => void;
}

/** Between answer and fields: the way back, the marks to follow, the keys. */
export function Actions(props: Props) {
  const { work, padOpen, onPad, counts, field, onMode, onLeave } = props;
  return (
    <nav class="actions" aria-label={viewWords.actions}>
      <button type="button" onClick={onLeave}>
        {viewWords.leave}
      </button>
      <button type="button" disabled={!work.ok} onClick={() => onMode('keep')}>
        {viewWords.keep}
      </button>
      {field && isLength(field.kind) && (
        <button type="button" onClick={() => onMode('tape', { taped: field.key })}>
          {viewWords.tape}
        </button>
      )}
      {counts && (
        <button type="button" class="main" onClick={() => onMode('count')}>
          {viewWords.count}
        </button>
      )}
      {work.ok && work.answer.runs.some(({ run }) => run.marks[1]) && (
        <button type="button" class="main" onClick={() => onMode('follow')}>
          {viewWords.follow}
        </button>
      )}
      <button type="button" aria-expanded={padOpen} onClick={onPad}>
        {padOpen ? viewWords.padDown : viewWords.padUp}
      </button>
    </nav>
  );
}
