import { cornerWords as words } from '#words/calculations/corner-words.ts';
import { turnedWords } from '#words/common/turned-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Calculation, Working } from '../../calculation/calculation.ts';
import { foldWorking, halfFoldWorking } from '../../calculation/fold-working.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { numberSaid, said } from '../../calculation/tape-said.ts';
import { byTape, exactly } from '../../calculation/tape-text.ts';
import { mitreFlat, mitreFolded } from '../../drawing/hem-corner.ts';
import type { ExactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { type Mitre, type MitreInput, mitre } from '../../sewing/hems/mitre.ts';
import { MITRE_TRIM } from '../../sewing/sources/mitres.ts';
import { drawnOf } from './drawn.ts';
import { cornerFields } from './fields.ts';

/** A mitred corner of two hems: a vent, a slit, a napkin. */
export const corner: Calculation = {
  id: 'corner',
  title: words.title,
  ...cornerFields.asked,
  work(draft, bench) {
    const read = cornerFields.read(draft, bench);
    if (!read.ok) return read;
    const outcome = mitre(read.value);
    if (!outcome.ok) return refusedFor(outcome.problems);
    return { ok: true, answer: answer(read.value, outcome.value, bench) };
  },
};

function answer(input: MitreInput, plan: Mitre, bench: Bench): Answer {
  const show = (x: ExactLength) => byTape(x, bench);
  const { alongBottom, upSide, trim } = plan;
  const twice = input.turned !== 'once';
  const edge = (name: string) => (twice ? words.pressed(name) : name);
  return {
    headline: { number: numberSaid(alongBottom, bench), after: words.after },
    sentence: [words.sentence(said(upSide, bench)), ...(twice ? [words.twice] : [])].join(' '),
    lines: [
      { label: words.bottom, value: show(alongBottom) },
      { label: words.side, value: show(upSide) },
      { label: words.trim, value: show(trim) },
    ],
    offers: [],
    warnings: [],
    cautions: [words.check],
    // Also where only the edge is named, as when it is followed, the turn comes first.
    runs: [
      { name: edge(words.alongBottom), item: turnedWords.line, run: plan.runs.bottom },
      { name: edge(words.upSide), item: turnedWords.line, run: plan.runs.side },
    ],
    figures: figures(input, plan),
    workings: [
      ...edgeWorkings(input, plan, bench),
      { formula: words.rule(MITRE_TRIM), source: words.source(MITRE_TRIM) },
    ],
  };
}

/** Each mark from the fold lines, and the fold lines from the depths where the cloth is thick. */
function edgeWorkings(input: MitreInput, plan: Mitre, bench: Bench): Working[] {
  const show = (x: ExactLength) => exactly(x, bench);
  const { bottom, side } = plan.foldLines;
  const angle = shownNumber(input.angle, 6, bench.decimalMark);
  const half = show(plan.halfFold);
  const thick =
    input.thickness > 0
      ? [
          foldWorking(input.thickness, input.turned === 'equal' ? 1 : 0, bench),
          halfFoldWorking(plan.halfFold, bench),
          ...(
            [
              [input.depth, bottom],
              [input.side, side],
            ] as const
          ).map(([depth, line]) => ({
            formula: turnedWords.sum([show(depth), half], show(line)),
            source: words.foldLine,
          })),
        ]
      : [];
  const mark = (near: ExactLength, far: ExactLength, at: ExactLength, name: string) => ({
    formula: words.formula(show(near), show(far), angle, show(at), name),
    source: words.derived,
  });
  return [
    ...thick,
    mark(side, bottom, plan.alongBottom, words.alongBottom),
    mark(bottom, side, plan.upSide, words.upSide),
  ];
}

function figures(input: MitreInput, plan: Mitre) {
  const corner = () => drawnOf(input, plan);
  return [
    { name: words.flat, draw: () => mitreFlat(corner()) },
    { name: words.folded, draw: () => mitreFolded(corner()) },
  ];
}
