import { useState } from 'preact/hooks';
import { garmentNoteWords as words } from '#words/garment/garment-note-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { adopt } from '../../../controls/adopt.ts';
import { NotDone } from '../../../controls/not-done.tsx';
import type { Note } from '../../../garment/record/record.ts';
import css from './note.css?inline';

adopt(css);

interface Props {
  /** The step or the work, in words. */
  where: string;
  bench: Bench;
  note: Note | undefined;
  /**
   * Its photo as it can be shown; undefined while that is read, null where it isn't on this phone, false
   * where storage doesn't give it.
   */
  photo: string | null | false | undefined;
  /** A photo is being opened. */
  opening: boolean;
  /** What went wrong, in words. */
  said: string | undefined;
  /** Where the disk did not take it: tries again now. */
  onAgain?: (() => void) | undefined;
  onText: (text: string) => void;
  /** A photo that was taken or chosen; what is typed goes with it. */
  onPhoto: (file: File, text: string) => void;
  onTakeOff: (text: string) => void;
  /** Takes the last change here back; undefined where there is none. */
  onUndo: (() => void) | undefined;
  onDone: () => void;
}

/** What the maker wants remembered at a step, or at a work: a text and a photo. */
export function NoteScreen(props: Props) {
  const { where, bench, note, opening, said, onText, onDone } = props;
  const [text, setText] = useState(note?.text ?? '');
  const leave = () => {
    if (text.trim() !== (note?.text ?? '')) onText(text);
    onDone();
  };
  return (
    <div class="note-screen" data-hand={bench.hand}>
      <main>
        <h1>{words.title(where)}</h1>
        <p class="soft">{words.about}</p>
        <NotDone said={said} onAgain={props.onAgain} />
        <label>
          {words.text}
          <textarea rows={4} value={text} onInput={(event) => setText(event.currentTarget.value)} />
        </label>
        <Photo {...props} text={text} />
      </main>
      <div class="deeds">
        {(['take', 'choose'] as const).map((way) => (
          <Chooser key={way} way={way} off={opening} onFile={(file) => props.onPhoto(file, text)} />
        ))}
        {note?.photo !== undefined && (
          <button type="button" class="plain" onClick={() => props.onTakeOff(text)}>
            {words.takeOff}
          </button>
        )}
        {props.onUndo && (
          <button type="button" class="plain" onClick={props.onUndo}>
            {words.undo}
          </button>
        )}
        <button type="button" class="plain main" onClick={leave}>
          {text.trim() === (note?.text ?? '') ? words.back : words.keep}
        </button>
      </div>
    </div>
  );
}

function Photo({ note, photo, opening, where }: Props & { text: string }) {
  if (opening) return <p role="status">{words.opening}</p>;
  if (note?.photo === undefined || photo === undefined) return null;
  if (photo === null) return <p>{words.lost}</p>;
  return photo === false ? <p>{words.unread}</p> : <img src={photo} alt={words.photo(where)} />;
}

interface ChooserProps {
  way: 'take' | 'choose';
  off: boolean;
  onFile: (file: File) => void;
}

/** A photo from the camera, or from those there are. */
function Chooser({ way, off, onFile }: ChooserProps) {
  return (
    <label class="plain">
      {words[way]}
      <input
        type="file"
        class="unseen"
        accept="image/*"
        disabled={off}
        {...(way === 'take' && { capture: 'environment' })}
        onChange={({ currentTarget }) => {
          const [file] = currentTarget.files ?? [];
          currentTarget.value = '';
          if (file) onFile(file);
        }}
      />
    </label>
  );
}
