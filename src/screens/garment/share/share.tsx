import { useState } from 'preact/hooks';
import { garmentShareWords as words } from '#words/garment/garment-share-words.ts';
import { adopt } from '../../../controls/adopt.ts';
import type { LeftOut, ShareWish } from '../../../garment/share/shared.ts';
import css from './share.css?inline';

adopt(css);

/** What the maker chooses of what goes along. */
export type ShareChoice = Omit<ShareWish, 'knownOnly'>;

interface Props {
  name: string;
  hand: 'right' | 'left';
  /** Something is being typed. */
  pending: boolean;
  /** What there is to be left out. */
  has: LeftOut;
  choice: ShareChoice;
  /** What is left out as it is chosen. */
  left: LeftOut;
  /** The garment’s numbers that go along and aren’t said to be of a body, by name. */
  numbers: readonly string[];
  /** Undefined while it is being made. */
  link: { address: string; most: number } | undefined;
  canShare: boolean;
  onChoice: (choice: ShareChoice) => void;
  onLink: (way: 'copy' | 'share') => Promise<unknown>;
  onFile: (way: 'save' | 'share') => Promise<unknown>;
  onLeave: () => void;
}

/** What goes along when a garment is handed on, and how it goes. */
export function Share(props: Props) {
  const { has, choice, left, onChoice } = props;
  const [said, setSaid] = useState<string>();
  const hand = (going: Promise<unknown>, done?: string) =>
    void going.then(
      () => setSaid(done),
      () => setSaid(words.failed),
    );
  const tick = (key: 'bodies' | 'notes' | 'times', label: string) => (
    <label>
      <input
        type="checkbox"
        checked={choice[key]}
        onChange={() => onChoice({ ...choice, [key]: !choice[key] })}
      />
      {label}
    </label>
  );
  return (
    <div class="hand-on" data-hand={props.hand}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <main tabIndex={0}>
        <h1>{words.of(props.name)}</h1>
        <p>{words.about}</p>
        {props.pending && <p class="warning">{words.pending}</p>}
        {said !== undefined && (
          <p role="status">
            <b>{said}</b>
          </p>
        )}
        <fieldset>
          <legend>{words.along}</legend>
          {has.bodies > 0 && tick('bodies', words.bodies(has.bodies))}
          {has.notes > 0 && tick('notes', words.notes(has.notes))}
          {tick('times', words.times)}
        </fieldset>
        {has.facts > 0 && (
          <fieldset>
            <legend>{words.made}</legend>
            {(['notes', 'goOn'] as const).map((way) => (
              <label key={way}>
                <input
                  type="radio"
                  name="made"
                  checked={choice.goOn === (way === 'goOn')}
                  onChange={() => onChoice({ ...choice, goOn: way === 'goOn' })}
                />
                {words.madeWays[way]}
              </label>
            ))}
          </fieldset>
        )}
        {props.numbers.length > 0 && <p>{numbersSaid(props.numbers)}</p>}
        {left.typed > 0 && <p>{words.typedInPlace(left.typed)}</p>}
        {left.photos > 0 && <p>{words.photosStay}</p>}
        <p>{words.logStays}</p>
        <Link {...props} onHand={hand} />
        <h2>{words.file}</h2>
        <div class="keys">
          <button type="button" class="plain main" onClick={() => hand(props.onFile('save'))}>
            {words.save}
          </button>
          {props.canShare && (
            <button type="button" class="plain" onClick={() => hand(props.onFile('share'))}>
              {words.share}
            </button>
          )}
        </div>
      </main>
      <nav class="actions" aria-label={words.title}>
        <button type="button" onClick={props.onLeave}>
          {words.back}
        </button>
      </nav>
    </div>
  );
}

/** So many are named; the rest is counted. */
const NAMED = 8;

function numbersSaid(names: readonly string[]): string {
  const named = names.slice(0, NAMED);
  return words.numbers(named, names.length - named.length);
}

type LinkProps = Pick<Props, 'link' | 'canShare' | 'onLink'> & {
  onHand: (going: Promise<unknown>, done?: string) => void;
};

/** The link with how long it is; one that is too long says so, and leaves the file. */
function Link({ link, canShare, onLink, onHand }: LinkProps) {
  if (!link) return null;
  const { address, most } = link;
  const isLong = address.length > most;
  return (
    <>
      <h2>{words.link}</h2>
      <p>{(isLong ? words.linkLong : words.linkIs)(address.length, most)}</p>
      {!isLong && (
        <div class="keys">
          <button
            type="button"
            class="plain main"
            onClick={() => onHand(onLink('copy'), words.copied)}
          >
            {words.copy}
          </button>
          {canShare && (
            <button type="button" class="plain" onClick={() => onHand(onLink('share'))}>
              {words.shareLink}
            </button>
          )}
        </div>
      )}
    </>
  );
}
