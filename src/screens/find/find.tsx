import { findWords as words } from '#words/calculations/find-words.ts';
import { adopt } from '../../controls/adopt.ts';
import { FindList } from '../../controls/find-list.tsx';
import css from './find.css?inline';

adopt(css);

interface Props {
  hand: 'right' | 'left';
  onOpen: (screen: string) => void;
  onLeave: () => void;
}

/** Every calculation there is, at its stage, to be found by name or by what it is for. */
export function FindScreen({ hand, onOpen, onLeave }: Props) {
  return (
    <div class="finding" data-hand={hand}>
      <main>
        <h1>{words.title}</h1>
        <p>{words.about}</p>
      </main>
      <FindList onChoose={onOpen} />
      <button type="button" class="plain" onClick={onLeave}>
        {words.leave}
      </button>
    </div>
  );
}
