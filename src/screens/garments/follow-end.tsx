import { garmentEndWords as words } from '#words/garment-end-words.ts';
import { garmentWords } from '#words/garment-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { FaultList } from '../../controls/fault-list.tsx';
import { NextKey } from '../../controls/follow-next.tsx';
import { LoadNewer, useNewer } from '../../controls/newer-part.tsx';
import { extraOf } from '../../garment/as-made.ts';
import { countMade, type FollowedRun, isBeingKept } from '../../garment/following.ts';
import type { Garment, Kept } from '../../garment/garment.ts';
import type { Blocked, Stop } from '../../garment/stop.ts';

export interface EndProps {
  garment: Garment;
  /** The same as it is on the disk. */
  stored: Garment;
  stops: readonly Stop[];
  /** The stops as they are followed. */
  runs: readonly FollowedRun[];
  blocked: readonly Blocked[];
  bench: Bench;
  said: string | undefined;
  deeds: { leave(): void; keepNow: (() => void) | undefined; openKept(kept: Kept): void };
  onFirstLeft: () => void;
  onBack: () => void;
}

/** After the last mark: what is made, what is left, what could not be followed and why. */
export function FollowEnd(props: EndProps) {
  const { garment, blocked, bench, said, deeds } = props;
  const { marks, made, keeping, extra } = progress(props);
  const left = made + keeping < marks;
  const newer = useNewer(
    'calculation',
    blocked.some(({ why }) => why === 'missing'),
  );
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
            <p class="note">{reasonOf(one, newer)}</p>
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
            {garmentWords.tryNow}
          </button>
        )}
        {newer && <LoadNewer />}
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

/** How many marks are made, on the disk and not yet; and what is made that is asked for no more. */
function progress({ stored, stops, runs }: EndProps) {
  const { marks, made } = countMade(runs);
  const sure = runs.map(({ labels, kept: run }, i) => {
    const stop = stops[i];
    const isKept = (label: string) => stop && !isBeingKept(stored, stop.kept, stop.run, label);
    return { labels: labels.filter(isKept), kept: run };
  });
  const keeping = made - countMade(sure).made;
  const extra = stops.flatMap(({ kept: { name, runs: all }, run }) => {
    const count = all[run] ? extraOf(all[run]).length : 0;
    return count > 0 ? [{ name, count }] : [];
  });
  return { marks, made: made - keeping, keeping, extra };
}

function reasonOf({ kept, why }: Blocked, newer: string | undefined): string {
  if (why === 'faults') return words.blocked(kept.name);
  if (why === 'unknown') return words.unknown(kept.name);
  return newer ? `${kept.name}: ${newer}` : words.missing(kept.name);
}
