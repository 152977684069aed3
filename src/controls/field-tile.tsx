import { useLayoutEffect, useRef } from 'preact/hooks';
import { fieldWords } from '#words/controls/control-words.ts';
import type { Bench } from '../calculation/bench.ts';
import type { Field } from '../calculation/calculation.ts';
import { isLength } from './pad-keys.ts';
import { steady } from './steady.tsx';
import './field-tile.css';

export interface TileProps {
  field: Field;
  text: string;
  bench: Bench;
  current: boolean;
  /** The id of the sentence that says what is wrong with it. */
  wrong: string | undefined;
  /** A quiet question, where it holds something unusual; part of its label. */
  odd?: string | undefined;
  onText: (key: string, text: string, fresh: 'no') => void;
  onPick: (key: string) => void;
  onNext: () => void;
}

/** One field as a tile: a real text field. What was typed is never rewritten. */
export const FieldTile = steady(function Tile({
  field,
  text,
  bench,
  current,
  wrong,
  odd,
  onText,
  onPick,
  onNext,
}: TileProps) {
  const input = useRef<HTMLInputElement>(null);
  useLayoutEffect(() => {
    if (input.current) input.current.value = text;
  }, []);
  // What was typed here and has not come back as `text` yet: never to be written over.
  const typing = useRef<string | undefined>(undefined);
  // In the frame of the answer: one of its own would cost more than laying both out at once.
  useLayoutEffect(() => {
    const shown = input.current;
    if (typing.current === undefined && shown && shown.value !== text) shown.value = text;
    if (typing.current === text) typing.current = undefined;
  }, [text]);
  useLayoutEffect(() => {
    if (!current || !input.current) return;
    if (document.activeElement !== input.current) input.current.focus({ preventScroll: true });
    input.current.closest('label')?.scrollIntoView?.({ block: 'nearest', inline: 'nearest' });
  }, [current]);
  const inLengths = isLength(field.kind);
  const isText = field.kind === 'text';
  const bare = inLengths && !/[a-z"'″′]\s*$/i.test(text);
  return (
    <label
      class={`tile${current ? ' now' : ''}${isText || field.kind === 'lengths' ? ' wide' : ''}`}
    >
      <span>{field.label}</span>
      <span class="typed">
        <input
          ref={input}
          type="text"
          name={field.key}
          // The pad has no letters: words are typed on the phone's own keyboard.
          inputMode={
            isText ? 'text' : bench.keys === 'phone' ? (inLengths ? 'text' : 'decimal') : 'none'
          }
          enterKeyHint="next"
          autoComplete="off"
          autoCorrect="off"
          spellcheck={false}
          placeholder={field.hint}
          aria-invalid={wrong !== undefined}
          aria-describedby={wrong}
          onInput={(event) => {
            const { value } = event.currentTarget;
            typing.current = value === text ? undefined : value;
            onText(field.key, value, 'no');
          }}
          onFocus={(event) => {
            event.currentTarget.select();
            onPick(field.key);
          }}
          onKeyDown={(event) => {
            if (event.key !== 'Enter') return;
            event.preventDefault();
            onNext();
          }}
        />
        {bare && text !== '' && <small aria-hidden="true">{bench.unit}</small>}
        {inLengths && <span class="unseen">{fieldWords.bareUnit(bench.unit)}</span>}
      </span>
      {odd && <small>{odd}</small>}
    </label>
  );
});
