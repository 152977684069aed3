import { hemWords as words } from '#words/calculations/hem-words.ts';
import { type Bench, tapeStep } from '../../calculation/bench.ts';
import type { Offer } from '../../calculation/calculation.ts';
import type { Ask } from '../../calculation/field-spec.ts';
import { percentText, saidAtMost } from '../../calculation/tape-said.ts';
import { exactly, onTape } from '../../calculation/tape-text.ts';
import { downToGraduation } from '../../lengths/graduation.ts';
import { ZERO } from '../../lengths/length.ts';
import { showExact, shownText } from '../../lengths/show-length.ts';
import type { HemInput } from '../../sewing/hems/hem-input.ts';
import { HEM_CLASSES, NARROW_HEM } from '../../sewing/sources/hems.ts';
import { hemFields, isNarrow, isWhole } from './fields.ts';
import type { Parts } from './parts.ts';

/** Other hems, a press away. */
export function hemOffers(input: HemInput, parts: Parts, ask: Ask, bench: Bench): Offer[] {
  return [...shallower(input, parts, ask, bench), ...narrower(input, ask)];
}

/** What is doubtful with this hem. */
export function hemWarnings(input: HemInput, parts: Parts, ask: Ask, bench: Bench): string[] {
  return [...curveWarnings(parts, bench), ...narrowWarning(input, ask, bench)];
}

function curveWarnings({ curve, ease }: Parts, bench: Bench): string[] {
  if (!curve || curve.fits) return [];
  const full = percentText(curve.fullness, bench);
  return curve.deepest === undefined
    ? [words.inward(full)]
    : [words.tooFull(full, percentText(ease, bench), saidAtMost(curve.deepest, bench))];
}

/** A hem called narrow that isn't. */
function narrowWarning({ depth }: HemInput, ask: Ask, bench: Bench): string[] {
  const wide = isNarrow(ask) && depth > HEM_CLASSES.value.narrow;
  return wide ? [words.notNarrow(exactly(HEM_CLASSES.value.narrow, bench))] : [];
}

/** The published narrow hem, when a narrow one is wanted and this is another. */
function narrower({ depth, turn }: HemInput, ask: Ask): Offer[] {
  const { value } = NARROW_HEM;
  if (!isNarrow(ask) || (depth === value && turn === value)) return [];
  const typed = shownText(showExact(value, 'in'), '.');
  const take = hemFields.typing({ given: 'depth', depth: typed, turn: typed });
  return [{ words: words.narrowAsUsual(typed), take }];
}

/** A hem the curve takes, on a graduation of the tape, where there is one. */
function shallower(
  { depth: now, turn, edgeStitch }: HemInput,
  { curve }: Parts,
  ask: Ask,
  bench: Bench,
): Offer[] {
  if (!curve || curve.fits) return [];
  const depth = downToGraduation(curve.deepest ?? ZERO, tapeStep(bench));
  if (depth <= edgeStitch) return [];
  const text = onTape(depth, bench);
  // What was measured higher up stays where it was measured.
  const { specs } = hemFields;
  const apart = ask(specs.apart) || (isWhole(ask) ? exactly(now, bench) : ask(specs.depth));
  const less = turn > depth ? { turn: text } : {};
  return [
    {
      words: words.shallower(text),
      take: hemFields.typing({ given: 'depth', depth: text, apart, ...less }),
    },
  ];
}
