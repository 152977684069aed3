import type { ComponentChildren } from 'preact';
import { followWords } from '#words/controls/follow-words.ts';
import { type Bench, tapeStep } from '../../calculation/bench.ts';
import { exactly, onTape, wordOf } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { readLength } from '../../lengths/read-length.ts';
import { type MarkedMark, type MarkedRun, placeOnTape } from '../../sewing/marks.ts';
import { Rich } from '../rich.tsx';

/** The place of the mark being made, the datum it is from, and what was measured instead. */
export function Big(props: {
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
          <Rich text={followWords.step(...stepOf(mark, bench))} />
        </p>
      )}
      {props.children}
    </div>
  );
}

/** From the mark before to this one as made, and whether it lies back of it. */
export function stepOf({ step }: MarkedMark, bench: Bench): [length: string, back: boolean] {
  return [onTape(exactLength(Math.abs(step)), bench), step < 0];
}

/** What was measured of a mark, and how far that is from its plan as the tape shows it. */
export function MadeLine(props: {
  mark: MarkedMark;
  made: string | undefined;
  planned?: ExactLength | undefined;
  bench: Bench;
}) {
  const { mark, made = '', bench } = props;
  const reading = readLength(made, bench.unit);
  if (made === '' || !reading.ok) return null;
  const planned = props.planned ?? placeOnTape(mark.exact, tapeStep(bench), mark.taken);
  const off = exactly(exactLength(reading.value - planned), bench);
  return (
    <>
      <p class="warning">
        <Rich text={followWords.made(exactly(reading.value, bench), off)} />
      </p>
      <p class="soft">
        <Rich text={followWords.planned(exactly(planned, bench))} />
      </p>
    </>
  );
}
