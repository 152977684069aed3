import { garmentFileWords as words } from '#words/garment/garment-file-words.ts';

interface Props {
  kind: 'writing' | 'reading' | 'restoring';
  done: number;
  of: number;
  stop: () => void;
}

/** How far a file is written or read, and how that is stopped. */
export function FileProgress({ kind, done, of, stop }: Props) {
  return (
    <article aria-label={words[kind]}>
      <p>
        {words[kind]}: {words.part(done, of)}
      </p>
      <progress aria-label={words[kind]} value={done} max={Math.max(1, of)} />
      <button type="button" class="plain" onClick={stop}>
        {words.stop}
      </button>
    </article>
  );
}
