import type { Bench } from '../../calculation/bench.ts';
import type { Listed } from '../../garment/record/listed.ts';
import { isLastHome, type LastHome } from '../../screens/garment/home/last-home.tsx';

/** Of so many garments it is kept what their home last said: a start reads them all. */
const MOST = 20;

/** What the homes of garments last said, by id; that of the latest last. */
type LastHomes = Readonly<Record<string, LastHome>>;

/** What is to be kept once one home says something else, or nothing that can be shown. */
export function withLastHome(
  kept: unknown,
  garment: string,
  last: LastHome | undefined,
): LastHomes {
  const all = typeof kept === 'object' && kept !== null ? Object.entries(kept) : [];
  const others = all.filter(([id, one]) => id !== garment && isLastHome(one, id));
  return Object.fromEntries([...others, ...(last ? [[garment, last]] : [])].slice(-MOST));
}

/** What the home of a garment last said, as it would say it on this bench. */
export function lastHomeIn(kept: unknown, garment: string, bench: Bench): LastHome | undefined {
  const one = (kept as LastHomes | undefined)?.[garment];
  return isLastHome(one, garment) && one.bench === benchSaid(bench)
    ? { ...one, hand: bench.hand }
    : undefined;
}

/** Whether it was said of a garment as a list has it: since then nothing of it was changed. */
export function isOf(last: LastHome, { changed, edits }: Pick<Listed, 'changed' | 'edits'>) {
  return last.changed === changed && last.edits === edits;
}

/** All of a bench that a number is said by. */
export function benchSaid({ unit, metric, inch, decimalMark }: Bench): string {
  return [unit, metric, inch, decimalMark].join(' ');
}
