import { cornerWords as words } from '#words/corner-words.ts';
import { turnedWords } from '#words/turned-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Calculation, Draft, Working } from '../../calculation/calculation.ts';
import { readDraft } from '../../calculation/draft.ts';
import { numberOf, roundIn } from '../../calculation/draft-numbers.ts';
import { chosen, fieldsCalled } from '../../calculation/fields.ts';
import { foldWorking, halfFoldWorking } from '../../calculation/fold-working.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { numberSaid, said } from '../../calculation/tape-said.ts';
import { byTape, exactly } from '../../calculation/tape-text.ts';
import { mitreFlat, mitreFolded } from '../../drawing/hem-corner.ts';
import { type ExactLength, toMm, ZERO } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { type Mitre, type MitreInput, mitre } from '../../sewing/mitre.ts';
import { MITRE_TRIM } from '../../sewing/sources/mitres.ts';

const { length, optional, number, choice } = fieldsCalled(words.labels);

/** A mitred corner of two hems: a vent, a slit, a napkin. */
export const corner: Calculation = {
  id: 'corner',
  title: words.title,
  start: startingDraft,
  fields: () => [
    length('depth'),
    length('side'),
    number('angle'),
    choice('turned', words.turned),
    length('edgeStitch'),
    optional('thickness', turnedWords.notGiven),
  ],
  work(draft, bench) {
    const read = readDraft(draft, bench);
    const depth = read.length('depth');
    const side = read.length('side');
    const angle = numberOf(read, 'angle');
    const edgeStitch = read.length('edgeStitch');
    const thickness = read.maybeLength('thickness') ?? ZERO;
    if (
      depth === undefined ||
      side === undefined ||
      angle === undefined ||
      edgeStitch === undefined ||
      read.faults.length > 0
    ) {
      return { ok: false, faults: read.faults };
    }
    const turned = chosen(draft, 'turned', words.turned);
    const input = { depth, side, angle, edgeStitch, thickness, turned };
    const outcome = mitre(input);
    if (!outcome.ok) return refusedFor(outcome.problems);
    return { ok: true, answer: answer(input, outcome.value, bench) };
  },
};

function startingDraft(bench: Bench): Draft {
  const scale = roundIn(bench);
  return {
    depth: scale('4', '40', '1 1/2'),
    side: scale('1.5', '15', '5/8'),
    angle: '90',
    turned: 'once',
    edgeStitch: scale('0.2', '2', '1/8'),
    thickness: '',
  };
}

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
      { formula: `${MITRE_TRIM.says}.`, source: MITRE_TRIM.source },
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

function figures({ angle, edgeStitch, turned }: MitreInput, plan: Mitre) {
  const corner = {
    bottom: toMm(plan.foldLines.bottom),
    side: toMm(plan.foldLines.side),
    angle,
    alongBottom: toMm(plan.alongBottom),
    upSide: toMm(plan.upSide),
    trim: toMm(plan.trim),
    edgeStitch: toMm(edgeStitch),
    turnedTwice: turned !== 'once',
  };
  return [
    { name: words.flat, figure: mitreFlat(corner) },
    { name: words.folded, figure: mitreFolded(corner) },
  ];
}
