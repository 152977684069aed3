import { facingWords as words } from '#words/calculations/facing-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import { type Bench, tapeStep } from '../../calculation/bench.ts';
import type { Answer, Line, Working } from '../../calculation/calculation.ts';
import { foldWorking, halfFoldWorking } from '../../calculation/fold-working.ts';
import { linesSaid } from '../../calculation/only-said.ts';
import { numberSaid, percentText } from '../../calculation/tape-said.ts';
import { byTape, exactly, onTape } from '../../calculation/tape-text.ts';
import { hemSection } from '../../drawing/hem-figure.ts';
import { insideGraduation } from '../../lengths/inside-graduation.ts';
import { type ExactLength, exactLength, toMm, ZERO } from '../../lengths/length.ts';
import { type Facing, facingLength } from '../../sewing/hems/hem-facing.ts';
import { FACING_SEAM } from '../../sewing/sources/facings.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import type { FacingAsked } from './fields.ts';

/** A faced hem as an answer. */
export function facingAnswer(input: FacingAsked, plan: Facing, bench: Bench): Answer {
  const within = { over: ZERO, under: input.depth };
  const stitchUp = insideGraduation(plan.stitchUp, tapeStep(bench), within);
  const stitch =
    stitchUp === undefined
      ? turned.stitchByEye(words.freeEdge)
      : turned.stitch(onTape(stitchUp, bench), words.hemLine);
  const [seam, turn] = [exactly(input.seam, bench), exactly(input.turn, bench)];
  return {
    headline: { number: numberSaid(plan.allowance, bench), after: words.after },
    sentence: `${input.turn > 0 ? words.sentence(seam, turn) : words.unturned(seam)} ${stitch}`,
    lines: lines(input, plan, bench),
    offers: [],
    warnings: [],
    cautions: [turned.tryOn, turned.iron(IRON_ONE_DOT.value)],
    runs: [{ name: words.title, item: turned.line, run: plan.run }],
    figures: figures(input, plan, bench),
    workings: workings(input, plan, bench),
  };
}

function lines(input: FacingAsked, plan: Facing, bench: Bench): Line[] {
  const show = (x: ExactLength) => byTape(x, bench);
  const { kind } = input;
  const given = kind === 'bias' ? plan.gives : undefined;
  const long = longOf(input);
  const added = exactLength(2 * plan.folds.atSeam + plan.folds.first);
  const thick = turned.thickOf(show(exactLength(Math.abs(added))), added < 0);
  const found: [string, string | undefined][] = [
    [words.deep[kind], show(plan.cutDeep)],
    [
      words.long[kind],
      long === undefined ? words.longOf[kind] : words.longNumber(show(long), words.longOf[kind]),
    ],
    [words.gives, given === undefined ? undefined : words.givesOf(percentText(given, bench))],
    [turned.thick, input.thickness > 0 ? thick : undefined],
    [
      turned.cut,
      plan.cutLength && turned.cutOf(show(plan.cutLength), input.otherEnd !== undefined),
    ],
  ];
  return linesSaid(found);
}

function longOf({ edge, seam }: FacingAsked): ExactLength | undefined {
  const long = edge === undefined ? undefined : facingLength(edge, seam);
  return long?.ok ? long.value : undefined;
}

function figures(input: FacingAsked, plan: Facing, bench: Bench) {
  const draw = () =>
    hemSection({
      depth: toMm(input.depth),
      turn: toMm(input.turn),
      stitchUp: toMm(plan.stitchUp),
      seam: toMm(input.seam),
      labels: {
        depth: turned.sectionDepth(exactly(input.depth, bench)),
        turn: turned.sectionTurn(exactly(input.turn, bench)),
      },
    });
  return [{ name: turned.section, draw }];
}

function workings(input: FacingAsked, plan: Facing, bench: Bench): Working[] {
  const show = (x: ExactLength) => exactly(x, bench);
  const { seam, depth, turn, thickness, radius, edge } = input;
  const long = longOf(input);
  const { folds, gives, cutDeep } = plan;
  const thick = thickness > 0;
  const added = [folds.atSeam, ...(turn > 0 ? [folds.first] : [])].map(show);
  const terms = [
    show(seam),
    show(depth),
    ...(turn > 0 ? [show(turn)] : []),
    ...(thick ? added : []),
  ];
  const given =
    input.kind === 'bias' && gives !== undefined && radius !== undefined
      ? [
          {
            formula: words.givesFormula(show(depth), show(radius), percentText(gives, bench)),
            source: words.givesSource,
          },
        ]
      : [];
  return [
    { formula: turned.sum(terms, show(cutDeep)), source: words.published(FACING_SEAM) },
    ...(thick ? [foldWorking(thickness, 0, bench), halfFoldWorking(folds.atSeam, bench)] : []),
    ...given,
    ...(edge === undefined || long === undefined
      ? []
      : [
          {
            formula: words.longFormula(show(edge), show(seam), show(long)),
            source: words.longSource,
          },
        ]),
  ];
}
