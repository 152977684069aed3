import { garmentNoteWords as words } from '#words/garment/garment-note-words.ts';
import { adopt } from '../../../controls/adopt.ts';
import css from './note.css?inline';

adopt(css);

export interface NotedProps {
  /** The step or the work, in words. */
  where: string;
  text: string | undefined;
  /** As it can be shown. */
  photo: string | undefined;
  onOpen: () => void;
}

/** What is noted, on home at the work in hand; a press opens it. */
export function Noted({ where, text, photo, onOpen }: NotedProps) {
  return (
    <button type="button" class="noted" onClick={onOpen}>
      {photo !== undefined && <img src={photo} alt={words.photo(where)} />}
      <span>✎ {text ?? where}</span>
    </button>
  );
}
