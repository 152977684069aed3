import { useEffect, useRef } from 'preact/hooks';

import { followWords } from '#words/controls/follow-words.ts';

interface Props {
  words: string;
  onNext: () => void;
}

/** The whole lower half as one key. */
export function NextKey({ words, onNext }: Props) {
  const key = useRef<HTMLButtonElement>(null);
  useEffect(() => key.current?.focus({ preventScroll: true }), []);
  return (
    <button type="button" class="next" ref={key} onClick={onNext}>
      <b>{words}</b>
      <small>{followWords.anywhere}</small>
    </button>
  );
}
