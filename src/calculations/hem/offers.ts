import { hemWords as words } from '#words/hem-words.ts';
import { type Bench, tapeStep } from '../../calculation/bench.ts';
import type { Draft, Offer } from '../../calculation/calculation.ts';
import { percentText, saidAtMost } from '../../calculation/tape-said.ts';
import { exactly, onTape } from '../../calculation/tape-text.ts';
import { downToGraduation } from '../../lengths/graduation.ts';
import { ZERO } from '../../lengths/length.ts';
import { showExact, shownText } from '../../lengths/show-length.ts';
import type { HemInput } from '../../sewing/hem-input.ts';
import { HEM_CLASSES, NARROW_HEM } from '../../sewing/sources/hems.ts';
import { chosen, isWhole } from './fields.ts';
import type { Parts } from './parts.ts';

/** Other hems, a press away. */
export function hemOffers(input: HemInput, parts: Parts, draft: Draft, bench: Bench): Offer[] {
  return [...shallower(input, parts, draft, bench), ...narrower(input, draft)];
}

/** What is doubtful with this hem. */
export function hemWarnings(input: HemInput, parts: Parts, draft: Draft, bench: Bench): string[] {
  return [...curveWarnings(parts, bench), ...narrowWarning(input, draft, bench)];
}

function curveWarnings({ curve, ease }: Parts, bench: Bench): string[] {
  if (!curve || curve.fits) return [];
  const full = percentText(curve.fullness, bench);
  return curve.deepest === undefined
    ? [words.inward(full)]
    : [words.tooFull(full, percentText(ease, bench), saidAtMost(curve.deepest, bench))];
}

/** A hem called narrow that isn't. */
function narrowWarning({ depth }: HemInput, draft: Draft, bench: Bench): string[] {
  const wide = chosen(draft, 'style') === 'narrow' && depth > HEM_CLASSES.value.narrow;
  return wide ? [words.notNarrow(exactly(HEM_CLASSES.value.narrow, bench))] : [];
}

/** The published narrow hem, when a narrow one is wanted and this is another. */
function narrower({ depth, turn }: HemInput, draft: Draft): Offer[] {
  const { value } = NARROW_HEM;
  if (chosen(draft, 'style') !== 'narrow' || (depth === value && turn === value)) return [];
  const typed = shownText(showExact(value, 'in'), '.');
  const take = { ...draft, given: 'depth', depth: typed, turn: typed };
  return [{ words: words.narrowAsUsual(typed), take }];
}

/** A hem the curve takes, on a graduation of the tape, where there is one. */
function shallower(
  { depth: now, turn, edgeStitch }: HemInput,
  { curve }: Parts,
  draft: Draft,
  bench: Bench,
): Offer[] {
  if (!curve || curve.fits) return [];
  const depth = downToGraduation(curve.deepest ?? ZERO, tapeStep(bench));
  if (depth <= edgeStitch) return [];
  const text = onTape(depth, bench);
  // What was measured higher up stays where it was measured.
  const apart = draft.apart || (isWhole(draft) ? exactly(now, bench) : (draft.depth ?? ''));
  const less = turn > depth ? { turn: text } : {};
  return [
    {
      words: words.shallower(text),
      take: { ...draft, given: 'depth', depth: text, apart, ...less },
    },
  ];
}
