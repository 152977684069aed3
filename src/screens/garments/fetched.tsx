import type { FunctionComponent } from 'preact';
import { useEffect, useState } from 'preact/hooks';

import { garmentWords as words } from '../../words/garment-words.ts';

interface Props<Part> {
  /** The same function each time. */
  load: () => Promise<FunctionComponent<Part>>;
  /** What the part is given once it is there. */
  give: Part;
  /** The way back, where the part is a whole screen. */
  onLeave?: () => void;
}

/**
 * A part fetched when it is first wanted; one that can't be had can be tried again.
 *
 * The first page has a control like it; using that one here would make the first page
 * hand it out, and it has no bytes to spare for that.
 */
export function Fetched<Part extends object>({ load, give, onLeave }: Props<Part>) {
  const [{ Part, missing }, setLoaded] = useState<{
    Part?: FunctionComponent<Part>;
    missing?: boolean;
  }>({});
  const fetchIt = () => {
    setLoaded({});
    load().then(
      (fetched) => setLoaded({ Part: fetched }),
      () => setLoaded({ missing: true }),
    );
  };
  useEffect(fetchIt, [load]);
  if (Part) return <Part {...give} />;
  return (
    <div class="waiting">
      {missing && (
        <>
          <p role="alert">{words.notFetched}</p>
          <button type="button" class="plain" onClick={fetchIt}>
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
