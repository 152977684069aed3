import type { Bench } from '../../controls/bench.ts';
import { exactly } from '../../controls/tape-text.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { type ClosuresInput, keptPitch, wholeRow } from '../../sewing/closure-input.ts';
import type { ClosurePlan } from '../../sewing/closures.ts';
import { pitchOf } from '../../sewing/segment.ts';
import { closuresWords as words } from '../../words/closures-words.ts';

const f = words.formulas;

/** A row with what it was worked out from, and how lengths are shown. */
interface Worked {
  plan: ClosurePlan;
  input: ClosuresInput;
  show: (x: ExactLength) => string;
}

/** How the row was got, with its numbers in it, for the rule and the branch that made it. */
export function closuresFormula(plan: ClosurePlan, input: ClosuresInput, bench: Bench): string {
  const worked: Worked = { plan, input, show: (x) => exactly(x, bench) };
  if (input.sewn?.length) return around(worked);
  const gap = gapSum(worked);
  if (plan.level && plan.count === 1) return gap + f.onLevel(worked.show(plan.level.at));
  if (!plan.level) return plan.remainder ? gap + kept(worked) : even(worked);
  const slid = plan.remainder !== undefined || input.levelBy === 'moved-ends';
  return slid ? gap + movedThrough(worked) : twoPitches(worked);
}

function around({ plan, input, show }: Worked): string {
  const sewn = input.sewn?.length ?? 0;
  const { rule } = input;
  const how = words.aroundBy;
  const said =
    rule.by === 'count'
      ? how.count
      : rule.by === 'widest'
        ? how.widest(show(rule.pitch))
        : how.nearest(show(keptPitch(rule) ?? exactLength(0)));
  return words.around(sewn, plan.count - sewn, said);
}

function gapSum({ input: { rule }, show }: Worked): string {
  if (rule.by !== 'gap') return '';
  return f.gap(show(rule.gap), show(rule.width), show(exactLength(rule.gap + rule.width)));
}

/** Spaces from first to last, with the shares of a space at its ends. */
function evenPitch({ plan, input, show }: Worked): string {
  const { opening, ends, top, bottom } = input;
  const pitch = show(pitchOf(wholeRow(input), plan.count));
  if (ends !== 'given') {
    const spaces = words.spaces(plan.count + (ends === 'whole' ? 1 : 0), false);
    return f.shares(show(opening), spaces, pitch);
  }
  const spaces = words.spaces(plan.count - 1, false);
  return f.even(show(opening), show(top), show(bottom), spaces, pitch);
}

function even(worked: Worked): string {
  const { plan, input, show } = worked;
  const { opening, ends, top, bottom, rule } = input;
  const place = show(plan.ends.top);
  const fewest = rule.by === 'widest' ? f.widest(show(rule.pitch)) : '';
  if (plan.count > 1) return evenPitch(worked) + fewest;
  return ends === 'given'
    ? f.middle(show(opening), show(top), show(bottom), place) + fewest
    : f.half(show(opening), place) + fewest;
}

/** A pitch kept from the top, and what is left over below. */
function kept({ plan, input, show }: Worked): string {
  const { count, ends, remainder } = plan;
  const below = remainder?.below ?? exactLength(0);
  const last = show(exactLength(input.opening - ends.bottom));
  const pitch = show(keptPitch(input.rule) ?? exactLength(0));
  const bottom = show(exactLength(ends.bottom - below));
  return (
    (count > 1 ? f.last(show(ends.top), count - 1, pitch, last) : '') +
    f.left(show(input.opening), last, bottom, show(below))
  );
}

/** One pitch through the level, out to both ends. */
function movedThrough(worked: Worked): string {
  const { plan, input, show } = worked;
  const { stretches, ends } = plan;
  const [above, below] = besideLevel(plan);
  const pitch = stretches[0]?.pitch ?? exactLength(0);
  const level = show(input.level ?? exactLength(0));
  const out = [
    ...(above > 0 ? [f.toFirst(level, above, show(pitch), show(ends.top))] : []),
    ...(below > 0
      ? [f.fromLast(show(input.opening), level, below, show(pitch), show(ends.bottom))]
      : []),
  ].join('; ');
  if (plan.remainder) return `${out}.`;
  const asEven = pitchOf(wholeRow(input), plan.count);
  const isEven = Math.abs(asEven - pitch) < 1;
  return isEven ? `${evenPitch(worked)} ${out}.${f.moved}` : `${out}.${f.narrowed(show(asEven))}`;
}

function twoPitches({ plan, input, show }: Worked): string {
  const { opening, bottom, top, ends, rule, level = exactLength(0) } = input;
  const [above, below] = besideLevel(plan);
  const given = ends === 'given';
  const spaces = (count: number) =>
    words.spaces(count + (ends === 'whole' ? 1 : 0), ends === 'half');
  const upper = given ? f.minus(show(level), show(top)) : show(level);
  const lower = given
    ? f.minusTwo(show(opening), show(level), show(bottom))
    : f.minus(show(opening), show(level));
  const pitchAbove = show(plan.stretches[0]?.pitch ?? exactLength(0));
  const pitchBelow = show(plan.stretches.at(-1)?.pitch ?? exactLength(0));
  const parts = [
    ...(above > 0 ? [f.above(upper, spaces(above), pitchAbove)] : []),
    ...(below > 0 ? [f.below(lower, spaces(below), pitchBelow)] : []),
  ];
  const why = rule.by === 'widest' ? f.widest(show(rule.pitch)) : parts.length > 1 ? f.least : '';
  return `${parts.join('; ')}.${why}`;
}

/** How many spaces lie above the level's mark, and how many below. */
function besideLevel({ run, count }: ClosurePlan): [above: number, below: number] {
  const at = run.marks.findIndex(({ kind }) => kind === 'level');
  return [at, count - 1 - at];
}
