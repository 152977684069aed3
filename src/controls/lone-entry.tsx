import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Bench } from '../calculation/bench.ts';
import type { Field } from '../calculation/calculation.ts';
import { adopt } from './adopt.ts';
import { FieldTile } from './field-tile.tsx';
import css from './lone-entry.css?inline';
import { Pad } from './pad.tsx';
import type { Fresh } from './pad-keys.ts';
import { Rich } from './rich.tsx';

adopt(css);

interface Props {
  field: Field;
  bench: Bench;
  /** What stands there at first: the next key replaces it. */
  first?: string;
  /** What is wrong with what is typed, in words. */
  faultOf: (text: string) => string | undefined;
  /** The key that goes on does this, with what is typed. */
  onNext: (text: string) => void;
  /** What can be done with what is typed. */
  children: (text: string) => ComponentChildren;
}

/** One field by itself, with what can be done with it above the keys. */
export function LoneEntry({ field, bench, first = '', faultOf, onNext, children }: Props) {
  const [{ text, fresh }, setTyped] = useState<{ text: string; fresh: Fresh }>({
    text: first,
    fresh: 'all',
  });
  const fault = faultOf(text);
  const next = () => onNext(text);
  return (
    <>
      {fault !== undefined && (
        <p class="warning" id="entry-fault" role="status">
          <Rich text={fault} />
        </p>
      )}
      <div class="actions">{children(text)}</div>
      <div class="tiles one">
        <FieldTile
          field={field}
          text={text}
          bench={bench}
          current
          wrong={fault === undefined ? undefined : 'entry-fault'}
          onText={(_, typed) => setTyped({ text: typed, fresh: 'no' })}
          onPick={() => undefined}
          onNext={next}
        />
      </div>
      {bench.keys === 'pad' && (
        <Pad
          field={field}
          text={text}
          fresh={fresh}
          bench={bench}
          onText={(typed, then) => setTyped({ text: typed, fresh: then })}
          onNext={next}
        />
      )}
    </>
  );
}
