import { layClothWords as words } from '#words/garment/garment-lay-cloth-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import { onTape } from '../../calculation/tape-text.ts';
import type { LaidOf } from '../../garment/record/cloth-lay.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { exactLength, inches, type Length, mm } from '../../lengths/length.ts';
import type { BenchUnit } from '../../lengths/unit.ts';
import { amountText } from '../../screens/garment/materials/materials-text.ts';
import { cutOutlines } from './cut-outlines.ts';
import { lookForLay } from './lay-maker.ts';
import { taskFor } from './lay-task.ts';

/** Widths cloth is often sold in. Common practice, no source. */
const SOLD_METRIC: readonly Length[] = [900, 1150, 1400, 1500].map((wide) => mm(wide));
const SOLD_INCHES: readonly Length[] = [36, 45, 54, 60].map((wide) => inches(wide));

/** A few seconds each: what is compared was looked for as long. */
const SECONDS = 4;

/** What is otherwise about a cloth. */
type OtherCloth =
  | { kind: 'as it is' }
  | { kind: 'width'; width: Length }
  | { kind: 'open' | 'no nap' };

/** A cloth that might be taken instead, and what is to be laid on it. */
interface Variant {
  other: OtherCloth;
  of: LaidOf;
}

/**
 * The cloth as it is, the next wider and narrower that is often sold, and what giving up the fold
 * or the nap would leave.
 * @param width usable, as it was said; `of` has it washed
 */
export function variantsOf(of: LaidOf, width: number, unit: BenchUnit): Variant[] {
  const sold = unit === 'in' ? SOLD_INCHES : SOLD_METRIC;
  const wider = sold.find((wide) => wide > width);
  const narrower = [...sold].reverse().find((wide) => wide < width);
  // Other cloth hasn't its flaws.
  const { flaws: _, ...sound } = of;
  const washed = (wide: number) => Math.floor((wide * of.width) / width);
  const widths = [narrower, wider].filter((wide) => wide !== undefined);
  return [
    { other: { kind: 'as it is' }, of },
    ...widths.map((wide): Variant => {
      return { other: { kind: 'width', width: wide }, of: { ...sound, width: washed(wide) } };
    }),
    ...(of.folded ? [{ other: { kind: 'open' } as const, of: { ...of, folded: false } }] : []),
    ...(of.nap ? [{ other: { kind: 'no nap' } as const, of: { ...of, nap: false } }] : []),
  ];
}

/** How long a lay on it is, in mm, after a short look; undefined where the pieces don't fit. */
async function shortLook({ of }: Variant, signal: AbortSignal): Promise<number | undefined> {
  const task = taskFor(of, [], await cutOutlines(of));
  if (!task.ok) return undefined;
  let best: number | undefined;
  const onBetter = ({ length }: { length: number }) => {
    best = length;
  };
  await lookForLay({ task: task.value, seconds: SECONDS }, { signal, onBetter });
  return best;
}

/** All of them looked for one after another, each told when it is known. */
export async function lookForOthers(
  variants: readonly Variant[],
  bench: Bench,
  signal: AbortSignal,
  onLine: (line: string) => void,
): Promise<void> {
  let now: number | undefined;
  for (const variant of variants) {
    const long = await shortLook(variant, signal);
    onLine(otherSaid(variant.other, long, now, bench));
    if (variant.other.kind === 'as it is') now = long;
  }
}

/** What one of them takes, and how much more or less than the cloth as it is. In mm. */
function otherSaid(
  other: OtherCloth,
  long: number | undefined,
  now: number | undefined,
  bench: Bench,
): string {
  const what = whatSaid(other, bench);
  if (long === undefined) return words.cannot(what);
  const takes = amountText('laid', mm(long), bench);
  if (other.kind === 'as it is' || now === undefined) return words.takesOnly(what, takes);
  const by = onTape(exactLength(mm(Math.abs(long - now))), bench, upToGraduation);
  if (Math.abs(long - now) < 1) return words.takesSame(what, takes);
  return long < now ? words.takesLess(what, takes, by) : words.takesMore(what, takes, by);
}

function whatSaid(other: OtherCloth, bench: Bench): string {
  switch (other.kind) {
    case 'width':
      return words.width(onTape(exactLength(other.width), bench));
    case 'open':
      return words.open;
    case 'no nap':
      return words.noNap;
    case 'as it is':
      return words.asItIs;
  }
}
