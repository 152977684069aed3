import { padWords } from '../words/pad-words.ts';
import { adopt } from './adopt.ts';
import type { Bench } from './bench.ts';
import type { Field } from './calculation.ts';
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

/** The ways a field can be, where the pad would be. */
export function Choices({ field, chosen, hand, onChoose, onNext }: Props) {
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
