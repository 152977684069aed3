import { garmentWorkWords as words } from '#words/garment/garment-work-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { ChoiceTile } from '../../../controls/choice-tile.tsx';
import { Choices } from '../../../controls/choices.tsx';
import { FieldTile } from '../../../controls/field-tile.tsx';
import { Pad } from '../../../controls/pad.tsx';
import { isLength } from '../../../controls/pad-keys.ts';
import type { State } from '../../../garment/actions/state.ts';
import type { FieldPlace } from '../../../garment/actions/typing.ts';
import { laysTaken } from '../../../garment/materials/lays-taken.ts';
import { endsInLink, forPad, fromPad } from './link-text.ts';
import { LinkTile } from './link-tile.tsx';
import type { OpenField, OpenWork } from './open-work.ts';
import type { SaysStale } from './says-stale.ts';
import { namesIn } from './taken-text.ts';
import type { useTyping } from './use-typing.ts';

type Typing = ReturnType<typeof useTyping>;

interface ListProps {
  state: State;
  open: OpenWork;
  bench: Bench;
  typing: Typing;
  /** The fields that stand on the drawing above: seen there, and here when they are typed into. */
  placed: ReadonlySet<string>;
  /** Those that have no place there are wanted, too. */
  more: boolean;
  odd: Readonly<Record<string, string>> | undefined;
  /** How often something typed was refused: the field that is typed into then shows what stands there. */
  refusals: number;
  /** The id of the sentence that says what is wrong, and the field it is about. */
  wrong: { field: string; id: string } | undefined;
  Stale: SaysStale;
}

/** The fields as one list: a keyboard and a screen reader go through all, an eye sees those not drawn above. */
export function WorkFields(props: ListProps) {
  const { state, open, bench, typing, placed, more, odd, wrong, refusals, Stale } = props;
  const at = typing.field?.field.key;
  const isSeen = ({ field }: OpenField) => {
    if (at !== undefined) return field.key === at;
    return field.kind === 'choice' || (more && !placed.has(field.key));
  };
  return (
    <fieldset class="tiles" aria-label={words.fields}>
      {open.fields.map((one) => {
        const { field, text, taken } = one;
        const tile = {
          ...{ field, text, bench, current: field.key === at, odd: odd?.[field.key] },
          ...{ onText: typing.type, onPick: typing.pick, onNext: typing.next },
          wrong: wrong?.field === field.key ? wrong.id : undefined,
        };
        return (
          <div
            key={`${field.key} ${field.key === at ? refusals : 0}`}
            class={isSeen(one) ? 'seen' : 'unseen'}
          >
            {field.kind === 'choice' ? (
              <ChoiceTile {...tile} />
            ) : taken.length > 0 ? (
              <LinkTile {...tile} names={namesIn(state, one, bench)}>
                {laysTaken(state.answer.sound, taken).map((lay) => (
                  <Stale key={lay} {...{ state, bench, lay }} />
                ))}
              </LinkTile>
            ) : (
              <FieldTile {...tile} />
            )}
          </div>
        );
      })}
    </fieldset>
  );
}

interface KeysProps {
  one: OpenField<FieldPlace>;
  bench: Bench;
  typing: Typing;
}

/** What a field is typed with: the pad, or the ways it can be. */
export function WorkKeys({ one: { field, text }, bench, typing }: KeysProps) {
  if (field.kind === 'choice') {
    return (
      <Choices
        field={field}
        chosen={text}
        hand={bench.hand}
        onChoose={(value) => typing.type(field.key, value, 'all')}
        onNext={typing.next}
      />
    );
  }
  if (bench.keys === 'phone' || field.kind === 'text') return null;
  const { fresh } = typing;
  return (
    <Pad
      field={field}
      text={forPad(text)}
      fresh={fresh !== 'all' && endsInLink(text) ? 'number' : fresh}
      bench={bench}
      onText={(typed, then) => typing.type(field.key, fromPad(text, typed), then)}
      onNext={typing.next}
    />
  );
}

interface SourceProps {
  one: OpenField;
  listed: boolean;
  onTyped: () => void;
  onList: () => void;
  onRead: (() => void) | undefined;
  /** Gives this side a number of its own, or takes that away again; undefined where there are no sides. */
  ownHere: { words: string; deed: () => void } | undefined;
}

/** Where the number of a field comes from. */
export function SourceChips({ one, listed, onTyped, onList, onRead, ownHere }: SourceProps) {
  const { field, taken } = one;
  if (field.kind === 'choice' || field.kind === 'text') return null;
  const linked = taken.length > 0;
  return (
    <fieldset class="chips" aria-label={words.source}>
      <button type="button" aria-pressed={!linked} onClick={onTyped}>
        {words.typed}
      </button>
      <button type="button" aria-pressed={linked} aria-expanded={listed} onClick={onList}>
        {words.fromGarment}
      </button>
      {onRead && isLength(field.kind) && (
        <button type="button" onClick={onRead}>
          {words.read}
        </button>
      )}
      {ownHere && (
        <button type="button" onClick={ownHere.deed}>
          {ownHere.words}
        </button>
      )}
    </fieldset>
  );
}
