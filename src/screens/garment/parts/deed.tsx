import { Rich } from '../../../controls/rich.tsx';

interface Props {
  words: string;
  hint?: string;
  /** Of what can be on or off. */
  on?: boolean;
  onPress: () => void;
}

/** One of the things that can be done with what is open. */
export function Deed({ words, hint, on, onPress }: Props) {
  return (
    <button type="button" class="deed" aria-pressed={on} onClick={onPress}>
      <Rich text={words} />
      {hint && <small>{hint}</small>}
    </button>
  );
}
