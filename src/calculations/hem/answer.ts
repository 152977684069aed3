import { hemWords as words } from '#words/calculations/hem-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import { type Bench, tapeStep } from '../../calculation/bench.ts';
import type { Answer } from '../../calculation/calculation.ts';
import type { Ask } from '../../calculation/field-spec.ts';
import { numberSaid, said } from '../../calculation/tape-said.ts';
import { exactly, onTape } from '../../calculation/tape-text.ts';
import { hemSection } from '../../drawing/hem-figure.ts';
import { toGraduation } from '../../lengths/graduation.ts';
import { toMm } from '../../lengths/length.ts';
import type { Hem } from '../../sewing/hems/hem.ts';
import type { HemInput } from '../../sewing/hems/hem-input.ts';
import { stitchUpOnTape } from '../../sewing/hems/hem-tape.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import { hemLines } from './lines.ts';
import { hemOffers, hemWarnings } from './offers.ts';
import type { Parts } from './parts.ts';
import { workings } from './workings.ts';

/** A hem as an answer. */
export function hemAnswer(input: HemInput, parts: Parts, ask: Ask, bench: Bench): Answer {
  const { hem } = parts;
  return {
    headline: { number: numberSaid(hem.allowance, bench), after: words.after },
    sentence: sentence(input, hem, bench),
    lines: hemLines(input, parts, ask, bench),
    offers: hemOffers(input, parts, ask, bench),
    warnings: hemWarnings(input, parts, ask, bench),
    cautions: [turned.tryOn, turned.iron(IRON_ONE_DOT.value)],
    runs: [{ name: words.title, item: turned.line, run: hem.run }],
    figures: figures(input, hem, bench),
    workings: workings(input, parts, bench),
  };
}

/** What to press and stitch, by the tape in hand; what it can't show, by eye. */
function sentence({ depth, turn }: HemInput, hem: Hem, bench: Bench): string {
  const { firstPress, hemLine } = hem;
  const step = tapeStep(bench);
  const stitchUp = stitchUpOnTape(hem, depth, step);
  const inner = firstPress === undefined ? words.rawEdge : words.innerFold;
  const press =
    firstPress !== undefined && toGraduation(firstPress, step) === 0
      ? words.pressByEye(exactly(turn, bench), said(hemLine, bench))
      : words.press(firstPress && onTape(firstPress, bench), said(hemLine, bench));
  const stitch =
    stitchUp === undefined
      ? turned.stitchByEye(inner)
      : turned.stitch(onTape(stitchUp, bench), words.fold);
  return `${press} ${stitch}`;
}

function figures({ depth, turn }: HemInput, hem: Hem, bench: Bench) {
  const draw = () =>
    hemSection({
      depth: toMm(depth),
      turn: toMm(turn),
      stitchUp: toMm(hem.stitchUp),
      labels: {
        depth: turned.sectionDepth(exactly(depth, bench)),
        turn: turned.sectionTurn(exactly(turn, bench)),
      },
    });
  return [{ name: turned.section, draw }];
}
