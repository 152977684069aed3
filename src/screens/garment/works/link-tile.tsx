import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { TileProps } from '../../../controls/field-tile.tsx';
import { Rich } from '../../../controls/rich.tsx';
import { fieldTextOf, fromField, type LinkName, piecesOf } from './link-text.ts';

interface Props extends TileProps {
  /** What each letter of the text is called. */
  names: readonly LinkName[];
  /** What else is said of what it takes. */
  children?: ComponentChildren;
}

/**
 * A field that takes something: each link a block with its name and number, beside what is typed. A keyboard
 * types at its end, and a screen reader reads it, in a text field that isn't seen.
 */
export function LinkTile(props: Props) {
  const { field, text, names, current, wrong, odd, bench, onText, onPick, onNext } = props;
  const input = useRef<HTMLInputElement>(null);
  useLayoutEffect(() => {
    if (!current || !input.current) return;
    if (document.activeElement !== input.current) input.current.focus({ preventScroll: true });
    input.current.closest('label')?.scrollIntoView?.({ block: 'nearest', inline: 'nearest' });
  }, [current]);
  return (
    <label class={current ? 'tile wide now' : 'tile wide'}>
      <span>{field.label}</span>
      <span class="typed linked" aria-hidden="true">
        {piecesOf(text, names).map((piece, i) =>
          'text' in piece ? (
            <span key={i}>
              <Rich text={piece.text} />
            </span>
          ) : (
            <span class="block" key={i}>
              <small>{piece.link.name}</small> <Rich text={piece.link.number} />
            </span>
          ),
        )}
      </span>
      <input
        ref={input}
        class="unseen"
        type="text"
        name={field.key}
        inputMode={bench.keys === 'phone' ? 'text' : 'none'}
        enterKeyHint="next"
        autoComplete="off"
        spellcheck={false}
        value={fieldTextOf(text, names)}
        aria-invalid={wrong !== undefined}
        aria-describedby={wrong}
        onInput={({ currentTarget }) =>
          onText(field.key, fromField(text, currentTarget.value, names), 'no')
        }
        onFocus={({ currentTarget }) => {
          const end = currentTarget.value.length;
          currentTarget.setSelectionRange(end, end);
          onPick(field.key);
        }}
        onKeyDown={(event) => {
          if (event.key !== 'Enter') return;
          event.preventDefault();
          onNext();
        }}
      />
      {odd && <small>{odd}</small>}
      {props.children}
    </label>
  );
}
