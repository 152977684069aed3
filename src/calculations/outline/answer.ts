import { outlineWords as words } from '#words/calculations/outline-words.ts';
import { holeWords } from '#words/common/hole-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line, NamedRun } from '../../calculation/calculation.ts';
import { linesSaid, onlySaid } from '../../calculation/only-said.ts';
import { percentText } from '../../calculation/tape-said.ts';
import { byTape, exactly } from '../../calculation/tape-text.ts';
import { exactLength } from '../../lengths/length.ts';
import { unlike, type Worked } from './worked.ts';
import { outlineWorkings } from './workings.ts';

/** More than this is hardly eased in leather: common practice, no source. */
const MUCH = 0.05;

/** Holes round an outline as an answer. */
export function outlineAnswer(worked: Worked, bench: Bench): Answer {
  const { asked, round, pair } = worked;
  const count = (round ?? pair).count;
  return {
    headline: { number: String(count), after: words.holes },
    sentence: round ? words.sentence.round(round.corners.length > 0) : words.sentence.pair,
    lines: lines(worked, bench),
    offers: [],
    warnings: warnings(worked, count, bench),
    cautions: [words.cornersLast[asked.shape === 'pair' ? 'pair' : 'round'], holeWords.punch],
    listsLast: true,
    runs: runs(worked),
    workings: outlineWorkings(worked, bench),
  };
}

function runs({ round, pair }: Worked): NamedRun[] {
  if (round) return [{ name: words.around, item: words.hole, run: round.run }];
  return [
    { name: words.oneEdge, item: words.hole, run: pair.one.run },
    { name: words.otherEdge, item: words.hole, run: pair.other.run },
  ];
}

function lines({ asked, round, pair }: Worked, bench: Bench): Line[] {
  if (pair) {
    return linesSaid([
      [words.pitchOne, byTape(pair.one.pitch, bench)],
      [words.pitchOther, byTape(pair.other.pitch, bench)],
      [words.eased, words.easedBy(percentText(Math.abs(pair.longer), bench), pair.longer)],
    ]);
  }
  const sides = unlike(round, asked.shape).map(({ spaces, pitch }, i) => ({
    label: pitchLabel(asked.shape, i),
    value: words.spaces(spaces, byTape(pitch, bench)),
  }));
  const corners = round.corners.join(', ');
  return [...sides, ...linesSaid([[words.corners, corners]])];
}

function pitchLabel(shape: Worked['asked']['shape'], i: number): string {
  if (shape === 'free') return words.pitchSide(i + 1);
  return shape === 'rectangle' && i === 1 ? words.pitchHigh : words.pitchOf[shape];
}

function warnings({ asked, round, pair }: Worked, count: number, bench: Bench): string[] {
  const { hole, margin } = asked;
  const pitches = round
    ? round.sides.map(({ pitch }) => pitch)
    : [pair.one.pitch, pair.other.pitch];
  const web = exactLength(Math.min(...pitches) - hole);
  const edge = margin === undefined ? undefined : exactLength(margin - hole / 2);
  return onlySaid([
    // Common practice, no source: at least a hole's width is left.
    web < hole && words.thin(exactly(exactLength(Math.max(0, web)), bench)),
    edge !== undefined && edge < hole && words.thinEdge,
    count % 2 === 1 && words.odd,
    pair && Math.abs(pair.longer) > MUCH && words.much,
  ]);
}
