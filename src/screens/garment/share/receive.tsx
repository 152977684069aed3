import { garmentReceiveWords as words } from '#words/garment/garment-share-words.ts';
import { adopt } from '../../../controls/adopt.ts';
import type { Garment } from '../../../garment/record/record.ts';
import { soundOf } from '../../../garment/record/sound.ts';
import type { Handed, HandedFault } from '../../../garment/share/read-shared.ts';
import css from './share.css?inline';

adopt(css);

/** More names than this are counted. */
const MOST_NAMES = 40;

export type ReceiveFault = HandedFault | 'none';

/** What came along, or why nothing can be taken of it; undefined while it is read. */
export type Received =
  | { ok: true; handed: Handed; damaged: boolean }
  | { ok: false; fault: ReceiveFault };

interface Props {
  hand: 'right' | 'left';
  received: Received | undefined;
  /** Why it could not be kept. */
  said: string | undefined;
  onKeep: (handed: Handed) => void;
  onLeave: () => void;
}

/** A garment that was handed on: looked at first, and kept only on a press. */
export function Receive({ hand, received, said, onKeep, onLeave }: Props) {
  return (
    <div class="hand-on" data-hand={hand}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <main tabIndex={0}>
        {received?.ok ? (
          <Shown {...received} />
        ) : (
          <>
            <h1>{words.title}</h1>
            <p role={received ? 'alert' : 'status'}>
              {received ? words.faults[received.fault] : words.reading}
            </p>
          </>
        )}
        {said !== undefined && <p role="alert">{said}</p>}
      </main>
      <nav class="actions" aria-label={words.title}>
        <button type="button" onClick={onLeave}>
          {words.leave}
        </button>
        {received?.ok && (
          <button type="button" class="main" onClick={() => onKeep(received.handed)}>
            {words.keep}
          </button>
        )}
      </nav>
    </div>
  );
}

function Shown({ handed: { garment, left }, damaged }: { handed: Handed; damaged: boolean }) {
  const { works, quantities } = soundOf(garment);
  const named = [...works.values(), ...quantities.values()].map(({ name }) => name.trim());
  const names = named.filter((name) => name !== '');
  const more = names.length - MOST_NAMES;
  return (
    <>
      <h1>{garment.name}</h1>
      <p>{words.about}</p>
      {garment.invented && <p>{words.invented}</p>}
      {damaged && <p class="warning">{words.damaged}</p>}
      <p>
        <b>{words.holds(holdsOf(garment, works.size, quantities.size))}</b>
      </p>
      <ul>
        {names.slice(0, MOST_NAMES).map((name, i) => (
          <li key={i}>{name}</li>
        ))}
        {more > 0 && <li>{words.more(more)}</li>}
      </ul>
      {(['bodies', 'typed', 'notes', 'photos', 'facts'] as const).map(
        (key) => left[key] > 0 && <p key={key}>{words.left[key](left[key])}</p>,
      )}
    </>
  );
}

function holdsOf({ facts, notes }: Garment, works: number, measures: number): string[] {
  const [made, noted] = [facts, notes].map((kept) => Object.keys(Object(kept)).length);
  return [
    ...(works > 0 ? [words.works(works)] : []),
    ...(measures > 0 ? [words.measures(measures)] : []),
    ...(made ? [words.made(made)] : []),
    ...(noted ? [words.notes(noted)] : []),
  ];
}
