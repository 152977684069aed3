import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';

import { readLength } from '../lengths/read-length.ts';
import { type MarkedMark, type MarkedRun, markOut } from '../sewing/marks.ts';
import { followWords, spoken } from '../words/follow-words.ts';
import { adopt } from './adopt.ts';
import { type Bench, tapeStep } from './bench.ts';
import type { Calculation, Draft, NamedRun } from './calculation.ts';
import css from './follow.css?inline';
import { readMade, writeMade } from './made.ts';
import { MadeEntry } from './made-entry.tsx';
import { Rich } from './rich.tsx';
import { RunTape } from './run-tape.tsx';
import { exactly, onTape } from './tape-text.ts';
import { withUnits } from './with-units.ts';

adopt(css);

/** What following asks of the phone. */
interface FollowServices {
  speak(words: string): void;
  /** Keeps the screen on until the returned function is called. */
  keepAwake(): () => void;
}

export interface FollowProps {
  calculation: Calculation;
  draft: Draft;
  bench: Bench;
  services: FollowServices;
  onDraft: (draft: Draft) => void;
  /** Reads a tape for what is named, such as `made:3`. */
  onTape: (into: string) => void;
  onLeave: () => void;
}

/** The marks of a run, one at a time: the whole lower half is the key for the next. */
export function Follow(props: FollowProps) {
  const { calculation, draft, bench, onLeave } = props;
  const work = useMemo(() => calculation.work(draft, bench), [calculation, draft, bench]);
  const named = work.ok ? work.answer.runs[Number(draft.run ?? 0)] : undefined;
  if (!named || named.run.marks.length === 0) {
    return (
      <main class="follow">
        <p class="warning">{followWords.nothing}</p>
        <button type="button" class="next" onClick={onLeave}>
          {followWords.leave}
        </button>
      </main>
    );
  }
  return <FollowRun {...props} named={named} />;
}

function FollowRun(props: FollowProps & { named: NamedRun }) {
  const { named, draft, bench, services, onDraft, onLeave } = props;
  const step = tapeStep(bench);
  const marked = useMemo(() => markOut(named.run, step), [named.run, step]);
  const count = marked.marks.length;
  const at = placeOf(draft.at, count);
  const mark = marked.marks[Math.min(at, count - 1)] as MarkedMark;
  const made = readMade(draft.made ?? '');
  const [measuring, setMeasuring] = useState(false);
  const go = (to: number) => onDraft({ ...draft, at: String(Math.max(0, Math.min(to, count))) });
  const say = () => services.speak(sentence(named, marked, at, bench));
  useEffect(() => services.keepAwake(), [services.keepAwake]);
  useTurn(at, () => {
    navigator.vibrate?.(30);
    if (bench.voice === 'on') say();
  });
  useMarkKeys(
    !measuring,
    () => go(at + 1),
    () => go(at - 1),
  );

  return (
    <div class="follow" data-hand={bench.hand}>
      <main>
        <h1>
          {at < count ? followWords.place(named.item, mark.label, count) : followWords.all(count)}
        </h1>
        <RunTape named={named} bench={bench} here={Math.min(at, count - 1)} onPick={go} />
        <Big mark={mark} at={at} marked={marked} made={made.get(mark.label)} bench={bench} />
      </main>
      {measuring ? (
        <MadeEntry
          bench={bench}
          item={followWords.one(named.item, mark.label)}
          text={made.get(mark.label) ?? ''}
          onKeep={(text) => {
            // With its unit: a bench set to another one must not read another place.
            const measured = withUnits(text.trim(), bench.unit);
            onDraft({ ...draft, made: writeMade(made, mark.label, measured) });
            setMeasuring(false);
          }}
          onCancel={() => setMeasuring(false)}
          onTape={() => props.onTape(`made:${mark.label}`)}
        />
      ) : (
        <>
          <div class="actions">
            <button type="button" onClick={onLeave}>
              {followWords.leave}
            </button>
            <button type="button" onClick={say}>
              {followWords.speak}
            </button>
            <button type="button" onClick={() => setMeasuring(true)}>
              {followWords.otherwise}
            </button>
            <button type="button" onClick={() => go(at - 1)}>
              {followWords.back}
            </button>
            <Respace {...props} made={made} marked={marked} at={at} />
          </div>
          <NextKey done={at >= count} onNext={() => go(at >= count ? 0 : at + 1)} />
        </>
      )}
    </div>
  );
}

/** The place of the mark being made, the datum it is from, and what was measured instead. */
function Big(props: {
  mark: MarkedMark;
  at: number;
  marked: MarkedRun;
  made: string | undefined;
  bench: Bench;
}) {
  const { mark, at, marked, made, bench } = props;
  const [, figure = '', unit = ''] = /^(.*?)\s*([a-z]*)$/i.exec(onTape(mark.at, bench)) ?? [];
  return (
    <div class="big" aria-live="assertive" aria-atomic="true">
      <p class="figure">
        <b>
          <Rich text={figure} />
        </b>{' '}
        {unit}
      </p>
      <p>{followWords.from(marked.datum)}</p>
      {at > 0 && (
        <p class="soft">
          <Rich text={followWords.step(onTape(mark.step, bench))} />
        </p>
      )}
      {made !== undefined && <MadeLine mark={mark} made={made} bench={bench} />}
    </div>
  );
}

function MadeLine({ mark, made, bench }: { mark: MarkedMark; made: string; bench: Bench }) {
  const reading = readLength(made, bench.unit);
  if (!reading.ok) return null;
  const off = exactly((reading.value - mark.at) as typeof mark.at, bench);
  return (
    <p class="warning">
      <Rich text={followWords.made(exactly(reading.value, bench), off)} />
    </p>
  );
}

/** Offered once something was made elsewhere than planned: the rest spaced around it. */
function Respace(
  props: FollowProps & { made: ReadonlyMap<string, string>; marked: MarkedRun; at: number },
) {
  const { calculation, made, marked, at, draft, bench, onDraft } = props;
  if (made.size === 0 || !calculation.around) return null;
  const done = marked.marks
    .filter((mark, i) => i < at || made.has(mark.label))
    .map((mark) => made.get(mark.label) ?? onTape(mark.at, bench));
  const around = calculation.around;
  return (
    <button
      type="button"
      class="main"
      onClick={() => onDraft(around(draft, done, marked.marks.length))}
    >
      {followWords.respace}
    </button>
  );
}

function NextKey({ done, onNext }: { done: boolean; onNext: () => void }) {
  const key = useRef<HTMLButtonElement>(null);
  useEffect(() => key.current?.focus({ preventScroll: true }), []);
  return (
    <button type="button" class="next" ref={key} onClick={onNext}>
      <b>{done ? followWords.restart : followWords.next}</b>
      <small>{followWords.anywhere}</small>
    </button>
  );
}

/** Calls back when the place changes, not at the first look. */
function useTurn(at: number, turned: () => void): void {
  const before = useRef(at);
  useEffect(() => {
    if (before.current === at) return;
    before.current = at;
    turned();
  });
}

const FORWARD = new Set([' ', 'ArrowRight', 'ArrowDown', 'PageDown', 'AudioVolumeUp', 'VolumeUp']);
const BACKWARD = new Set([
  'ArrowLeft',
  'ArrowUp',
  'PageUp',
  'Backspace',
  'AudioVolumeDown',
  'VolumeDown',
]);

/** Space, arrows, and the volume keys where the platform gives them. */
function useMarkKeys(on: boolean, forward: () => void, backward: () => void): void {
  // At once, not after the paint: a quick second press must start from where the first one led.
  useLayoutEffect(() => {
    if (!on) return;
    const press = (event: KeyboardEvent) => {
      const at = event.target instanceof Element ? event.target : undefined;
      if (at?.closest(ownersOf(event.key))) return;
      const act = FORWARD.has(event.key) ? forward : BACKWARD.has(event.key) ? backward : undefined;
      if (!act) return;
      event.preventDefault();
      act();
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  });
}

/** What has its own use for a key: a button is pressed by Space, the tape moved by arrows. */
function ownersOf(key: string): string {
  if (/Page|Volume/.test(key)) return 'input';
  return key === ' ' ? 'button, input, .tape' : 'input, .tape';
}

/** A place kept in an address: a whole number from 0 to the number of marks, else the first. */
function placeOf(typed: string | undefined, count: number): number {
  const at = Number(typed ?? 0);
  return Number.isInteger(at) && at >= 0 ? Math.min(at, count) : 0;
}

function sentence(named: NamedRun, marked: MarkedRun, at: number, bench: Bench): string {
  const mark = marked.marks[at];
  if (!mark) return followWords.all(marked.marks.length);
  const step = at > 0 ? onTape(mark.step, bench) : undefined;
  return spoken(followWords.say(named.item, mark.label, onTape(mark.at, bench), step));
}
