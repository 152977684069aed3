import type { ComponentChildren } from 'preact';

import { homeWords, SCREEN_WORDS } from '#words/phone/home-words.ts';

interface Props {
  hand: 'right' | 'left';
  /** The address that led nowhere, if one did. */
  unknown: string | undefined;
  onOpen: (screen: string) => void;
  /** What a phone that is new is offered, in view without a scroll and in reach of a thumb. */
  first: ComponentChildren;
  /** How the app stands on this phone. */
  children: ComponentChildren;
}

/** Where everything starts: what can be worked out, under the thumb. */
export function Home({ hand, unknown, onOpen, first, children }: Props) {
  return (
    <div class="home" data-hand={hand}>
      <main>
        <h1>{homeWords.name}</h1>
        <p class="lead">{homeWords.lead}</p>
        <p>{homeWords.about}</p>
        {unknown !== undefined && <p class="warning">{homeWords.unknown(unknown)}</p>}
      </main>
      {first}
      <nav aria-label={homeWords.calculations}>
        {Object.entries(SCREEN_WORDS).map(([id, title]) => (
          <a
            key={id}
            href={`#/${id}`}
            onClick={(event) => {
              event.preventDefault();
              onOpen(id);
            }}
          >
            {title}
          </a>
        ))}
      </nav>
      {/* Below what is pressed: it comes and goes by itself, and must move nothing. */}
      <footer>{children}</footer>
    </div>
  );
}
