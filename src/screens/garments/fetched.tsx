import type { ComponentChildren, FunctionComponent } from 'preact';
import { garmentWords as words } from '#words/garment/garment-words.ts';
import { useLoaded } from '../../controls/use-loaded.ts';

interface Props<Part> {
  /** The same function each time. */
  load: () => Promise<FunctionComponent<Part>>;
  /** What the part is given once it is there. */
  give: Part;
  /** The way back, where the part is a whole screen. */
  onLeave?: () => void;
  /** What is shown until it is there, in place of the way back. */
  meanwhile?: ComponentChildren;
}

/** A part fetched when it is first wanted; one that can't be had can be tried again. */
export function Fetched<Part extends object>({ load, give, onLeave, meanwhile }: Props<Part>) {
  const loaded = useLoaded(load);
  if (loaded.state === 'here') return <loaded.value {...give} />;
  if (meanwhile && loaded.state === 'loading') return <>{meanwhile}</>;
  return (
    <div class="waiting">
      {loaded.state === 'missing' && (
        <>
          <p role="alert">{loaded.newer ?? words.notFetched}</p>
          <button type="button" class="plain" onClick={loaded.again}>
            {words.again}
          </button>
        </>
      )}
      {onLeave && (
        <button type="button" class="plain" onClick={onLeave}>
          {words.back}
        </button>
      )}
    </div>
  );
}
