import { useState } from 'preact/hooks';
import { photoFaultWords } from '#words/tape/photo-words.ts';
import { openPhoto } from '../../camera/photo.ts';
import { smallJpeg } from '../../camera/small-jpeg.ts';
import { MOST_PHOTO } from '../../garment/record/photos.ts';
import type { Note } from '../../garment/record/record.ts';
import { NoteScreen } from '../../screens/garment/order/note.tsx';
import { keepPhoto, sweepPhotos } from '../../storage/garment-photos.ts';
import { notKept } from './deeds.ts';
import type { HandProps } from './hand-props.ts';
import { noteWhere } from './note-where.ts';
import { usePhoto } from './use-photo.ts';

type Props = HandProps & {
  /** Of the step, or of the work. */
  home: string;
  onDone: () => void;
};

/** A note of the garment in hand. Its photo is kept beside the garment before the note names it. */
export function NotePlace({ state, bench, hand, store, said, onAgain, home, onDone }: Props) {
  const note = state.answer.sound.notes.get(home);
  const photo = usePhoto(store, note?.photo);
  const [opening, setOpening] = useState(false);
  const [fault, setFault] = useState<string>();
  const keep = ({ text = '', photo: id }: Note) => {
    const next: Note = { ...(text.trim() && { text }), ...(id !== undefined && { photo: id }) };
    hand.act({ do: 'note', home, note: next, now: Date.now() });
  };
  const takePhoto = async (file: File, text: string) => {
    setOpening(true);
    const taken = await kept(store, file);
    setOpening(false);
    setFault('said' in taken ? taken.said : undefined);
    if ('id' in taken) keep({ text, photo: taken.id });
  };
  const last = state.log.at(-1);
  const isHere = last?.what === 'note' && last.edits[0]?.slot[1] === home;
  return (
    <NoteScreen
      key={note?.text}
      {...{ bench, note, photo, opening, onDone }}
      where={noteWhere(state.answer, home)}
      said={fault ?? said}
      onAgain={fault === undefined ? onAgain : undefined}
      onText={(text) => keep({ ...note, text })}
      onPhoto={(file, text) => void takePhoto(file, text)}
      onTakeOff={(text) => keep({ text })}
      onUndo={isHere ? () => hand.act({ do: 'undo', change: last.id, now: Date.now() }) : undefined}
    />
  );
}

/** A photo made small and kept under a new id; or why not, in words. */
async function kept(store: Props['store'], file: File): Promise<{ id: string } | { said: string }> {
  const opened = await openPhoto(file);
  if (!opened.ok) return { said: photoFaultWords[opened.fault] };
  const jpeg = await smallJpeg(opened.value.picture, MOST_PHOTO).then(textOf, () => undefined);
  if (jpeg === undefined) return { said: photoFaultWords['too-large'] };
  try {
    const id = crypto.randomUUID();
    await keepPhoto(store, id, jpeg, Date.now());
    // What is left over is no one's concern: it is looked for again with the next photo.
    sweepPhotos(store, Date.now()).catch(() => undefined);
    return { id };
  } catch (error) {
    return { said: await notKept(error) };
  }
}

function textOf(blob: Blob): Promise<string> {
  return new Promise((read, failed) => {
    const reader = new FileReader();
    reader.onload = () => read(String(reader.result));
    reader.onerror = () => failed(reader.error);
    reader.readAsDataURL(blob);
  });
}
