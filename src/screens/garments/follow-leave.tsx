import { garmentEndWords as words } from '#words/garment-end-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { NextKey } from '../../controls/follow-next.tsx';

interface Props {
  /** What is held, and why. */
  said: string | undefined;
  bench: Bench;
  onStay: () => void;
  onLeave: () => void;
}

/** Asked before marks are left that are held in the page only. */
export function FollowLeave({ said, bench, onStay, onLeave }: Props) {
  return (
    <div class="follow" data-hand={bench.hand}>
      <main>
        <h1>{words.leaveHeld}</h1>
        <p class="note warning" role="alert">
          {said}
        </p>
      </main>
      <div class="actions">
        <button type="button" onClick={onLeave}>
          {words.leaveAnyway}
        </button>
      </div>
      <NextKey words={words.stay} onNext={onStay} />
    </div>
  );
}
