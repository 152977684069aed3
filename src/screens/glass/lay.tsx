import { glassWords as words } from '#words/paper/glass-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { NamedRun } from '../../calculation/calculation.ts';
import { Rich } from '../../controls/rich.tsx';
import type { GlassPlace, GlassStretch } from '../../drawing/glass.ts';
import { placeName } from './place-name.ts';

interface Props {
  named: NamedRun;
  bench: Bench;
  /** Undefined where the glass is too short for one. */
  stretch: GlassStretch | undefined;
  places: readonly GlassPlace[];
  at: number;
  count: number;
  /** Why the scale was not kept, if it wasn't. */
  said: string | undefined;
  sideways: boolean;
  others: readonly unknown[];
}

/** How the phone is laid on the work for a stretch. */
export function Lay(props: Props) {
  const { named, bench, stretch, places, at, count, said, sideways, others } = props;
  if (!stretch) {
    return (
      <p class="lay warning" role="alert">
        {words.small}
      </p>
    );
  }
  const first = places[0] as GlassPlace;
  const { datum } = named.run;
  const lay = first.mm < 0 ? words.before(datum) : words.first(datum);
  const sentences = [
    at > 0 ? words.onward(placeName(first, named, bench)) : lay,
    places.some(({ mm, kind }) => kind === 'overlap' && mm === stretch.next) && words.alsoMark,
    words.check,
    sideways && words.upright,
  ];
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key
    <p class="lay" aria-live="polite" tabIndex={0}>
      {said !== undefined && <b class="warning">{said} </b>}
      <b>
        {words.ofThese(at + 1, count)}
        {others.length > 0 && `, ${named.name}`}.
      </b>{' '}
      <Rich text={sentences.filter(Boolean).join(' ')} />
    </p>
  );
}
