import { lacingWords as words } from '#words/lacing-words.ts';
import type { Draft, Field } from '../../calculation/calculation.ts';
import { chosen, fieldsCalled, isGiven } from '../../calculation/fields.ts';
import { exactLength, UNITS_PER_MM } from '../../lengths/length.ts';
import { hasTwoStrands, type LacingKind, strandsOf } from '../../sewing/lacing-kinds.ts';
import type { Repeat } from '../../sewing/lacing-repeat.ts';
import { readSteps } from '../../sewing/lacing-steps.ts';

const { length, optional, count, optionalCount, choice, text } = fieldsCalled(words.labels);

export const kindOf = (draft: Draft): LacingKind => chosen(draft, 'kind', words.kind);

/** The fields for the lacing chosen. */
export function lacingFields(draft: Draft): Field[] {
  const kind = kindOf(draft);
  return [
    choice('kind', words.kind),
    ...(kind === 'own' ? [text('own', words.ownHint)] : []),
    count('holes'),
    length('pitch'),
    optionalCount('holes2', words.oneRow),
    ...(isGiven(draft, 'holes2') ? [optional('pitch2', words.asFirst)] : []),
    length('margin'),
    length('thickness'),
    ...(kind === 'outside' ? [length('outside')] : []),
    optional('lace', words.asMargin),
    ...(hasTwoStrands(kind) ? [] : [choice('start', words.start)]),
    length('tail'),
    length('longest'),
    choice('step', stepChoices(draft)),
  ];
}

/**
 * How many steps on from the first are drawn: all there are, or those of one repeat.
 *
 * @param before the first one typed is before the hole is passed, so not drawn
 */
export function stepOf(draft: Draft, before: boolean): number | undefined {
  const step = chosen(draft, 'step', stepChoices(draft));
  return step === ALL ? undefined : Number(step.slice(STEP.length)) - (before ? 2 : 1);
}

const ALL = 'all';
/** Before a step's number: keys of digits alone would be sorted in front of all others. */
const STEP = 'step-';

function stepChoices(draft: Draft): Record<string, string> {
  const steps = repeatOf(draft)?.points.length ?? 0;
  const each = Array.from({ length: steps }, (_, i) => [`${STEP}${i + 2}`, String(i + 2)]);
  return { [ALL]: words.all, ...Object.fromEntries(each) };
}

/** Of any size: only its steps are counted. */
function repeatOf(draft: Draft): Repeat | undefined {
  const one = exactLength(UNITS_PER_MM);
  const kind = kindOf(draft);
  if (kind !== 'own') return strandsOf(kind, { margin: one, outside: one })[0]?.repeat;
  const read = readSteps(draft.own ?? '', one);
  return read.ok ? read.repeat : undefined;
}
