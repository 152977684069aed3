import { focusChosen } from './choices.tsx';
import type { TileProps } from './field-tile.tsx';
import { Rich } from './rich.tsx';

/** A field with a few ways to be, as a tile. */
export function ChoiceTile({ field, text, current, wrong, onPick }: TileProps) {
  if (field.kind !== 'choice') return null;
  // What is no choice is shown as it is: the first stands for nothing typed, never for that.
  const chosen =
    field.options.find((option) => option.value === text) ?? (wrong ? undefined : field.options[0]);
  return (
    <button
      type="button"
      name={field.key}
      class={current ? 'tile now' : 'tile'}
      aria-pressed={current}
      aria-describedby={wrong}
      onClick={() => (current ? focusChosen() : onPick(field.key))}
    >
      <span>{field.label}</span>
      <span class="typed">
        <Rich text={chosen?.label ?? text} />
      </span>
    </button>
  );
}
