import { hemWords as words } from '#words/calculations/hem-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Line } from '../../calculation/calculation.ts';
import type { Ask } from '../../calculation/field-spec.ts';
import { percentText, saidAtMost } from '../../calculation/tape-said.ts';
import { byTape } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { type Hem, hemClass } from '../../sewing/hems/hem.ts';
import type { HemInput } from '../../sewing/hems/hem-input.ts';
import { HEM_DEPTHS, SKIRT_DEPTHS } from '../../sewing/sources/hems.ts';
import { isWhole } from './fields.ts';
import type { Parts } from './parts.ts';

/** The further numbers of a hem. */
export function hemLines(input: HemInput, parts: Parts, ask: Ask, bench: Bench): Line[] {
  const show = (x: ExactLength) => byTape(x, bench);
  return [
    ...(isWhole(ask) ? [{ label: words.labels.depth, value: show(input.depth) }] : []),
    ...measures(input, parts.hem, show),
    ...curveLines(parts, bench),
    ...taperLines(parts, show),
    { label: words.classLabel, value: words.hemClass[hemClass(input.depth)] },
    { label: words.usual, value: words.usualOf(HEM_DEPTHS) },
    { label: words.usualSkirts, value: words.usualOf(SKIRT_DEPTHS) },
  ];
}

type Show = (x: ExactLength) => string;

function measures({ thickness, otherEnd }: HemInput, hem: Hem, show: Show): Line[] {
  const { first, second } = hem.foldTo;
  const chalk = words.chalkOf(first && show(first), show(second));
  const lines = [{ label: words.chalk, value: chalk }];
  const added = exactLength(hem.folds.first + hem.folds.last);
  if (thickness > 0) {
    const size = show(exactLength(Math.abs(added)));
    lines.push({ label: turned.thick, value: turned.thickOf(size, added < 0) });
  }
  if (hem.cutLength !== undefined) {
    const value = turned.cutOf(show(hem.cutLength), otherEnd !== undefined);
    lines.push({ label: turned.cut, value });
  }
  return lines;
}

function curveLines({ curve }: Parts, bench: Bench): Line[] {
  if (!curve) return [];
  const { radius, inward, fullness, deepest, excess } = curve;
  const all = excess && byTape(excess, bench);
  const round = radius === undefined ? words.straight : byTape(radius, bench);
  return [
    { label: words.radius, value: round },
    {
      label: inward ? words.stretch : words.fullness,
      value: words.fullnessOf(percentText(fullness, bench), all),
    },
    ...(deepest === undefined ? [] : [{ label: words.deepest, value: saidAtMost(deepest, bench) }]),
  ];
}

function taperLines({ taper }: Parts, show: Show): Line[] {
  if (!taper) return [];
  const value = words.widthsOf(show(taper.atDepth), show(taper.atRawEdge));
  return [{ label: words.widths, value }];
}
