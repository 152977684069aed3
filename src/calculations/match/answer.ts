import { matchWords as words } from '#words/calculations/match-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Draft, Offer } from '../../calculation/calculation.ts';
import { asTyped } from '../../calculation/draft-text.ts';
import { numberSaid, percentText } from '../../calculation/tape-said.ts';
import { byTape, numberOnTape } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { totalOf } from '../../sewing/pieces/matching-input.ts';
import { waysToPair } from '../../sewing/pieces/matching-pairs.ts';
import type { MatchTyped } from './fields.ts';
import { matchShapes } from './figure.ts';
import { matchLines } from './lines.ts';
import { sleeveNotches } from './notches.ts';
import type { Matched } from './read.ts';
import { matchWorkings } from './workings.ts';
import { type Wrong, wrongs } from './wrong.ts';

/** So many ways to pair notches are offered, the likeliest first. */
const MOST_WAYS = 3;

/** Two edges as an answer. */
export function matchAnswer(found: Matched, draft: Draft, bench: Bench): Answer {
  const { asked, plan } = found;
  const wrong = wrongs(found, bench);
  const mixed = sleeveNotches(found)?.mixed === true;
  const [here, other] = [words.here[asked.use].called, words.other[asked.use].called];
  const runs = [
    { name: words.marks(here), item: words.mark, run: plan.runs.here },
    { name: words.marks(other), item: words.mark, run: plan.runs.other },
  ].filter(({ run }) => run.marks.length > 0);
  return {
    headline: mixed
      ? { number: words.mixedNumber, after: words.mixed }
      : headline(found, wrong[0], bench),
    sentence: sentence(found, wrong),
    lines: matchLines(found, bench),
    offers: [
      ...(mixed ? [turnedRound(found, draft)] : []),
      ...(plan.fewer ? pairings(found, draft, bench) : []),
      ...(wrong.length > 0 || plan.fewer ? offers(found, draft, bench) : []),
    ],
    warnings: [
      ...(mixed ? [words.mixedWhy(asked.hereFrom !== 'back')] : []),
      ...warnings(found, wrong, bench),
    ],
    cautions: [cautionWords.pins],
    runs,
    listsLast: true,
    figures: [{ name: words.edges, draw: () => matchShapes(found) }],
    workings: matchWorkings(found, bench),
  };
}

/** What is in the way, or what is to be eased in all. */
function headline({ asked, plan }: Matched, worst: Wrong | undefined, bench: Bench) {
  const [here, other] = [words.here[asked.use].called, words.other[asked.use].called];
  if (worst) {
    const { kind, i, by } = worst;
    const after = {
      short: words.tooShort(i, other),
      over: words.tooFull(i),
      differs: words.tooFull(i),
      seam: words.seamOff(other, plan.pairs?.met.other[i - 1] ?? i),
    }[kind];
    return { number: numberSaid(by, bench), after };
  }
  const number = numberOnTape(exactLength(Math.abs(plan.ease)), bench);
  const before = number.rounded ? words.about : '';
  if (plan.ease === 0) return { number, after: words.alike };
  return { before, number, after: words.ease(plan.ease > 0 ? other : here) };
}

function sentence({ asked, plan }: Matched, wrong: readonly Wrong[]): string {
  const [here, other] = [words.here[asked.use].called, words.other[asked.use].called];
  const many = [asked.here.length, asked.other.length] as const;
  if (plan.fewer === 'here') return words.unpaired([here, many[0]], [other, many[1]], other);
  if (plan.fewer === 'other') return words.unpaired([other, many[1]], [here, many[0]], other);
  const left = plan.pairs?.left;
  return [
    words.sentence(words.sewn[howSewn(plan, wrong)], other, here),
    ...(plan.moves || asked.here.length === 1 ? [] : [words.planned(other)]),
    ...(left && left.here.length > 0 ? [words.sewPast(left.here, here)] : []),
    ...(left && left.other.length > 0 ? [words.sewPast(left.other, other)] : []),
  ].join(' ');
}

/** What is too full for its cloth may still be gathered; what is missing, or is to be alike and isn't, can't be sewn. */
function howSewn({ lengths }: Matched['plan'], wrong: readonly Wrong[]): keyof typeof words.sewn {
  if (wrong.some(({ kind }) => kind === 'short' || kind === 'differs')) return 'mended';
  if (wrong.some(({ kind }) => kind === 'seam')) return 'moved';
  const [longer, shorter] = [
    lengths.some(({ ease }) => ease > 0),
    lengths.some(({ ease }) => ease < 0),
  ];
  if (longer && shorter) return 'turned';
  return longer || shorter ? 'eased' : 'alike';
}

function warnings(found: Matched, wrong: readonly Wrong[], bench: Bench): string[] {
  const { asked, input, plan } = found;
  const said = wrong
    .filter(({ kind }) => kind !== 'seam')
    .map((one) => warningOf(found, one, bench));
  const moved = wrong.some(({ kind }) => kind === 'seam');
  const weights = plan.fewer ? [] : input.weights;
  const jump = weights.findIndex((one, i) => {
    const next = weights[i + 1];
    if (next === undefined || one === 0 || next === 0) return false;
    return Math.max(one, next) > 2 * Math.min(one, next);
  });
  const larger = (weights[jump + 1] ?? 0) > (weights[jump] ?? 0) ? jump + 2 : jump + 1;
  return [
    ...said,
    ...(said.length > 0 ? [words.mend[asked.use]] : []),
    ...(moved ? [words.seamMoves(words.other[asked.use].called)] : []),
    ...(jump >= 0 ? [words.jump(larger)] : []),
  ];
}

function warningOf({ asked, plan, takes }: Matched, { kind, i, by }: Wrong, bench: Bench): string {
  const [here, other] = [words.here[asked.use].called, words.other[asked.use].called];
  const show = (x: ExactLength) => byTape(x, bench);
  const one = plan.lengths[Math.max(0, i - 1)];
  if (!one || kind === 'short') return words.short(i, other, here, show(by));
  if (kind !== 'over') return words.differs(i, other, show(by), one.ease < 0);
  // Its fullest part, and with it the whole of it, is brought down to what the cloth takes.
  const less = exactLength(by * (1 - takes / one.fullest));
  const [percent, most] = [percentText(one.fullest, bench), percentText(takes, bench)];
  return plan.fewer
    ? words.overAll(show(by), percent, most, show(less))
    : words.over(i, show(by), percent, most, show(less));
}

/** Which notches are left over, by what each way makes the lengths ease; the rest can be typed. */
function pairings({ asked, plan }: Matched, draft: Draft, bench: Bench): Offer[] {
  const more = words[plan.fewer === 'here' ? 'other' : 'here'][asked.use].called;
  return waysToPair({ ...asked, alone: [] })
    .slice(0, MOST_WAYS)
    .map(({ alone, here, other }) => {
      const take: MatchTyped = { alone: alone.join('; ') };
      const eases = here.map((one, i) => signed((other[i] ?? one) - one, bench));
      return { words: words.leaveOut(alone, more, eases), take: { ...draft, ...take } };
    });
}

function signed(ease: number, bench: Bench): string {
  const long = byTape(exactLength(Math.abs(ease)), bench);
  return ease < 0 ? words.less(long) : long;
}

/** The other edge notched anew, where its notches are what is wrong, or don't pair. */
function offers({ asked, plan }: Matched, draft: Draft, bench: Bench): Offer[] {
  if (!plan.fewer && !plan.moves?.some((by) => by !== 0)) return [];
  const take: MatchTyped = { other: asTyped(totalOf(asked.other), bench) };
  const name = words.other[asked.use].called;
  const said = asked.here.length > 1 ? words.anew(name) : words.asOne(name);
  return [{ words: said, take: { ...draft, ...take } }];
}

/** The sleeve head from its other end: as many lengths, the last one first, and its own notches counted from there. */
function turnedRound({ asked, plan }: Matched, draft: Draft): Offer {
  const left = plan.pairs?.left.other ?? [];
  const lengths = (draft.other ?? '').split(';').map((one) => one.trim());
  const take: MatchTyped = {
    other: lengths.reverse().join('; '),
    otherFrom: asked.hereFrom ?? 'front',
    ...(left.length > 0
      ? {
          alone: left
            .map((notch) => asked.other.length - notch)
            .reverse()
            .join('; '),
        }
      : {}),
  };
  return { words: words.turn, take: { ...draft, ...take } };
}
