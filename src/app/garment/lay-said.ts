import { layWords as words } from '#words/garment/garment-lay-words.ts';
import { onTape } from '../../calculation/tape-text.ts';
import { besideLay, type LayNow } from '../../garment/materials/lay-now.ts';
import type { MaterialNow } from '../../garment/materials/materials.ts';
import { biasOf, isBias } from '../../garment/materials/net.ts';
import { upToUnit, withSpare } from '../../garment/materials/to-buy.ts';
import { idOfLaid, isSamePlace } from '../../garment/record/cloth-lay.ts';
import { readHome } from '../../garment/record/home.ts';
import type { LayFault } from '../../lay/check-lay.ts';
import { usedShare } from '../../lay/check-lay.ts';
import type { ClothOutcome, ClothProblem } from '../../lay/cloth.ts';
import type { Lay, LayTask } from '../../lay/task.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { exactLength, mm } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { laySaid } from '../../screens/garment/materials/lay-stale.ts';
import { amountText, soldText } from '../../screens/garment/materials/materials-text.ts';
import { workName } from '../../screens/garment/said/names.ts';
import type { Telling } from '../../screens/garment/said/told-words.ts';
import type { LaySums } from '../../screens/lay/lay-found.tsx';
import type { LayShown } from '../../screens/lay/lay-shown.ts';
import { foundFor, keptPlace, seenIn } from '../lay/lay-task.ts';
import type { Look } from '../lay/use-look.ts';

/** What is laid, as it is told. */
export interface Told {
  one: MaterialNow;
  now: LayNow;
  telling: Telling;
}

/** A piece as its work is called. */
function pieceName({ answer }: Telling, laidId: string): string {
  const { id, side } = readHome(idOfLaid({ id: laidId }));
  return workName({ answer }, id, side);
}

/** A lay to be looked at: named, in the order in which it is laid out. */
export function shownLay({ now, telling }: Told, task: LayTask, lay: Lay): LayShown {
  return {
    ...{ width: task.width, length: lay.length, folded: now.of?.folded === true },
    flaws: task.flaws ?? [],
    pieces: seenIn(task, lay).map(({ at, home, laid, outline, onFold }) => {
      const stays = now.fixed.some((one) => isSamePlace(one, keptPlace(laid)));
      const isCut = (now.needs.get(home)?.state ?? 'planned') !== 'planned';
      return {
        ...{ key: String(at), name: pieceName(telling, home), outline, onFold },
        turned: laid.turn !== 0,
        stays: stays ? (isCut ? 'cut' : 'put') : undefined,
      };
    }),
  };
}

/** What it takes, what is to be bought for it, and how well it uses the cloth. */
export function sumsOf({ one, now, telling }: Told, task: LayTask, lay: Lay): LaySums {
  const length = now.of ? foundFor(lay, now.of).length : 0;
  const all = length + besideLay(one, now) + (one.said.more ?? 0);
  const bought = upToUnit(withSpare(all, one.said), one.said.unit);
  const { bench } = telling;
  const most = bought ?? length;
  return {
    most: onTape(exactLength(most), bench, upToGraduation),
    sold: soldText(most, bench),
    takes: bought === undefined ? undefined : amountText('laid', length, bench),
    used: shownNumber(100 * usedShare(task, lay), 1, bench.decimalMark),
  };
}

/** All that is in the way of a lay, or to be known of it. */
export function warningsSaid(
  told: Told,
  outcome: ClothOutcome | undefined,
  faults: readonly LayFault[],
  ended: Look['ended'],
  shown: boolean,
): string[] {
  const { one, now, telling } = told;
  const name = (id: string) => pieceName(telling, id);
  const waiting =
    one.needs.filter((need) => !isBias(need)).length - now.needs.size - now.gone.length;
  return [
    ...(now.of ? [] : [words.noWidth]),
    ...(outcome && !outcome.ok ? problemSaid(told, outcome.problem) : []),
    ...(ended === 'fits nowhere' ? [words.fitsNowhere] : []),
    ...(ended === 'failed' ? [words.failed] : []),
    ...faults.flatMap((fault) => faultSaid(fault, name, (now.of?.gap ?? 0) > 0)),
    ...(now.stale && (!shown || now.stale.pieces.length > 0 || now.stale.cloth)
      ? [laySaid(telling, now)]
      : []),
    ...(waiting > 0 ? [words.waiting(waiting)] : []),
    ...patternSaid(told),
    ...biasSaid(told),
    ...(now.gone.length > 0 ? [words.cutApart(now.gone.map(({ home }) => name(home)))] : []),
    ...(outcome?.ok && outcome.wasted.length > 0 ? [words.wasted(outcome.wasted.map(name))] : []),
  ];
}

/** What a pattern asks of the lay, or why it has no say in it. */
function patternSaid({ now, telling }: Told): string[] {
  const { repeat, folded } = now.of ?? {};
  if (repeat === undefined) return [];
  const long = onTape(exactLength(repeat), telling.bench, upToGraduation);
  return [folded ? words.patternFolded : words.pattern(long)];
}

/** Bias strips have no place among the pieces: they are cut beyond them. */
function biasSaid({ one, telling }: Told): string[] {
  const { long } = biasOf(one, one.needs);
  return long > 0 ? [words.bias(amountText('laid', long, telling.bench))] : [];
}

function problemSaid({ now, telling }: Told, problem: ClothProblem): string[] {
  const { bench } = telling;
  switch (problem.kind) {
    case 'wider-than-cloth': {
      const by = onTape(exactLength(mm(problem.width - problem.room)), bench, upToGraduation);
      const wide = now.of?.folded ? words.wideFolded : words.wide;
      return [wide(pieceName(telling, problem.id), by)];
    }
    case 'too-many':
      return [words.tooMany(String(problem.count), String(problem.most))];
    case 'no-width':
      return [words.noWidth];
    default:
      return [words.fitsNowhere];
  }
}

function faultSaid(fault: LayFault, name: (id: string) => string, apart: boolean): string[] {
  if (fault.kind === 'overlap') {
    if (fault.other === '') return [words.onFlaw(name(fault.id))];
    const say = apart ? words.near : words.over;
    return [say(name(fault.id), name(fault.other))];
  }
  if (fault.kind === 'off-repeat') return [words.offRepeat(name(fault.id))];
  return fault.kind === 'off-cloth' || fault.kind === 'off-fold' ? [words.off(name(fault.id))] : [];
}
