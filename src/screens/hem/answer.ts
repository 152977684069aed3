import { type Bench, tapeStep } from '../../controls/bench.ts';
import type { Answer, Draft, Line, Offer } from '../../controls/calculation.ts';
import { exactly, onTape } from '../../controls/tape-text.ts';
import { hemSection, mitreFlat } from '../../drawing/hem-figure.ts';
import { type ExactLength, exactLength, toMm } from '../../lengths/length.ts';
import { showExact, shownText, showOnTape } from '../../lengths/show-length.ts';
import { type Hem, type HemInput, hemClass } from '../../sewing/hem.ts';
import type { CurvedHem } from '../../sewing/hem-curve.ts';
import type { Mitre } from '../../sewing/mitre.ts';
import {
  HEM_CLASSES,
  HEM_DEPTHS,
  HEM_STITCH,
  MITRE_TRIM,
  NARROW_HEM,
} from '../../sewing/sources/hems.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import type { Taper } from '../../sewing/taper.ts';
import { hemWords as words } from '../../words/hem-words.ts';
import { chosen } from './fields.ts';

/** Everything worked out about a hem. */
export interface Parts {
  hem: Hem;
  curve?: CurvedHem;
  corner?: Mitre;
  taper?: Taper;
  ease: number;
}

/** A hem as an answer. */
export function hemAnswer(input: HemInput, parts: Parts, draft: Draft, bench: Bench): Answer {
  const { hem } = parts;
  const show = (x: ExactLength) => exactly(x, bench);
  const first = hem.firstPress === undefined ? undefined : onTape(hem.firstPress, bench);
  const inward = chosen(draft, 'shape') === 'inward';
  return {
    headline: {
      number: showOnTape(hem.allowance, tapeStep(bench), bench.unit),
      after: words.after,
    },
    sentence: words.sentence(first, onTape(hem.hemLine, bench), onTape(hem.stitchUp, bench)),
    lines: [
      ...hemLines(hem, show),
      ...curveLines(parts, inward, show),
      ...cornerLines(parts, show),
      { label: words.classLabel, value: words.hemClass[hemClass(input.depth)] },
      { label: words.usual, value: HEM_DEPTHS.says },
    ],
    offers: [...shallower(parts, inward, draft, bench), ...narrower(input, draft)],
    warnings: [...curveWarnings(parts, inward, show), ...narrowWarning(input, draft, show)],
    cautions: [words.tryOn, words.iron(IRON_ONE_DOT.value)],
    runs: [{ name: words.title, item: words.press, run: hem.run }],
    figures: figures(input, parts, draft, show),
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
  if (hem.cutLength !== undefined) lines.push({ label: words.cut, value: show(hem.cutLength) });
  return lines;
}

function curveLines({ curve, taper }: Parts, inward: boolean, show: Show): Line[] {
  const lines: Line[] = [];
  if (curve) {
    const excess = curve.excess === undefined ? undefined : show(curve.excess);
    const full = words.fullnessOf(percent(curve.fullness), excess);
    lines.push({ label: words.radius, value: show(curve.radius) });
    lines.push({ label: inward ? words.stretch : words.fullness, value: full });
    if (!inward) lines.push({ label: words.deepest, value: show(curve.deepest) });
  }
  if (taper) {
    lines.push({
      label: words.widths,
      value: words.widthsOf(show(taper.atDepth), show(taper.atRawEdge)),
    });
  }
  return lines;
}

function cornerLines({ corner }: Parts, show: Show): Line[] {
  if (!corner) return [];
  return [
    { label: words.corner1, value: show(corner.alongBottom) },
    { label: words.corner2, value: show(corner.upSide) },
    { label: words.corner.mitre, value: words.cornerHow(show(corner.trim)) },
  ];
}

function curveWarnings({ curve, ease }: Parts, inward: boolean, show: Show): string[] {
  if (!curve) return [];
  const full = percent(curve.fullness);
  if (inward) return [words.inward(full)];
  return curve.fits ? [] : [words.tooFull(full, percent(ease), show(curve.deepest))];
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
function shallower({ curve }: Parts, inward: boolean, draft: Draft, bench: Bench): Offer[] {
  if (!curve || curve.fits || inward) return [];
  const step = tapeStep(bench);
  const depth = exactLength(Math.floor(curve.deepest / step) * step);
  if (depth <= 0) return [];
  return [
    {
      words: words.shallower(onTape(depth, bench)),
      take: { ...draft, depth: onTape(depth, bench) },
    },
  ];
}

function figures(input: HemInput, { hem, corner }: Parts, draft: Draft, show: Show) {
  const section = hemSection({
    depth: toMm(input.depth),
    turn: toMm(input.turn),
    stitchUp: toMm(hem.stitchUp),
    labels: {
      depth: words.sectionDepth(show(input.depth)),
      turn: words.sectionTurn(show(input.turn)),
    },
  });
  const drawn = [{ name: words.section, figure: section }];
  if (corner) {
    const flat = mitreFlat({
      bottom: toMm(input.depth),
      side: toMm(corner.side),
      angle: Number(draft.angle),
      alongBottom: toMm(corner.alongBottom),
      upSide: toMm(corner.upSide),
      trim: toMm(corner.trim),
    });
    drawn.push({ name: words.cornerFlat, figure: flat });
  }
  return drawn;
}

function workings(input: HemInput, { hem, curve, corner }: Parts, show: Show) {
  const folds =
    hem.takenByFolds > 0 ? words.foldsTerm(input.turn > 0 ? 2 : 1, show(hem.takenByFolds)) : '';
  const sum = words.formula(show(input.depth), show(input.turn), folds, show(hem.allowance));
  return [
    { formula: sum, source: words.source(HEM_STITCH) },
    ...(curve
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
    ...(corner ? [{ formula: `${MITRE_TRIM.says}.`, source: MITRE_TRIM.source }] : []),
  ];
}

function percent(part: number): string {
  return String(Math.round(part * 1000) / 10);
}
