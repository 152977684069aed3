import { groupedWords as words } from '#words/calculations/grouped-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Working } from '../../calculation/calculation.ts';
import { exactly } from '../../calculation/tape-text.ts';
import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import { BUTTONHOLE_PAST_CENTRE } from '../../sewing/sources/buttonholes.ts';
import { foldInput, groupsInput, lapInput, loopsInput } from './fields.ts';
import type { Worked } from './worked.ts';

const { formula } = words;
type Show = (x: ExactLength) => string;

/** How a closing was got, with its numbers in it. */
export function groupedWorkings(worked: Worked, bench: Bench): Working[] {
  const show: Show = (x) => exactly(x, bench);
  const { asked } = worked;
  switch (worked.kind) {
    case 'groups':
      return [groupWorking(worked, show)];
    case 'lap':
      return lapWorkings(worked, show);
    case 'loops': {
      const { loops, belt, thick, ease, turn } = loopsInput(asked);
      const each = show(worked.loops.each);
      const one = formula.loop(show(belt), show(thick), show(ease), show(turn), each);
      return [
        {
          formula: one + formula.strip(loops, each, show(worked.loops.strip)),
          source: words.easeSource,
        },
      ];
    }
    case 'hanger': {
      const { drop = ZERO, seam = ZERO } = asked;
      return [
        {
          formula: formula.hanger(show(drop), show(seam), show(worked.tape)),
          source: words.geometry,
        },
      ];
    }
    case 'fold': {
      const { from, thing, thick } = foldInput(asked);
      const said = formula.fold(show(from), show(thing), show(thick), show(worked.apart));
      const formulaSaid = said.replace('1.5708', `1${bench.decimalMark}5708`);
      return [{ formula: formulaSaid, source: words.foldSource }];
    }
  }
}

function groupWorking(worked: Extract<Worked, { kind: 'groups' }>, show: Show): Working {
  const { opening, top, bottom, groups, each, within } = groupsInput(worked.asked);
  const room = exactLength(opening - top - bottom);
  return {
    formula:
      formula.room(show(opening), show(top), show(bottom), show(room)) +
      formula.between(show(room), groups, each - 1, show(within), show(worked.groups.between)),
    source: words.groupSource,
  };
}

function lapWorkings(worked: Extract<Worked, { kind: 'lap' }>, show: Show): Working[] {
  const { lap, from, hole } = lapInput(worked.asked);
  const mate = {
    formula: formula.less(show(lap), show(from), show(worked.end.mate)),
    source: words.geometry,
  };
  const along = worked.end.hole;
  if (hole === undefined || !along) return [mate];
  const starts = formula.less(show(from), show(BUTTONHOLE_PAST_CENTRE.value), show(along.starts));
  const ends = formula.more(show(along.starts), show(hole), show(along.ends));
  return [mate, { formula: `${starts} ${ends}`, source: words.holeSource }];
}
