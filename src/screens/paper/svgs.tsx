import { useState } from 'preact/hooks';

import { paperWords as words } from '#words/paper/paper-words.ts';
import type { PaperServices } from '../../controls/paper-services.ts';
import type { Part } from './choices.ts';

interface Props {
  /** Runs and drawings, each one of its own. */
  parts: readonly Part[];
  save: PaperServices['save'];
}

/** A key for each run and each drawing that hands it over as SVG. */
export function Svgs({ parts, save }: Props) {
  const [failed, setFailed] = useState(false);
  if (parts.length === 0) return null;
  const hand = (part: Part) => {
    setFailed(false);
    import('./svg-file.ts')
      .then((file) => save(`${part.label}.svg`, file.svgFile(part)))
      .catch(() => setFailed(true));
  };
  return (
    <>
      <p>{words.svgs}</p>
      {failed && (
        <p class="warning" role="alert">
          {words.noSvg}
        </p>
      )}
      {parts.map((part) => (
        <button type="button" key={part.value} onClick={() => hand(part)}>
          {words.svg(part.label)}
        </button>
      ))}
    </>
  );
}
