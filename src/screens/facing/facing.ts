import type { Bench } from '../../controls/bench.ts';
import type { Answer, Calculation, Draft, Line } from '../../controls/calculation.ts';
import { readDraft } from '../../controls/draft.ts';
import { roundIn } from '../../controls/draft-numbers.ts';
import { chosen, fieldsCalled } from '../../controls/fields.ts';
import { refusedFor } from '../../controls/problem-faults.ts';
import { exactly, numberOnTape, onTape } from '../../controls/tape-text.ts';
import { hemSection } from '../../drawing/hem-figure.ts';
import { type ExactLength, toMm } from '../../lengths/length.ts';
import { type Facing, type FacingInput, facedHem } from '../../sewing/hem-facing.ts';
import { FACING_SEAM } from '../../sewing/sources/hems.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import { facingWords as words } from '../../words/facing-words.ts';
import { turnedWords as turned } from '../../words/turned-words.ts';

const { length, optional, choice } = fieldsCalled(words.labels);

/** A hem finished with a facing, where its curve is too full or too short to be turned up. */
export const facing: Calculation = {
  id: 'facing',
  title: words.title,
  start: startingDraft,
  fields: () => [
    length('depth'),
    choice('kind', words.kind),
    length('seam'),
    length('turn'),
    length('edgeStitch'),
    optional('radius', turned.notGiven),
    optional('finished', turned.notGiven),
    optional('left', turned.notGiven),
  ],
  work(draft, bench) {
    const read = readDraft(draft, bench);
    const depth = read.length('depth');
    const seam = read.length('seam');
    const turn = read.length('turn');
    const edgeStitch = read.length('edgeStitch');
    const radius = read.maybeLength('radius');
    const finished = read.maybeLength('finished');
    const left = read.maybeLength('left');
    if (
      depth === undefined ||
      seam === undefined ||
      turn === undefined ||
      edgeStitch === undefined ||
      read.faults.length > 0
    ) {
      return { ok: false, faults: read.faults };
    }
    const input = { depth, seam, turn, edgeStitch, radius, finished, left };
    const outcome = facedHem(input);
    if (!outcome.ok) return refusedFor(outcome.problems);
    return { ok: true, answer: answer(input, outcome.value, draft, bench) };
  },
};

function startingDraft(bench: Bench): Draft {
  const scale = roundIn(bench);
  return {
    depth: scale('4', '40', '1 1/2'),
    kind: 'shaped',
    seam: scale('1', '10', '3/8'),
    turn: scale('0.6', '6', '1/4'),
    edgeStitch: scale('0.2', '2', '1/8'),
    radius: '',
    finished: '',
    left: '',
  };
}

function answer(input: FacingInput, plan: Facing, draft: Draft, bench: Bench): Answer {
  const show = (x: ExactLength) => exactly(x, bench);
  const [seam, depth, turn] = [show(input.seam), show(input.depth), show(input.turn)];
  const kind = chosen(draft, 'kind', words.kind);
  const deep = show(plan.cutDeep);
  const given = kind === 'bias' ? giveOf(input, plan, show) : undefined;
  const figure = hemSection({
    depth: toMm(input.depth),
    turn: toMm(input.turn),
    stitchUp: toMm(plan.stitchUp),
    seam: toMm(input.seam),
    labels: { depth: turned.sectionDepth(depth), turn: turned.sectionTurn(turn) },
  });
  const lines: Line[] = [
    { label: words.deep[kind], value: deep },
    { label: words.long[kind], value: words.longOf[kind] },
  ];
  if (given) lines.push({ label: words.gives, value: words.givesOf(given.percent) });
  if (plan.cutLength) lines.push({ label: turned.cut, value: show(plan.cutLength) });
  return {
    headline: {
      number: numberOnTape(plan.allowance, bench),
      after: words.after,
    },
    sentence: words.sentence(seam, turn, onTape(plan.stitchUp, bench)),
    lines,
    offers: [],
    warnings: [],
    cautions: [turned.tryOn, turned.iron(IRON_ONE_DOT.value)],
    runs: [{ name: words.title, item: turned.line, run: plan.run }],
    figures: [{ name: turned.section, figure }],
    workings: [
      { formula: words.formula(seam, depth, turn, deep), source: words.published(FACING_SEAM) },
      ...(given ? [{ formula: given.formula, source: '' }] : []),
    ],
  };
}

/** What the free edge of a bias strip has to give, where the curve is known. */
function giveOf(
  { depth, radius }: FacingInput,
  { gives }: Facing,
  show: (x: ExactLength) => string,
) {
  if (gives === undefined || radius === undefined) return undefined;
  const percent = String(Math.round(gives * 1000) / 10);
  return { percent, formula: words.givesFormula(show(depth), show(radius), percent) };
}
