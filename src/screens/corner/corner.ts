import type { Bench } from '../../controls/bench.ts';
import type { Answer, Calculation, Draft } from '../../controls/calculation.ts';
import { readDraft } from '../../controls/draft.ts';
import { numberOf, roundIn } from '../../controls/draft-numbers.ts';
import { chosen, fieldsCalled } from '../../controls/fields.ts';
import { refusedFor } from '../../controls/problem-faults.ts';
import { exactly, numberOnTape, onTape } from '../../controls/tape-text.ts';
import { mitreFlat, mitreFolded } from '../../drawing/hem-corner.ts';
import { type ExactLength, toMm } from '../../lengths/length.ts';
import { type Mitre, type MitreInput, mitre } from '../../sewing/mitre.ts';
import { MITRE_TRIM } from '../../sewing/sources/hems.ts';
import { cornerWords as words } from '../../words/corner-words.ts';
import { turnedWords } from '../../words/turned-words.ts';

const { length, number, choice } = fieldsCalled(words.labels);

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
  ],
  work(draft, bench) {
    const read = readDraft(draft, bench);
    const depth = read.length('depth');
    const side = read.length('side');
    const angle = numberOf(read, 'angle');
    const edgeStitch = read.length('edgeStitch');
    if (
      depth === undefined ||
      side === undefined ||
      angle === undefined ||
      edgeStitch === undefined
    ) {
      return { ok: false, faults: read.faults };
    }
    const input = { depth, side, angle, edgeStitch };
    const outcome = mitre(input);
    if (!outcome.ok) return refusedFor(outcome.problems);
    return { ok: true, answer: answer(input, outcome.value, draft, bench) };
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
  };
}

function answer(input: MitreInput, plan: Mitre, draft: Draft, bench: Bench): Answer {
  const show = (x: ExactLength) => exactly(x, bench);
  const { depth, side, angle } = input;
  const { alongBottom, upSide, trim } = plan;
  const twice = chosen(draft, 'turned', words.turned) === 'twice';
  const edge = (name: string) => (twice ? words.pressed(name) : name);
  return {
    headline: {
      number: numberOnTape(alongBottom, bench),
      after: words.after,
    },
    sentence: [words.sentence(onTape(upSide, bench)), ...(twice ? [words.twice] : [])].join(' '),
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
    figures: figures(input, plan, twice),
    workings: [
      {
        formula: words.formula(show(depth), show(side), angle, show(alongBottom)),
        source: words.derived,
      },
      { formula: `${MITRE_TRIM.says}.`, source: MITRE_TRIM.source },
    ],
  };
}

function figures({ depth, side, angle, edgeStitch }: MitreInput, plan: Mitre, twice: boolean) {
  const corner = {
    bottom: toMm(depth),
    side: toMm(side),
    angle,
    alongBottom: toMm(plan.alongBottom),
    upSide: toMm(plan.upSide),
    trim: toMm(plan.trim),
    edgeStitch: toMm(edgeStitch),
    turnedTwice: twice,
  };
  return [
    { name: words.flat, figure: mitreFlat(corner) },
    { name: words.folded, figure: mitreFolded(corner) },
  ];
}
