import { useEffect, useMemo, useState } from 'preact/hooks';
import { garmentHomeWords } from '#words/garment/garment-home-words.ts';
import { garmentShareWords as words } from '#words/garment/garment-share-words.ts';
import { garmentWords } from '#words/garment/garment-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { State } from '../../garment/actions/state.ts';
import { writeBackup } from '../../garment/backup/backup.ts';
import { type SayMade, type ShareWish, sharedGarment } from '../../garment/share/shared.ts';
import { quantityName } from '../../screens/garment/said/names.ts';
import { foundText } from '../../screens/garment/said/value-text.ts';
import { Share, type ShareChoice } from '../../screens/garment/share/share.tsx';
import type { Store } from '../../storage/store.ts';
import { PAPER_SERVICES } from '../paper/paper-services.ts';
import { useHand } from './hand.ts';
import { useNotKept } from './not-kept.ts';
import { LONGEST_LINK, linkOf } from './share-link.ts';

interface Props {
  store: Store;
  bench: Bench;
  /** The garment. */
  id: string;
  onLeave: () => void;
}

/** So many numbers stand in a note; of a long row the rest is counted. */
const MOST_NUMBERS = 12;

/** Nothing of a body, no notes, no times; what is made as notes. */
const LEAST: ShareChoice = { bodies: false, notes: false, times: false, goOn: false };

/** A garment that is to be handed on, once it is read. */
export function SharePlace({ store, bench, id, onLeave }: Props) {
  const { state, failed, trouble } = useHand(store, id);
  const why = useNotKept(failed ?? trouble);
  if (state) return <HandOn {...{ state, bench, onLeave }} />;
  return (
    <div class="waiting">
      <p role={why === '' ? 'status' : 'alert'}>{why || garmentHomeWords.reading}</p>
      <button type="button" class="plain" onClick={onLeave}>
        {garmentWords.back}
      </button>
    </div>
  );
}

function HandOn({ state, bench, onLeave }: Omit<Props, 'store' | 'id'> & { state: State }) {
  const [choice, setChoice] = useState(LEAST);
  const id = useMemo(() => crypto.randomUUID(), []);
  const made = (wish: ShareWish) => sharedGarment(state, wish, id, sayMade(bench));
  const has = useMemo(() => made({ ...LEAST, knownOnly: true }).shared, [state, bench]);
  const shared = useMemo(() => made({ ...choice, knownOnly: true }), [state, choice, bench]);
  const [link, setLink] = useState<string>();
  useEffect(() => {
    let gone = false;
    setLink(undefined);
    void linkOf(shared).then((hash) => gone || setLink(location.href.split('#')[0] + hash));
    return () => {
      gone = true;
    };
  }, [shared]);
  const { name } = state.record;
  const numbers = [...state.answer.sound.quantities].flatMap(([key, { body, measure }]) =>
    body || measure !== undefined ? [] : quantityName(state, key),
  );
  return (
    <Share
      {...{ name, has, choice, numbers, onLeave }}
      hand={bench.hand}
      pending={state.record.pending !== undefined}
      left={shared.shared}
      link={link === undefined ? undefined : { address: link, most: LONGEST_LINK }}
      canShare={typeof navigator.share === 'function'}
      onChoice={setChoice}
      onLink={async (way) => {
        const url = link ?? '';
        if (way === 'copy') return navigator.clipboard.writeText(url);
        return navigator.share({ title: name, url }).catch(calledOff);
      }}
      onFile={async (way) => {
        const text = writeBackup([made({ ...choice, knownOnly: false })]);
        const file = new Blob([text], { type: 'application/json' });
        return (PAPER_SERVICES[way] ?? PAPER_SERVICES.save)(`${name}.json`, file);
      }}
    />
  );
}

function sayMade(bench: Bench): SayMade {
  return (_, kind, numbers) => {
    const said = numbers.slice(0, MOST_NUMBERS).map((one) => foundText(kind, one, bench));
    return words.wasMade(said, numbers.length - said.length);
  };
}

/** Called off by the maker is no fault. */
function calledOff(error: unknown): void {
  if (!(error instanceof DOMException && error.name === 'AbortError')) throw error;
}
