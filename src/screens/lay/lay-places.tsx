import { layPlacesWords as words } from '#words/garment/garment-lay-places-words.ts';
import { type Bench, tapeStep } from '../../calculation/bench.ts';
import { adopt } from '../../controls/adopt.ts';
import { Rich } from '../../controls/rich.tsx';
import { toMm } from '../../lengths/length.ts';
import css from './lay-places.css?inline';
import type { LayShown, PieceShown, Place } from './lay-shown.ts';
import { placeSaid } from './place-said.ts';

adopt(css);

export interface PlacesProps {
  lay: LayShown;
  bench: Bench;
  current: string | undefined;
  onPick: (key: string) => void;
  onPut: (key: string, by: Place) => void;
  onLetGo: (key: string) => void;
  onBack: () => void;
}

/** The pieces one after another, each with where it lies. */
export function LayPlaces({ lay, bench, current, onPick, onPut, onLetGo, onBack }: PlacesProps) {
  const { pieces } = lay;
  const at = Math.max(
    0,
    pieces.findIndex(({ key }) => key === current),
  );
  const piece = pieces[at];
  if (!piece) return null;
  const last = at === pieces.length - 1;
  const go = (to: number) => onPick(pieces[(to + pieces.length) % pieces.length]?.key ?? '');
  return (
    <div class="lay-places">
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <section class="scroll" tabIndex={0} aria-label={words.places}>
        <div aria-live="polite">
          <h2>
            {words.named(at + 1, piece.name)} <small>{words.of(at + 1, pieces.length)}</small>
          </h2>
          {placeSaid(piece, lay, bench).map((said) => (
            <p class="where" key={said}>
              <Rich text={said} />
            </p>
          ))}
          {piece.stays && <p>{piece.stays === 'cut' ? words.isCut : words.isPut}</p>}
        </div>
        {piece.stays !== 'cut' && <Move {...{ piece, lay, bench, onPut, onLetGo }} />}
        <p class="soft">{words.hint}</p>
        <ol class="list" aria-label={words.list}>
          {pieces.map((one, i) => (
            <li key={one.key}>
              <button
                type="button"
                aria-current={one.key === piece.key}
                onClick={() => onPick(one.key)}
              >
                <b>{words.named(i + 1, one.name)}</b>
                <small>
                  <Rich text={[...staysSaid(one), ...placeSaid(one, lay, bench)].join(' · ')} />
                </small>
              </button>
            </li>
          ))}
        </ol>
      </section>
      <nav class="actions" aria-label={words.places}>
        <button type="button" onClick={onBack}>
          {words.back}
        </button>
        <button type="button" onClick={() => go(at - 1)}>
          {words.before}
        </button>
        <button type="button" class="main" onClick={() => go(at + 1)}>
          {last ? words.first : words.next}
        </button>
      </nav>
    </div>
  );
}

const staysSaid = ({ stays }: PieceShown) => (stays ? [words.stays[stays]] : []);

/** Ten graduations of a millimetre tape, eight of a sixteenth's. */
const STEPS = 8;

type MoveProps = Pick<PlacesProps, 'lay' | 'bench' | 'onPut' | 'onLetGo'> & { piece: PieceShown };

/** Moves a piece without dragging it. */
function Move({ piece, bench, onPut, onLetGo }: MoveProps) {
  const step = toMm(tapeStep(bench)) * STEPS;
  const put = (along: number, across: number) => onPut(piece.key, [along * step, across * step]);
  return (
    <details>
      <summary>{words.move}</summary>
      <div class="moves">
        <button type="button" onClick={() => put(-1, 0)}>
          ↑ {words.moves.back}
        </button>
        <button type="button" onClick={() => put(1, 0)}>
          ↓ {words.moves.on}
        </button>
        {!piece.onFold && (
          <>
            <button type="button" onClick={() => put(0, -1)}>
              ← {words.moves.in}
            </button>
            <button type="button" onClick={() => put(0, 1)}>
              → {words.moves.out}
            </button>
          </>
        )}
        {piece.stays === 'put' ? (
          <button type="button" onClick={() => onLetGo(piece.key)}>
            {words.letGo}
          </button>
        ) : (
          <button type="button" onClick={() => put(0, 0)}>
            {words.hold}
          </button>
        )}
      </div>
    </details>
  );
}
