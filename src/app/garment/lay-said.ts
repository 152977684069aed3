import { layFoundWords as words } from '#words/garment/garment-lay-found-words.ts';
import { onTape } from '../../calculation/tape-text.ts';
import { besideLay, type LayNow } from '../../garment/materials/lay-now.ts';
import type { MaterialNow } from '../../garment/materials/materials.ts';
import { biasOf } from '../../garment/materials/net.ts';
import { upToUnit, withSpare } from '../../garment/materials/to-buy.ts';
import { idOfLaid, isSamePlace } from '../../garment/record/cloth-lay.ts';
import { readHome } from '../../garment/record/home.ts';
import { usedShare } from '../../lay/check-lay.ts';
import { pieceOf } from '../../lay/cloth.ts';
import type { Lay, LayTask } from '../../lay/task.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { exactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { amountText, soldText } from '../../screens/garment/materials/materials-text.ts';
import { workName } from '../../screens/garment/said/names.ts';
import type { Telling } from '../../screens/garment/said/told-words.ts';
import type { LaySums } from '../../screens/lay/lay-found.tsx';
import type { LayShown, PieceShown } from '../../screens/lay/lay-shown.ts';
import { foundFor, keptPlace, seenIn } from '../lay/lay-task.ts';

/** What is laid, as it is told. */
export interface Told {
  one: MaterialNow;
  now: LayNow;
  telling: Telling;
}

/** A piece as its work is called. */
export function pieceName({ answer }: Telling, laidId: string): string {
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
        ...turnOf(laid.turn),
        mirrored: pieceOf(laid.id).isMirrored || now.of?.pieces[home]?.mirrored === true,
        stays: stays ? (isCut ? 'cut' : 'put') : undefined,
      };
    }),
  };
}

/** A turn in degrees: which end is up, and how far off the grain. */
function turnOf(turn: number): Pick<PieceShown, 'turned' | 'tilt'> {
  const turned = turn > 90 && turn < 270;
  const rest = turned ? turn - 180 : turn;
  return { turned, tilt: rest > 180 ? rest - 360 : rest };
}

/** What was laid, and of which pieces an odd one leaves its twin over. */
interface ToLay {
  task: LayTask;
  wasted: readonly string[];
}

/** What it takes, what is to be bought for it, and how well it uses the cloth. */
export function sumsOf({ one, now, telling }: Told, { task, wasted }: ToLay, lay: Lay): LaySums {
  const length = now.of ? foundFor(lay, now.of).length : 0;
  const all = length + besideLay(one, now) + (one.said.more ?? 0);
  const bought = upToUnit(withSpare(all, one.said), one.said.unit);
  const { bench } = telling;
  const most = bought ?? length;
  return {
    most: onTape(exactLength(most), bench, upToGraduation),
    sold: soldText(most, bench),
    takes: bought === undefined ? undefined : amountText('laid', length, bench),
    beside: besideSaid({ one, now, telling }),
    used: shownNumber(100 * usedShare(task, lay, wasted), 1, bench.decimalMark),
  };
}

/** What is bought beyond the lay: a repeat of the pattern it follows, and what bias strips are cut from. */
function besideSaid({ one, now, telling }: Told): string[] {
  const { repeat, folded } = now.of ?? {};
  const { long } = biasOf(one, one.needs);
  const show = (of: number) => onTape(exactLength(of), telling.bench, upToGraduation);
  return [
    ...(repeat === undefined || folded ? [] : [words.pattern(show(repeat))]),
    ...(long > 0 ? [words.bias(show(long))] : []),
  ];
}
