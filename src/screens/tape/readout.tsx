import { useEffect, useState } from 'preact/hooks';
import { spoken } from '#words/common/spoken.ts';
import { pointWords, hairlineWords as words } from '#words/tape/hairline-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Reading, Told } from '../../camera/tape-eye.ts';
import { Rich } from '../../controls/rich.tsx';
import { useLanding } from '../../controls/use-landing.ts';
import { showReading } from './show.ts';

interface Props {
  reading: Reading;
  told: Told;
  /** Two lines: what lies between them. */
  between: boolean;
  bench: Bench;
}

/** A screen reader is told once the line has come to rest. */
const REST_MS = 500;

/** What the lines read, how sure that is, and what the ± leaves out. */
export function Readout({ reading, told, between, bench }: Props) {
  const shown = told.ok ? showReading(told.mm, told.uncertaintyMm, bench) : undefined;
  const aims = !told.ok && told.reason === 'not-aimed';
  const said = shown ? words.spoken(shown.length, shown.within) : whyNot(told, between);
  const atRest = useRest(spoken(said));
  const landing = useLanding(reading);
  const { tiltDegrees } = reading;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key
    <section ref={landing} class="told" tabIndex={0} aria-label={words.told}>
      {told.ok && shown ? (
        <>
          <p class="number">
            <strong>{shown.length}</strong>
            <span>{words.within(shown.within)}</span>
            <span>{between ? words.apart : words.fromZero}</span>
          </p>
          <p>
            <Rich text={words.also(shown.other, shown.mark)} />
          </p>
        </>
      ) : (
        <p class={aims ? '' : 'warning'}>{said}</p>
      )}
      <p class="unseen" role="status">
        {atRest}
      </p>
      {shown && (
        <div class="small">
          {tiltDegrees !== undefined && <p>{words.angle(Math.round(tiltDegrees))}</p>}
          <p>{words.parallax}</p>
          <p>{words.tape(shown.parts.picture, shown.parts.two, shown.parts.three)}</p>
        </div>
      )}
    </section>
  );
}

function whyNot(told: Told, between: boolean): string {
  if (told.ok) return '';
  if (told.reason === 'not-aimed') return between ? words.aimSecond : words.aim;
  return pointWords[told.reason];
}

/** The same words once they have stayed the same for a moment. */
function useRest(now: string): string {
  const [rested, setRested] = useState('');
  useEffect(() => {
    const wait = setTimeout(() => setRested(now), REST_MS);
    return () => clearTimeout(wait);
  }, [now]);
  return rested;
}
