import { type Bench, tapeStep } from '../../controls/bench.ts';
import type { Answer, Draft, Line, Offer } from '../../controls/calculation.ts';
import { exactly, numberOnTape, onTape } from '../../controls/tape-text.ts';
import { hemSection } from '../../drawing/hem-figure.ts';
import { downToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, toMm, ZERO } from '../../lengths/length.ts';
import { showExact, shownText } from '../../lengths/show-length.ts';
import { type Hem, hemClass } from '../../sewing/hem.ts';
import type { CurvedHem } from '../../sewing/hem-curve.ts';
import type { HemInput } from '../../sewing/hem-input.ts';
import { HEM_CLASSES, HEM_DEPTHS, HEM_STITCH, NARROW_HEM } from '../../sewing/sources/hems.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import type { Taper } from '../../sewing/taper.ts';
import { hemWords as words } from '../../words/hem-words.ts';
import { turnedWords as turned } from '../../words/turned-words.ts';
import { chosen } from './fields.ts';

/** Everything worked out about a hem. */
export interface Parts {
  hem: Hem;
  curve?: CurvedHem;
  taper?: Taper;
  ease: number;
}

/** A hem as an answer. */
export function hemAnswer(input: HemInput, parts: Parts, draft: Draft, bench: Bench): Answer {
  const { hem } = parts;
  const show = (x: ExactLength) => exactly(x, bench);
  const first = hem.firstPress === undefined ? undefined : onTape(hem.firstPress, bench);
  return {
    headline: {
      number: numberOnTape(hem.allowance, bench),
      after: words.after,
    },
    sentence: words.sentence(first, onTape(hem.hemLine, bench), onTape(hem.stitchUp, bench)),
    lines: [
      ...hemLines(hem, show),
      ...curveLines(parts, show),
      { label: words.classLabel, value: words.hemClass[hemClass(input.depth)] },
      { label: words.usual, value: HEM_DEPTHS.says },
    ],
    offers: [...shallower(input, parts, draft, bench), ...narrower(input, draft)],
    warnings: [...curveWarnings(parts, show), ...narrowWarning(input, draft, show)],
    cautions: [turned.tryOn, turned.iron(IRON_ONE_DOT.value)],
    runs: [{ name: words.title, item: turned.line, run: hem.run }],
    figures: figures(input, parts, show),
    workings: workings(input, parts, show),
  };
}

type Show = (x: ExactLength) => string;

function hemLines(hem: Hem, show: Show): Line[] {
  const { first, second } = hem.foldTo;
  const lines = [
    {
      label: words.chalk,
      value: words.chalkOf(first === undefined ? undefined : show(first), show(second)),
    },
  ];
  if (hem.takenByFolds > 0) lines.push({ label: words.folds, value: show(hem.takenByFolds) });
  if (hem.cutLength !== undefined) lines.push({ label: turned.cut, value: show(hem.cutLength) });
  return lines;
}

function curveLines({ curve, taper }: Parts, show: Show): Line[] {
  const lines: Line[] = [];
  if (curve) {
    const { radius, inward, fullness, deepest } = curve;
    const excess = curve.excess === undefined ? undefined : show(curve.excess);
    const full = words.fullnessOf(percent(fullness), excess);
    const round = radius === undefined ? words.straight : show(radius);
    lines.push({ label: words.radius, value: round });
    lines.push({ label: inward ? words.stretch : words.fullness, value: full });
    if (deepest !== undefined) lines.push({ label: words.deepest, value: show(deepest) });
  }
  if (taper) {
    lines.push({
      label: words.widths,
      value: words.widthsOf(show(taper.atDepth), show(taper.atRawEdge)),
    });
  }
  return lines;
}

function curveWarnings({ curve, ease }: Parts, show: Show): string[] {
  if (!curve || curve.fits) return [];
  const full = percent(curve.fullness);
  return curve.deepest === undefined
    ? [words.inward(full)]
    : [words.tooFull(full, percent(ease), show(curve.deepest))];
}

/** A hem called narrow that isn't. */
function narrowWarning({ depth }: HemInput, draft: Draft, show: Show): string[] {
  const wide = chosen(draft, 'style') === 'narrow' && depth > HEM_CLASSES.value.narrow;
  return wide ? [words.notNarrow(show(HEM_CLASSES.value.narrow))] : [];
}

/** The published narrow hem, when a narrow one is wanted and this is another. */
function narrower({ depth, turn }: HemInput, draft: Draft): Offer[] {
  const { value } = NARROW_HEM;
  if (chosen(draft, 'style') !== 'narrow' || (depth === value && turn === value)) return [];
  const typed = shownText(showExact(value, 'in'), '.');
  return [{ words: words.narrowAsUsual(typed), take: { ...draft, depth: typed, turn: typed } }];
}

/** A hem the curve takes, on a graduation of the tape, where there is one. */
function shallower(
  { turn, edgeStitch }: HemInput,
  { curve }: Parts,
  draft: Draft,
  bench: Bench,
): Offer[] {
  if (!curve || curve.fits) return [];
  const depth = downToGraduation(curve.deepest ?? ZERO, tapeStep(bench));
  if (depth <= edgeStitch) return [];
  const text = onTape(depth, bench);
  // What was measured higher up stays where it was measured.
  const apart = draft.apart || (draft.depth ?? '');
  const take = { ...draft, depth: text, apart, ...(turn > depth ? { turn: text } : {}) };
  return [{ words: words.shallower(text), take }];
}

function figures(input: HemInput, { hem }: Parts, show: Show) {
  const section = hemSection({
    depth: toMm(input.depth),
    turn: toMm(input.turn),
    stitchUp: toMm(hem.stitchUp),
    labels: {
      depth: turned.sectionDepth(show(input.depth)),
      turn: turned.sectionTurn(show(input.turn)),
    },
  });
  return [{ name: turned.section, figure: section }];
}

function workings(input: HemInput, { hem, curve }: Parts, show: Show) {
  const folds =
    hem.takenByFolds > 0 ? words.foldsTerm(input.turn > 0 ? 2 : 1, show(hem.takenByFolds)) : '';
  const sum = words.formula(show(input.depth), show(input.turn), folds, show(hem.allowance));
  return [
    { formula: sum, source: words.source(HEM_STITCH) },
    ...(curve?.radius
      ? [
          {
            formula: words.curveFormula(
              show(input.depth),
              show(curve.radius),
              percent(curve.fullness),
            ),
            source: '',
          },
        ]
      : []),
  ];
}

function percent(part: number): string {
  return String(Math.round(part * 1000) / 10);
}
