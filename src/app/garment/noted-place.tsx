import { Noted } from '../../screens/garment/order/noted.tsx';
import type { HandProps } from './hand-props.ts';
import { noteWhere } from './note-where.ts';
import { usePhoto } from './use-photo.ts';

type Props = Pick<HandProps, 'state' | 'store'> & {
  homes: readonly string[];
  onOpen: (home: string) => void;
};

/** What is noted at the work in hand, and at its next step. */
export function NotedPlace({ homes, ...props }: Props) {
  return (
    <>
      {homes.map((home) => (
        <One key={home} {...props} home={home} />
      ))}
    </>
  );
}

function One({ state, store, home, onOpen }: Omit<Props, 'homes'> & { home: string }) {
  const note = state.answer.sound.notes.get(home);
  const photo = usePhoto(store, note?.photo);
  const where = noteWhere(state.answer, home);
  return (
    <Noted
      {...{ where, text: note?.text, photo: photo || undefined }}
      onOpen={() => onOpen(home)}
    />
  );
}
