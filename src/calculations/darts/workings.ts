import { dartsWords as words } from '#words/calculations/darts-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import type { LevelIntake } from '../../sewing/shaping/darts.ts';
import type { Taken } from './taken.ts';

const { formula } = words;

/** What seams and darts take, with its numbers. */
export function dartsWorkings(found: Taken, bench: Bench): Working[] {
  const { asked, input, plan } = found;
  const show = (x: ExactLength) => exactly(x, bench);
  const intake = formula.intake(show(asked.larger), show(asked.smaller), show(plan.intake));
  const shares = input.kinds.map(({ share }, i) =>
    shareOf(show(plan.intake), share, show(plan.exact[i] ?? ZERO), bench),
  );
  const terms = input.kinds.map(({ count }, i) => formula.times(count, show(plan.each[i] ?? ZERO)));
  const all = formula.all(terms, show(exactLength(plan.intake - plan.left)));
  return [
    { formula: [intake, ...shares, all].join(''), source: words.source },
    { formula: found.levels.map((one) => level(found, one, bench)).join(''), source: words.shares },
  ];
}

function shareOf(intake: string, share: number, each: string, bench: Bench): string {
  return formula.share(intake, shownNumber(share, 6, bench.decimalMark), each);
}

function level({ asked, input, plan }: Taken, at: LevelIntake, bench: Bench): string {
  const show = (x: ExactLength) => exactly(x, bench);
  const intake = formula.intake(show(asked.larger), show(at.level.girth), show(at.intake));
  const each = (i: number) => show(at.each[i] ?? ZERO);
  if (asked.legs === 'curved') {
    const shares = input.kinds.map(({ share }, i) =>
      shareOf(show(at.intake), share, each(i), bench),
    );
    return [intake, ...shares].join('');
  }
  const reaching = input.kinds.map(({ long }) => long !== undefined && long.length > at.level.at);
  const darts = input.kinds.flatMap(({ long }, i) =>
    long && reaching[i]
      ? [
          formula.narrowed(
            show(plan.each[i] ?? ZERO),
            show(long.length),
            show(at.level.at),
            each(i),
          ),
        ]
      : [],
  );
  const terms = input.kinds.flatMap(({ count }, i) =>
    reaching[i] ? [formula.times(count, each(i))] : [],
  );
  const seams = input.kinds.flatMap(({ long, count }, i) =>
    long ? [] : [formula.rest(show(at.intake), terms, count, each(i))],
  );
  return [intake, ...darts, ...seams].join('');
}
