import type { ComponentChildren } from 'preact';
import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';

import { type ExactLength, exactLength } from '../lengths/length.ts';
import { readLength } from '../lengths/read-length.ts';
import { type MarkedMark, type MarkedRun, markOut } from '../sewing/marks.ts';
import { followWords, spoken } from '../words/follow-words.ts';
import { adopt } from './adopt.ts';
import { useAfterPaint } from './after-paint.ts';
import { type Bench, tapeStep } from './bench.ts';
import type { NamedRun } from './calculation.ts';
import css from './follow.css?inline';
import { NextKey } from './follow-next.tsx';
import { MadeEntry } from './made-entry.tsx';
import { Rich } from './rich.tsx';
import { RunTape } from './run-tape.tsx';
import { steady } from './steady.tsx';
import { exactly, onTape, wordOf } from './tape-text.ts';
import { withUnits } from './with-units.ts';

adopt(css);

const SteadyTape = steady(RunTape);

/** What following asks of the phone. */
export interface FollowServices {
  speak(words: string): void;
  /** Keeps the screen on until the returned function is called. */
  keepAwake(): () => void;
}

interface Props {
  named: NamedRun;
  /** Which mark, from 0; as many as there are marks when all are made. */
  at: number;
  /** What was measured of the mark, as typed; undefined or empty when it is as planned. */
  made: string | undefined;
  /** Where it was planned, when that is not where the run has it now. */
  planned?: ExactLength | undefined;
  bench: Bench;
  services: FollowServices;
  /** What is said before the first mark of a run, aloud too. */
  before?: string | undefined;
  /** Changes with every mark that is gone to. */
  turn: string;
  /** Under the heading, and under the number. */
  of?: ComponentChildren;
  notes?: ComponentChildren;
  /** Further things to do with this mark. */
  actions?: ComponentChildren;
  /** What the large key says. */
  nextWords: string;
  onNext: () => void;
  onBack: () => void;
  onPick: (at: number) => void;
  /** A mark was measured; empty when it is as planned after all. */
  onMeasured: (label: string, typed: string) => void;
  /** Reads a mark's measure off a tape, where that is possible. */
  onTape?: ((label: string) => void) | undefined;
  onLeave: () => void;
}

/** One mark of a run, huge; the whole lower half is the key for the next. */
export function FollowRun(props: Props) {
  const { named, at, made = '', bench, services } = props;
  const step = tapeStep(bench);
  const marked = useMemo(() => markOut(named.run, step), [named.run, step]);
  const count = marked.marks.length;
  const mark = marked.marks[Math.min(at, count - 1)] as MarkedMark;
  const [measuring, setMeasuring] = useState(false);
  const latest = useRef(props);
  latest.current = props;
  const pick = useMemo(() => (index: number) => latest.current.onPick(index), []);
  const here = useAfterPaint(Math.min(at, count - 1));
  const say = () => services.speak(sentence(props, marked));
  useEffect(() => services.keepAwake(), [services.keepAwake]);
  useTurn(props.turn, () => {
    navigator.vibrate?.(30);
    if (bench.voice === 'on') say();
  });
  useMarkKeys(!measuring, props.onNext, props.onBack);

  return (
    <div class="follow" data-hand={bench.hand}>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <main tabIndex={0}>
        <h1>
          {at < count ? followWords.place(named.item, mark.label, count) : followWords.all(count)}
        </h1>
        {props.of}
        <Big mark={mark} at={at} marked={marked} bench={bench}>
          {made !== '' && <MadeLine made={made} planned={props.planned ?? mark.at} bench={bench} />}
        </Big>
        {props.notes}
        <SteadyTape named={named} bench={bench} here={here} onPick={pick} />
      </main>
      {measuring ? (
        <MadeEntry
          bench={bench}
          item={followWords.one(named.item, mark.label)}
          text={made}
          onKeep={(text) => {
            // With its unit: a bench set to another one must not read another place.
            props.onMeasured(mark.label, withUnits(text.trim(), bench.unit));
            setMeasuring(false);
          }}
          onCancel={() => setMeasuring(false)}
          onTape={props.onTape && (() => props.onTape?.(mark.label))}
        />
      ) : (
        <>
          <div class="actions">
            <button type="button" onClick={props.onLeave}>
              {followWords.leave}
            </button>
            <button type="button" onClick={say}>
              {followWords.speak}
            </button>
            <button type="button" onClick={() => setMeasuring(true)}>
              {followWords.otherwise}
            </button>
            <button type="button" onClick={props.onBack}>
              {followWords.back}
            </button>
            {props.actions}
          </div>
          <NextKey words={props.nextWords} onNext={props.onNext} />
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
  bench: Bench;
  children: ComponentChildren;
}) {
  const { mark, at, marked, bench } = props;
  const [, figure = '', unit = ''] = /^(.*?)\s*([a-z]*)$/i.exec(onTape(mark.at, bench)) ?? [];
  return (
    <div class="big" aria-live="assertive" aria-atomic="true">
      <p class="figure">
        <b>
          <Rich text={figure} />
        </b>{' '}
        {unit}
      </p>
      <p>
        <Rich text={followWords.from(wordOf(mark, bench), marked.datum)} />
      </p>
      {at > 0 && (
        <p class="soft">
          <Rich text={followWords.step(onTape(mark.step, bench))} />
        </p>
      )}
      {props.children}
    </div>
  );
}

function MadeLine(props: { made: string; planned: ExactLength; bench: Bench }) {
  const { made, planned, bench } = props;
  const reading = readLength(made, bench.unit);
  if (!reading.ok) return null;
  const off = exactly(exactLength(reading.value - planned), bench);
  return (
    <p class="warning">
      <Rich text={followWords.made(exactly(reading.value, bench), off)} />
    </p>
  );
}

/** Calls back when the place changes, not at the first look. */
function useTurn(at: string, turned: () => void): void {
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

function sentence({ named, at, bench, before }: Props, marked: MarkedRun): string {
  const mark = marked.marks[at];
  if (!mark) return followWords.all(marked.marks.length);
  const step = at > 0 ? onTape(mark.step, bench) : undefined;
  const item = followWords.one(named.item, mark.label);
  const said = followWords.say(item, wordOf(mark, bench), onTape(mark.at, bench), step);
  return spoken(before === undefined ? said : `${before} ${said}`);
}
