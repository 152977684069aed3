import { closuresWords as words } from '#words/closures-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Calculation, Draft } from '../../calculation/calculation.ts';
import { type DraftReader, readDraft } from '../../calculation/draft.ts';
import { countOf, lengthsOf, roundIn } from '../../calculation/draft-numbers.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { ZERO } from '../../lengths/length.ts';
import type { ClosuresInput, SpacingRule } from '../../sewing/closure-input.ts';
import { spaceClosures } from '../../sewing/closures.ts';
import { closuresAnswer } from './answer.ts';
import { besideRow } from './beside.ts';
import { asksLeastGap, byOf, closureFields, endsOf } from './fields.ts';

/** Hooks, buttons, snaps or ties along an opening. */
export const closures: Calculation = {
  id: 'closures',
  title: words.title,
  start: startingDraft,
  fields: closureFields,
  work(draft, bench) {
    const read = readDraft(draft, bench);
    const input = closuresInput(read, draft, bench);
    const beside = besideRow(read, draft, bench);
    if (!input || read.faults.length > 0) return { ok: false, faults: read.faults };
    const outcome = spaceClosures(input);
    if (!outcome.ok) return refusedFor(outcome.problems);
    if (beside.problems.length > 0) {
      return refusedFor(beside.problems);
    }
    return { ok: true, answer: closuresAnswer(outcome.value, input, draft, bench, beside) };
  },
  beside: [
    { id: 'buttonhole', label: words.buttonhole },
    {
      id: 'parts',
      label: words.parts,
      carry: ({ opening = '' }) => ({ length: opening, round: 'open' }),
    },
  ],
  around: (draft, made, count) => ({
    ...draft,
    sewn: made.join('; '),
    made: '',
    by: 'count',
    // A clear gap that was asked for is still the least; the number is what is kept now.
    ...(byOf(draft) === 'gap' ? { leastGap: draft.gap ?? '' } : {}),
    count: String(count),
  }),
};

function startingDraft(bench: Bench): Draft {
  const of = roundIn(bench);
  return {
    opening: of('46.3', '463', '18 1/4'),
    count: '7',
    top: of('1.2', '12', '1/2'),
    bottom: of('2.5', '25', '1'),
    by: 'count',
    pitch: of('5', '50', '2'),
    gap: of('3', '30', '1'),
    ends: 'given',
    item: 'hook',
    width: '',
    level: '',
    levelBy: 'two-pitches',
    sewn: '',
    leastGap: '',
    side: 'none',
    setBack: '1/8 in',
    lap: of('2', '20', '3/4'),
  };
}

/** The input of the arithmetic; undefined when a field it needs could not be read. */
function closuresInput(read: DraftReader, draft: Draft, bench: Bench): ClosuresInput | undefined {
  const ends = endsOf(draft);
  const opening = read.length('opening');
  const rule = spacingRule(read, draft);
  const top = ends === 'given' ? read.length('top') : ZERO;
  const bottom = ends === 'given' ? read.length('bottom') : ZERO;
  const level = read.maybeLength('level');
  const sewn = lengthsOf(read, 'sewn', bench);
  const leastGap = asksLeastGap(draft) ? read.maybeLength('leastGap') : undefined;
  const width = byOf(draft) === 'gap' ? undefined : read.maybeLength('width');
  if (opening === undefined || !rule || top === undefined || bottom === undefined) return undefined;
  const levelBy = read.text('levelBy') === 'moved-ends' ? 'moved-ends' : 'two-pitches';
  return { opening, ends, top, bottom, rule, level, levelBy, sewn, width, leastGap };
}

function spacingRule(read: DraftReader, draft: Draft): SpacingRule | undefined {
  const by = byOf(draft);
  if (by === 'count') {
    const count = countOf(read, 'count');
    return count === undefined ? undefined : { by, count };
  }
  if (by === 'gap') {
    const gap = read.length('gap');
    const width = read.length('width');
    return gap === undefined || width === undefined ? undefined : { by, gap, width };
  }
  const pitch = read.length('pitch');
  return pitch === undefined ? undefined : { by, pitch };
}
