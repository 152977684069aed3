import { layWarnedWords as words } from '#words/garment/garment-lay-warned-words.ts';
import { onTape } from '../../calculation/tape-text.ts';
import { Rich } from '../../controls/rich.tsx';
import { isBias } from '../../garment/materials/net.ts';
import type { LayFault } from '../../lay/check-lay.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { exactLength, mm } from '../../lengths/length.ts';
import { laySaid } from '../../screens/garment/materials/lay-stale.ts';
import type { TaskOutcome } from '../lay/lay-task.ts';
import { pieceProblemSaid } from '../lay/piece-problem-said.ts';
import type { Look } from '../lay/use-look.ts';
import { pieceName, type Told } from './lay-said.ts';

/** How a lay stands, as far as something of it is in the way. */
export interface Standing extends Told {
  outcome: TaskOutcome | undefined;
  faults: readonly LayFault[];
  ended: Look['ended'];
  /** A lay is shown. */
  shown: boolean;
  /** What works the shapes out couldn't be fetched. */
  missing: boolean;
  /** Pieces whose shape isn't as large as the garment cuts them now. */
  other: readonly string[];
  /** How much of the cloth, from its cut end on, flaws leave no room on, in mm. */
  lost: number;
}

const isStale = ({ now, shown }: Standing) =>
  now.stale !== undefined && (!shown || now.stale.pieces.length > 0 || now.stale.cloth);

const waitingOf = ({ one, now }: Standing) =>
  one.needs.filter((need) => !isBias(need)).length - now.needs.size - now.gone.length;

/** All that is in the way of a lay, or to be known of it. */
export function LayWarned(standing: Standing) {
  return (
    <>
      {warningsSaid(standing).map((one) => (
        <p class="warning" key={one}>
          <Rich text={one} />
        </p>
      ))}
    </>
  );
}

function warningsSaid(standing: Standing): string[] {
  const { now, telling, outcome, faults, ended, missing, other, lost } = standing;
  const name = (id: string) => pieceName(telling, id);
  const waiting = waitingOf(standing);
  return [
    ...(now.of ? [] : [words.noWidth]),
    ...(missing ? [words.shapeNotFetched] : []),
    ...(outcome && !outcome.ok ? problemSaid(standing, outcome.problem) : []),
    ...(ended === 'fits nowhere' ? [words.fitsNowhere] : []),
    ...(ended === 'failed' ? [words.failed] : []),
    ...faults.flatMap((fault) => faultSaid(fault, name, (now.of?.gap ?? 0) > 0)),
    ...(isStale(standing) ? [laySaid(telling, now)] : []),
    ...(lost > 0 ? [words.lostToFlaws(onTape(exactLength(mm(lost)), telling.bench))] : []),
    ...(other.length > 0 ? [words.otherSize(other.map(name))] : []),
    ...(waiting > 0 ? [words.waiting(waiting)] : []),
    ...(now.of?.folded && now.of.repeat !== undefined ? [words.patternFolded] : []),
    ...(now.gone.length > 0 ? [words.cutApart(now.gone.map(({ home }) => name(home)))] : []),
    ...(outcome?.ok && outcome.wasted.length > 0 ? [words.wasted(outcome.wasted.map(name))] : []),
  ];
}

type TaskProblem = Extract<TaskOutcome, { ok: false }>['problem'];

function problemSaid({ now, telling }: Told, problem: TaskProblem): string[] {
  const { bench } = telling;
  switch (problem.kind) {
    case 'wider-than-cloth': {
      const by = onTape(exactLength(mm(problem.width - problem.room)), bench, upToGraduation);
      const wide = now.of?.folded ? words.wideFolded : words.wide;
      return [wide(pieceName(telling, problem.id), by)];
    }
    case 'too-many':
      return [words.tooMany(String(problem.count), String(problem.most))];
    case 'no-outline': {
      const form = now.of?.pieces[problem.id]?.outline?.form ?? { kind: 'points' };
      const why = pieceProblemSaid(problem.problem, bench, form);
      return [words.noShape(pieceName(telling, problem.id), why)];
    }
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
