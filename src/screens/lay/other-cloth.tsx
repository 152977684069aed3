import { layClothWords as words } from '#words/garment/garment-lay-cloth-words.ts';
import { Rich } from '../../controls/rich.tsx';

/** What other cloth would take: asked for by a press. */
export interface Others {
  looking: boolean;
  lines: readonly string[];
}

export interface OtherProps {
  others: Others;
  onOthers: () => void;
  onBack: () => void;
}

/** What other cloth would take, line by line as it is looked for. */
export function OtherCloth({ others, onOthers, onBack }: OtherProps) {
  const { looking, lines } = others;
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <section class="lay-others scroll" tabIndex={0} aria-label={words.othersTitle}>
        <h2>{words.othersTitle}</h2>
        <p class="soft">{words.othersAbout}</p>
        <p class="soft">{words.othersWidths}</p>
        <ul aria-live="polite">
          {lines.map((line) => (
            <li key={line}>
              <Rich text={line} />
            </li>
          ))}
          {looking && <li>{words.looking}</li>}
        </ul>
      </section>
      <nav class="actions" aria-label={words.othersTitle}>
        <button type="button" onClick={onBack}>
          {words.back}
        </button>
        <button type="button" class="main" disabled={looking} onClick={onOthers}>
          {words.ask}
        </button>
      </nav>
    </>
  );
}
