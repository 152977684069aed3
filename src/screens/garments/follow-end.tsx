import type { Bench } from '../../controls/bench.ts';
import type { Fault, Field } from '../../controls/calculation.ts';
import { FaultList } from '../../controls/fault-list.tsx';
import { NextKey } from '../../controls/follow-next.tsx';
import type { Garment, Kept } from '../../garment/garment.ts';
import { garmentEndWords as words } from '../../words/garment-end-words.ts';

/** A kept calculation that gives nothing to follow, and why. */
export type Blocked =
  | { kept: Kept; why: 'faults'; faults: readonly Fault[]; fields: readonly Field[] }
  | { kept: Kept; why: 'unknown' | 'missing' };

export interface EndProps {
  garment: Garment;
  /** How many marks there are in all, and how many are made. */
  marks: number;
  made: number;
  /** Made, and not on the disk yet. */
  keeping: number;
  /** What is made that is asked for no more. */
  extra: readonly { name: string; count: number }[];
  blocked: readonly Blocked[];
  bench: Bench;
  said: string | undefined;
  deeds: { leave(): void; keepNow: (() => void) | undefined; openKept(kept: Kept): void };
  onFirstLeft: () => void;
  onBack: () => void;
}

/** After the last mark: what is made, what is left, what could not be followed and why. */
export function FollowEnd(props: EndProps) {
  const { garment, marks, made, keeping, extra, blocked, bench, said, deeds } = props;
  const left = made + keeping < marks;
  return (
    <div class="follow" data-hand={bench.hand}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <main tabIndex={0}>
        <p class="of">{garment.name}</p>
        {said !== undefined && (
          <p class="note warning" role="status">
            {said}
          </p>
        )}
        <h1 aria-live="polite">{marks === 0 ? words.none : words.done(made, marks)}</h1>
        {keeping > 0 && <p class="note">{words.keeping(keeping)}</p>}
        {extra.map(({ name, count }) => (
          <p class="note warning" key={name}>
            {words.extra(name, count)}
          </p>
        ))}
        {blocked.map((one) => (
          <section key={one.kept.id}>
            <p class="note">{reasonOf(one)}</p>
            {one.why === 'faults' && (
              <div class="answer">
                <FaultList faults={one.faults} fields={one.fields} bench={bench} />
              </div>
            )}
          </section>
        ))}
      </main>
      <div class="actions">
        <button type="button" onClick={deeds.leave}>
          {words.close}
        </button>
        {marks > 0 && (
          <button type="button" onClick={props.onBack}>
            {words.back}
          </button>
        )}
        {deeds.keepNow && (
          <button type="button" class="main" onClick={deeds.keepNow}>
            {words.tryNow}
          </button>
        )}
        {blocked.map(({ kept, why }) =>
          why === 'faults' ? (
            <button type="button" key={kept.id} onClick={() => deeds.openKept(kept)}>
              {words.open(kept.name)}
            </button>
          ) : null,
        )}
      </div>
      <NextKey
        words={left ? words.toFirstLeft : words.close}
        onNext={left ? props.onFirstLeft : deeds.leave}
      />
    </div>
  );
}

function reasonOf({ kept, why }: Blocked): string {
  if (why === 'faults') return words.blocked(kept.name);
  return why === 'unknown' ? words.unknown(kept.name) : words.missing(kept.name);
}
