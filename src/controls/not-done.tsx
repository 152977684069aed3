import { garmentWords } from '#words/garment/garment-words.ts';
import { Rich } from './rich.tsx';

interface Props {
  said: string | undefined;
  /** Where the disk did not take it: tries again now. */
  onAgain?: (() => void) | undefined;
  /** How its screen has it. */
  as?: string;
}

/** Why the last thing wasn't done, or isn't on the disk yet, with a way to try again. */
export function NotDone({ said, onAgain, as = 'said' }: Props) {
  if (said === undefined) return null;
  return (
    <p class={`${as} warning`} role="alert">
      <Rich text={said} />
      {onAgain && (
        <button type="button" class="plain" onClick={onAgain}>
          {garmentWords.tryNow}
        </button>
      )}
    </p>
  );
}
