import { matchWords as words } from '#words/calculations/match-words.ts';
import { type Bench, tapeStep } from '../../calculation/bench.ts';
import type { Line } from '../../calculation/calculation.ts';
import { percentText } from '../../calculation/tape-said.ts';
import { byTape } from '../../calculation/tape-text.ts';
import { toGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { partOf } from '../../sewing/pieces/matching.ts';
import { totalOf } from '../../sewing/pieces/matching-input.ts';
import { CAP_EASE } from '../../sewing/sources/matching.ts';
import { notchesAlone, sleeveNotches } from './notches.ts';
import type { Matched } from './read.ts';

/** The ease of each length and of all; where notches are, or where they should be; what is published. */
export function matchLines(found: Matched, bench: Bench): Line[] {
  const { asked, plan } = found;
  const other = words.other[asked.use].called;
  const show = (x: ExactLength) => byTape(exactLength(Math.abs(x)), bench);
  const difference = (ease: ExactLength, part: number) =>
    ease === 0
      ? words.lengthSame
      : words.lengthOf(show(ease), percentText(Math.abs(part), bench), ease < 0);
  const each = plan.lengths.map(({ here, ease }, i) => ({
    label: words.length(i + 1),
    value: difference(ease, partOf(ease, here)),
  }));
  const notchOf = (i: number) => plan.pairs?.met.other[i] ?? i + 1;
  const moved = (plan.moves ?? []).flatMap((by, i) =>
    toGraduation(exactLength(Math.abs(by)), tapeStep(bench)) === 0
      ? []
      : [{ label: words.move(notchOf(i), other), value: words.moveOf(show(by), by > 0) }],
  );
  const notched = plan.moves
    ? moved
    : plan.notches.map((at, i) => ({
        label: words.notch(notchOf(i), other),
        value: words.notchOf(byTape(at, bench)),
      }));
  return [
    ...fullestLine(found, bench),
    ...(plan.fewer ? wholeLines(found, bench) : each),
    ...(plan.fewer || each.length > 1
      ? [{ label: words.all, value: difference(plan.ease, plan.part) }]
      : []),
    ...notched,
    ...leftLines(found, bench),
    ...notchesLine(found),
    ...(asked.use === 'sleeve'
      ? CAP_EASE.map((rule) => ({ label: words.published, value: words.publishedOf(rule) }))
      : []),
  ];
}

/** What the cloth is asked to take, beside what it takes; a sleeve is gathered onto its cuff, whatever it takes. */
function fullestLine({ asked, plan, takes }: Matched, bench: Bench): Line[] {
  const fullest = Math.max(...plan.lengths.map((one) => one.fullest));
  if (fullest === 0 || asked.use === 'cuff') return [];
  const value = words.fullestOf(percentText(fullest, bench), percentText(takes, bench));
  return [{ label: plan.fewer ? words.fullestLeast : words.fullest, value }];
}

/** Both edges in all, where their lengths don't pair. */
function wholeLines({ asked }: Matched, bench: Bench): Line[] {
  const whole = (edge: readonly ExactLength[], called: string) => ({
    label: words.whole(called),
    value: words.wholeOf(byTape(totalOf(edge), bench), edge.length),
  });
  return [
    whole(asked.here, words.here[asked.use].called),
    whole(asked.other, words.other[asked.use].called),
  ];
}

/** Each notch that meets none, where it is said which, and where it lies. */
function leftLines(found: Matched, bench: Bench): Line[] {
  if (found.plan.fewer) return [];
  return (['here', 'other'] as const).flatMap((edge) =>
    notchesAlone(found, edge).map(({ notch, at }) => ({
      label: words.notch(notch, words[edge][found.asked.use].called),
      value: words.meetsNone(byTape(at, bench)),
    })),
  );
}

function notchesLine(found: Matched): Line[] {
  const notches = sleeveNotches(found);
  if (!notches || notches.mixed) return [];
  const [first, last] = [notches.first + 1, notches.last + 1].map(String) as [string, string];
  return [{ label: words.notches, value: words.notchesOf(first, last, notches.front) }];
}
