import { closuresWords } from '#words/calculations/closures-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { exactLength } from '../../lengths/length.ts';
import { type ClosuresInput, keptPitch, wholeRow } from '../../sewing/closures/closure-input.ts';
import type { ClosurePlan } from '../../sewing/closures/closures.ts';
import { pitchOf } from '../../sewing/closures/segment.ts';

const words = closuresWords.formula;

/** A row with what it was worked out from, and how lengths are shown. */
interface Worked {
  plan: ClosurePlan;
  input: ClosuresInput;
  given: boolean;
  show: (x: number) => string;
  /** The first pitch as shown, and the one that was asked for. */
  pitch: string;
  wanted: string;
}

/** How the row was got, with its numbers in it, for the rule and the branch that made it. */
export function closuresFormula(
  plan: ClosurePlan,
  input: ClosuresInput,
  offset: number,
  bench: Bench,
): string {
  const show = (x: number) => exactly(exactLength(x), bench);
  const { rule, level, levelBy, sewn } = input;
  if (input.follow) return words.followed(plan.count, offset === 0 ? '' : show(offset));
  const wanted = show('pitch' in rule ? rule.pitch : (keptPitch(rule) ?? 0));
  const pitch = show(plan.stretches[0]?.pitch ?? 0);
  const worked = { plan, input, given: input.ends === 'given', show, pitch, wanted };
  if (sewn?.length) {
    const how = rule.by === 'widest' ? words.within : words.nearest;
    return words.around(rule.by === 'count' ? '' : how(wanted));
  }
  const fewest = rule.by === 'widest' ? words.widest(wanted) : '';
  const gap = rule.by === 'gap' ? `${show(rule.gap)} + ${show(rule.width)} = ${wanted}. ` : '';
  if (level === undefined) return plan.remainder ? gap + kept(worked) : even(worked) + fewest;
  if (plan.count === 1) return gap;
  if (plan.remainder) return gap + through(worked, level);
  return levelBy === 'moved-ends'
    ? moved(worked) + through(worked, level)
    : twoPitches(worked, level, fewest);
}

/** From first to last, or the whole opening, over its spaces; one alone in the middle. */
function even({ plan: { count, ends }, input, given, show }: Worked): string {
  const { opening, top, bottom } = input;
  const room = given ? `(${[opening, top, bottom].map(show).join(' − ')})` : show(opening);
  if (count === 1) return `${given ? `${show(top)} + ` : ''}${room} ÷ 2 = ${show(ends.top)}.`;
  const spaces = count + { given: -1, half: 0, whole: 1 }[input.ends];
  const pitch = show(pitchOf(wholeRow(input), count));
  return `${room} ÷ ${spaces} = ${pitch}${given ? '' : words.shares}.`;
}

/** A pitch kept from the top, and what is left over below. */
function kept({ plan, input: { opening }, show, wanted }: Worked): string {
  const { count, ends, remainder } = plan;
  const below = remainder?.below ?? 0;
  const last = show(opening - ends.bottom);
  return [
    ...(count > 1
      ? [`${show(ends.top)} + ${count - 1} × ${wanted} = ${last}${words.toLast}; `]
      : []),
    `${show(opening)} − ${last} − ${show(ends.bottom - below)} = ${show(below)}${words.left}.`,
  ].join('');
}

/** One pitch from the level out to both ends. */
function through({ plan, input: { opening }, show, pitch }: Worked, level: number): string {
  const [above, below] = besideLevel(plan);
  const at = show(level);
  return `${at} − ${above} × ${pitch} = ${show(plan.ends.top)}${words.above}; ${show(opening)} − ${at} − ${below} × ${pitch} = ${show(plan.ends.bottom)}${words.below}.`;
}

/** Where the pitch of moved ends comes from. */
function moved(worked: Worked): string {
  const { plan, input, show } = worked;
  const asEven = pitchOf(wholeRow(input), plan.count);
  const narrowed = Math.abs(asEven - (plan.stretches[0]?.pitch ?? 0)) >= 1;
  return narrowed ? words.narrowed(show(asEven)) : `${even(worked)} `;
}

function twoPitches(worked: Worked, level: number, fewest: string): string {
  const { plan, input, given, show, pitch } = worked;
  const { opening, top, bottom, ends } = input;
  const [above, below] = besideLevel(plan);
  const over = (room: number[], spaces: number, one: string) =>
    spaces === 0
      ? []
      : `(${room.filter(Boolean).map(show).join(' − ')}) ÷ ${ends === 'half' ? `${spaces} 1/2` : spaces + (given ? 0 : 1)} = ${one}`;
  const parts = [
    over([level, given ? top : 0], above, `${pitch}${words.above}`),
    over(
      [opening, level, given ? bottom : 0],
      below,
      `${show(plan.stretches.at(-1)?.pitch ?? 0)}${words.below}`,
    ),
  ].flat();
  return `${parts.join('; ')}.${fewest || (parts.length > 1 ? words.least : '')}`;
}

/** How many spaces lie above the level's mark, and how many below. */
function besideLevel({ run, count }: ClosurePlan): [above: number, below: number] {
  const at = run.marks.findIndex(({ kind }) => kind === 'level');
  return [at, count - 1 - at];
}
