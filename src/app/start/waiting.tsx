import { appWords } from '#words/phone/app-words.ts';
import type { Loaded } from '../../controls/use-loaded.ts';

interface Props {
  loaded: Loaded<unknown>;
  onHome: () => void;
}

/** What stands where a part of the app is still to come, or can't be had. */
export function Waiting({ loaded, onHome }: Props) {
  if (loaded.state !== 'missing') return <main class="waiting">{appWords.loading}</main>;
  return (
    <main class="waiting">
      <p role="alert">{loaded.newer ?? appWords.notLoaded}</p>
      <button type="button" class="plain" onClick={loaded.again}>
        {appWords.again}
      </button>
      <button type="button" class="plain" onClick={onHome}>
        {appWords.home}
      </button>
    </main>
  );
}
