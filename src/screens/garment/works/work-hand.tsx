import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import { later } from '../../../controls/parts.tsx';
import { steady } from '../../../controls/steady.tsx';
import { partsOf } from '../../../garment/actions/typed-parts.ts';
import type { FieldPlace } from '../../../garment/actions/typing.ts';
import { sideName } from '../said/names.ts';
import type { OpenField } from './open-work.ts';
import type { SaysStale } from './says-stale.ts';
import type { WorkInHand } from './use-work.ts';
import { SourceChips, WorkFields, WorkKeys } from './work-fields.tsx';
import { LACKS_ID } from './work-reading.tsx';
import type { Lacks } from './work-said.ts';

/** Fetched when the first of them is wanted. */
const WorkPanel = later(() => import('./work-panel.tsx').then((part) => part.WorkPanel));

export interface WorkWays {
  Stale: SaysStale;
  onDone: () => void;
  /** Says how what is made otherwise goes on. */
  onDecide?: ((home: string) => void) | undefined;
  onFollow?: (() => void) | undefined;
  /** Reads a field off a tape. */
  onRead?: ((place: FieldPlace) => void) | undefined;
}

type Props = Omit<WorkWays, 'onDecide'> & {
  hand: WorkInHand;
  lacks: Lacks | undefined;
  /** Whether there is a drawing. */
  drawn: boolean;
  /** The fields that stand on it, with a space between: a text, which is the same when they are. */
  placed: string;
};

/** What the thumb has of an open work: its sides, the ways on, its fields and their keys. */
export const WorkHand = steady(function Hand(props: Props) {
  const { hand, lacks, drawn, placed } = props;
  const { state, open, bench, typing, panel, planned, pending, awaited } = hand;
  const at = typing.field;
  if (panel && panel.of !== 'links') return <WorkPanel hand={hand} onOff={props.onDone} />;
  const wrong = lacks?.field !== undefined && !pending && !lacks.soft ? lacks.field : undefined;
  return (
    <>
      {!at && <Sides hand={hand} />}
      {!at && <Actions {...props} />}
      {open && (
        <WorkFields
          {...{ state, open, bench, typing }}
          refusals={hand.refusals}
          more={hand.more || !(drawn || awaited)}
          placed={new Set(placed.split(' '))}
          Stale={props.Stale}
          odd={planned?.odd}
          wrong={wrong === undefined ? undefined : { field: wrong, id: LACKS_ID }}
        />
      )}
      {at && (
        <div class="of-field" data-hand={bench.hand}>
          <Sources hand={hand} at={at} onRead={props.onRead} />
          <button type="button" class="done" onClick={typing.close}>
            {words.done}
          </button>
        </div>
      )}
      {at && panel && <WorkPanel hand={hand} onOff={props.onDone} />}
      {at && !panel && <WorkKeys one={at} bench={bench} typing={typing} />}
    </>
  );
});

/** Which of its sides a work is open at. */
function Sides({ hand: { sides, side, chooseSide } }: { hand: WorkInHand }) {
  if (sides.length < 2) return null;
  return (
    <fieldset class="chips" aria-label={words.sides}>
      {sides.map((one) => (
        <button type="button" key={one} aria-pressed={one === side} onClick={() => chooseSide(one)}>
          {sideName(one)}
        </button>
      ))}
    </fieldset>
  );
}

function Actions({ hand: { more, setMore }, onDone, onFollow }: Props) {
  return (
    <nav class="actions" aria-label={words.actions}>
      <button type="button" onClick={onDone}>
        {words.done}
      </button>
      <button type="button" aria-expanded={more} onClick={() => setMore(!more)}>
        {more ? words.less : words.more}
      </button>
      {onFollow && (
        <button type="button" class="main" onClick={onFollow}>
          {words.follow}
        </button>
      )}
    </nav>
  );
}

interface SourcesProps {
  hand: WorkInHand;
  at: OpenField;
  onRead: WorkWays['onRead'];
}

function Sources({ hand, at, onRead }: SourcesProps) {
  const { panel, setPanel, onDo } = hand;
  const { place, taken } = at;
  return (
    <SourceChips
      one={at}
      listed={panel !== undefined}
      onTyped={() => {
        setPanel(undefined);
        if (taken.length > 0) onDo({ do: 'unlink', place });
      }}
      onList={() => setPanel(panel ? undefined : { of: 'links' })}
      onRead={onRead && (() => onRead(place))}
      ownHere={hand.side === '' ? undefined : ownHere(hand, at)}
    />
  );
}

/** A number of this side alone, beginning with that of all sides; or that of all sides again. */
function ownHere({ side, bench, onDo }: WorkInHand, { place, text, taken, own }: OpenField) {
  if (own) return { words: words.asOthers, deed: () => onDo({ do: 'share', place }) };
  const parts = partsOf(text, taken, bench);
  const here = { work: place.work, field: place.field, side };
  const deed = () => onDo({ do: 'choose', place: here, parts });
  return { words: words.onlyHere(sideName(side)), deed };
}
