import { useEffect, useMemo, useRef } from 'preact/hooks';
import { centreWords } from '#words/calculations/centre-words.ts';
import type { Answer } from '../../calculation/calculation.ts';
import type { Page } from '../../calculation/page.ts';
import { adopt } from '../adopt.ts';
import { FaultList } from '../fault-list.tsx';
import { Rich } from '../rich.tsx';
import css from './follow.css?inline';
import type { FollowProps } from './follow.tsx';

adopt(css);

const words = centreWords.tally;

/** Counted at most, as in the arithmetic. */
const MOST = 2000;

/** Which end is counted from, in the address. */
const FROM = 'counting-from';

/**
 * Counting with the thumb: the whole lower half is the key. The count is in the
 * address, so it survives a reload; what is started again can be had back. Doubts are
 * for a count that is finished, or already past what was counted from the other end.
 */
export function Tally({ calculation, state, bench, services, onState, onLeave }: FollowProps) {
  const { draft, page } = state;
  // Older addresses say it as `end`.
  const fromOther = (page[FROM] ?? draft.end) === 'other';
  const [key, otherKey] = fromOther ? (['other', 'count'] as const) : (['count', 'other'] as const);
  const count = countIn(draft[key]);
  const facing = countIn(draft[otherKey]);
  const underWay = page.counting === key && !(facing > 0 && count > facing);
  const droppedKey = `${key}-dropped` as const;
  const dropped = countIn(page[droppedKey]);
  const work = useMemo(() => calculation.work(draft, bench), [calculation, draft, bench]);
  const next = useRef<HTMLButtonElement>(null);
  useEffect(() => services.keepAwake(), [services.keepAwake]);
  useEffect(() => next.current?.focus({ preventScroll: true }), []);

  const set = (to: number, drop = 0) =>
    onState({
      draft: { ...draft, [key]: String(to) },
      page: { ...page, [droppedKey]: drop === 0 ? '' : String(drop), counting: key },
    });
  const finish = (to: Page = {}) => onState({ draft, page: { ...page, counting: '', ...to } });
  const step = (by: number) => {
    const to = Math.min(MOST, Math.max(0, count + by));
    set(to);
    navigator.vibrate?.(20);
    if (bench.voice === 'on') services.speak(String(to));
  };
  return (
    <div class="follow" data-hand={bench.hand}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <main tabIndex={0}>
        <h1>{words.end(fromOther)}</h1>
        <div class="big" aria-live="assertive" aria-atomic="true">
          <p class="figure">
            <b>{count}</b> {centreWords.holes}
          </p>
        </div>
        {count >= MOST && <p class="warning">{words.most}</p>}
        {underWay && facing > 0 && <p class="say">{words.facing(facing)}</p>}
        {count < 2 ? (
          <p class="say">{words.few}</p>
        ) : work.ok ? (
          <Found answer={work.answer} underWay={underWay} />
        ) : (
          <div class="answer" aria-live="polite">
            <FaultList faults={work.faults} fields={calculation.fields(draft)} bench={bench} />
          </div>
        )}
      </main>
      <div class="actions">
        <button type="button" onClick={onLeave}>
          {words.leave}
        </button>
        <button type="button" onClick={() => services.speak(`${count} ${centreWords.holes}`)}>
          {words.speak}
        </button>
        <button type="button" onClick={() => finish({ [FROM]: fromOther ? '' : 'other' })}>
          {words.otherEnd}
        </button>
        {underWay && (
          <button type="button" onClick={() => finish()}>
            {words.last}
          </button>
        )}
        {dropped === 0 ? (
          <button type="button" onClick={() => set(0, count)}>
            {words.again}
          </button>
        ) : (
          <button type="button" onClick={() => set(dropped)}>
            {words.backTo(dropped)}
          </button>
        )}
        <button type="button" onClick={() => step(-1)}>
          {words.less}
        </button>
      </div>
      <button type="button" class="next" ref={next} onClick={() => step(1)}>
        <b>{words.more}</b>
        <small>{words.anywhere}</small>
      </button>
    </div>
  );
}

/** What the count comes to; what is doubtful of it only once it is finished. */
function Found({ answer, underWay }: { answer: Answer; underWay: boolean }) {
  const said = underWay ? [answer.sentence] : [answer.sentence, ...answer.warnings];
  return said.map((one, i) => (
    <p class={i === 0 ? 'say' : 'say warning'} key={one}>
      <Rich text={one} />
    </p>
  ));
}

/** A count kept in an address: nonsense is none. */
function countIn(typed: string | undefined): number {
  const count = Number(typed || 0);
  return Number.isInteger(count) && count >= 0 ? Math.min(count, MOST) : 0;
}
