import type { FunctionComponent } from 'preact';
import { appWords } from '#words/phone/app-words.ts';
import { photoWords } from '#words/tape/photo-words.ts';
import { useLoaded } from '../../controls/use-loaded.ts';

interface Props<Given> {
  /** The same function each time. */
  load: () => Promise<FunctionComponent<Given>>;
  give: Given;
  onLeave: () => void;
}

/** A part of the screen that is fetched when it is wanted. */
export function Part<Given extends object>({ load, give, onLeave }: Props<Given>) {
  const loaded = useLoaded(load);
  if (loaded.state === 'here') return <loaded.value {...give} />;
  if (loaded.state === 'loading') return <main class="intro">{appWords.loading}</main>;
  return (
    <>
      <main class="intro">
        <p role="alert">{loaded.newer ?? appWords.notLoaded}</p>
      </main>
      <div class="ways">
        <button type="button" onClick={onLeave}>
          {photoWords.back}
        </button>
        <button type="button" class="main" onClick={loaded.again}>
          {appWords.again}
        </button>
      </div>
    </>
  );
}
