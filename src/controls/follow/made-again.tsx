import { followWords } from '#words/controls/follow-words.ts';
import { Rich } from '../rich.tsx';

interface Props {
  /** Both as typed, with their units. */
  before: string;
  now: string;
  onLeave: () => void;
  onTake: () => void;
}

/** A mark measured a second time: which measure is right is the maker's to say. */
export function MadeAgain({ before, now, onLeave, onTake }: Props) {
  return (
    <>
      <p class="say warning" role="alert">
        <Rich text={followWords.again(before, now)} />
      </p>
      <div class="actions">
        <button type="button" onClick={onLeave}>
          <Rich text={followWords.leaveFirst(before)} />
        </button>
        <button type="button" class="main" onClick={onTake}>
          <Rich text={followWords.takeSecond(now)} />
        </button>
      </div>
    </>
  );
}
