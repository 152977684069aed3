import { useLayoutEffect } from 'preact/hooks';
import { padWords } from '#words/controls/pad-words.ts';
import type { Bench } from '../calculation/bench.ts';
import type { Field } from '../calculation/calculation.ts';
import { adopt } from './adopt.ts';
import css from './choices.css?inline';
import { Rich } from './rich.tsx';

adopt(css);

interface Props {
  field: Extract<Field, { kind: 'choice' }>;
  chosen: string;
  hand: Bench['hand'];
  onChoose: (value: string) => void;
  onNext: () => void;
}

/**
 * Goes to the way that is chosen now. By Tab it can't be reached from its tile: on the way
 * there the other fields would put their keys in its place.
 */
export function focusChosen(): void {
  document
    .querySelector<HTMLElement>('.choices [aria-pressed=true]')
    ?.focus({ preventScroll: true });
}

/** The ways a field can be, where the pad would be. */
export function Choices({ field, chosen, hand, onChoose, onNext }: Props) {
  useLayoutEffect(() => {
    if (document.activeElement?.closest('.tiles')) focusChosen();
  }, [field.key]);
  return (
    <fieldset class="choices" data-hand={hand} aria-label={field.label}>
      {field.options.map((option) => (
        <button
          type="button"
          key={option.value}
          aria-pressed={option.value === (chosen || field.options[0]?.value)}
          onClick={() => onChoose(option.value)}
        >
          <Rich text={option.label} />
        </button>
      ))}
      <button type="button" class="go" onClick={onNext}>
        {padWords.nextFace}
      </button>
    </fieldset>
  );
}
