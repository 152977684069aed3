import { viewWords } from '../words/control-words.ts';
import type { Work } from './calculation.ts';

interface Props {
  work: Work;
  padOpen: boolean;
  onPad: () => void;
  onFollow: (run: number) => void;
  /** Starts counting, where there is something to count. */
  onCount: (() => void) | undefined;
  onKeep: () => void;
  onLeave: () => void;
}

/** Between answer and fields: the way back, the marks to follow, the keys. */
export function Actions({ work, padOpen, onPad, onFollow, onCount, onKeep, onLeave }: Props) {
  const runs = work.ok ? work.answer.runs : [];
  return (
    <nav class="actions" aria-label={viewWords.actions}>
      <button type="button" onClick={onLeave}>
        {viewWords.leave}
      </button>
      <button type="button" disabled={!work.ok} onClick={onKeep}>
        {viewWords.keep}
      </button>
      {onCount && (
        <button type="button" class="main" onClick={onCount}>
          {viewWords.count}
        </button>
      )}
      {runs
        .filter((named) => named.run.marks.length > 1)
        .map((named, i) => (
          <button type="button" key={named.name} class="main" onClick={() => onFollow(i)}>
            {runs.length === 1 ? viewWords.follow : viewWords.followOne(named.name)}
          </button>
        ))}
      <button type="button" aria-expanded={padOpen} onClick={onPad}>
        {padOpen ? viewWords.padDown : viewWords.padUp}
      </button>
    </nav>
  );
}
