import { groupedWords as words } from '#words/calculations/grouped-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line, NamedRun } from '../../calculation/calculation.ts';
import { linesSaid, onlySaid } from '../../calculation/only-said.ts';
import { said } from '../../calculation/tape-said.ts';
import { byTape, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { ZERO } from '../../lengths/length.ts';
import type { Worked } from './worked.ts';
import { groupedWorkings } from './workings.ts';

/** Groups nearer than so many times what is within them aren't seen as groups: common practice, no source. */
const SEEN_APART = 1.5;

/** A closing as an answer. */
export function groupedAnswer(worked: Worked, bench: Bench): Answer {
  return {
    headline: { number: numberOf(worked, bench), after: words.after[worked.kind] },
    sentence: words.sentence[worked.kind],
    lines: lines(worked, bench),
    offers: [],
    warnings: warnings(worked),
    cautions: cautions(worked),
    runs: runs(worked),
    workings: groupedWorkings(worked, bench),
  };
}

function numberOf(worked: Worked, bench: Bench): Answer['headline']['number'] {
  switch (worked.kind) {
    case 'groups':
      return byTape(worked.groups.between, bench);
    case 'lap':
      return numberOnTape(worked.end.mate, bench);
    case 'loops':
      return numberOnTape(worked.loops.strip, bench, upToGraduation);
    case 'hanger':
      return numberOnTape(worked.tape, bench, upToGraduation);
    case 'fold':
      return numberOnTape(worked.apart, bench);
  }
}

function lines(worked: Worked, bench: Bench): Line[] {
  const { asked } = worked;
  const up = (x: Worked['asked']['from']) => x !== undefined && said(x, bench);
  if (worked.kind === 'groups') {
    return [{ label: words.count, value: String(worked.groups.count) }];
  }
  if (worked.kind === 'lap') {
    const { hole } = worked.end;
    return linesSaid([
      [words.fastener, up(asked.from)],
      [words.hole, hole && words.holeOf(byTape(hole.starts, bench), byTape(hole.ends, bench))],
    ]);
  }
  return worked.kind === 'loops'
    ? [{ label: words.loop, value: onTape(worked.loops.each, bench, upToGraduation) }]
    : [];
}

function warnings(worked: Worked): string[] {
  const { asked } = worked;
  const { groups = 1, each = 1, within = ZERO, loops = 1 } = asked;
  return onlySaid([
    worked.kind === 'groups' &&
      groups > 1 &&
      each > 1 &&
      worked.groups.between < SEEN_APART * within &&
      words.noGroups,
    worked.kind === 'loops' && loops % 2 === 0 && words.atFront,
  ]);
}

function cautions({ kind, asked }: Worked): string[] {
  if (kind === 'loops' || kind === 'hanger') return [cautionWords.shears];
  return onlySaid([
    asked.hole !== undefined && words.holeLast,
    kind === 'groups' && words.holeLast,
    words.tryOn,
    kind !== 'fold' && cautionWords.smallParts,
  ]);
}

function runs(worked: Worked): NamedRun[] {
  if (worked.kind === 'groups') {
    return [{ name: words.places, item: words.place, run: worked.groups.run }];
  }
  return worked.kind === 'loops'
    ? [{ name: words.loopPlaces, item: words.loopPlace, run: worked.loops.run }]
    : [];
}
