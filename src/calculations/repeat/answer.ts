import { repeatWords as words } from '#words/calculations/repeat-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line } from '../../calculation/calculation.ts';
import { linesSaid, onlySaid } from '../../calculation/only-said.ts';
import { byTape, exactly, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { pastLine } from '../../sewing/cloth/repeat.ts';
import type { Worked } from './worked.ts';
import { repeatWorkings } from './workings.ts';

/** Cloth with a repeat as an answer. */
export function repeatAnswer(worked: Worked, bench: Bench): Answer {
  return {
    headline: { number: numberOf(worked, bench), after: words.after[worked.kind] },
    sentence: words.sentence[worked.kind],
    lines: lines(worked, bench),
    offers: [],
    warnings: warnings(worked),
    cautions: [words.cutFirst, cautionWords.shears, cautionWords.pins],
    runs:
      worked.kind === 'panels'
        ? [{ name: words.places, item: words.place, run: worked.panels.run }]
        : [],
    workings: repeatWorkings(worked, bench),
  };
}

function numberOf(worked: Worked, bench: Bench): Answer['headline']['number'] {
  switch (worked.kind) {
    case 'panels':
      return numberOnTape(worked.panels.cloth, bench, upToGraduation);
    case 'match':
      return numberOnTape(worked.match.start, bench);
    case 'centre':
      return numberOnTape(worked.inside, bench, upToGraduation);
    case 'slant':
      return exactly(worked.slant.drift, bench);
  }
}

function lines(worked: Worked, bench: Bench): Line[] {
  const show = (x: Worked['repeat']) => byTape(x, bench);
  const each: [string, string | false][] = [
    [words.repeat, worked.asked.repeats > 1 && show(worked.repeat)],
  ];
  if (worked.kind === 'panels') {
    const { extra, rule } = worked.panels;
    each.push(
      [words.extra, onTape(extra, bench, upToGraduation)],
      [words.rule, words.ruleOf(show(rule), rule < worked.panels.cloth)],
      [words.lowerEdge, atLine(pastLine(worked.asked, worked.long), bench)],
    );
  }
  if (worked.kind === 'match') {
    const past = pastLine(worked.asked, worked.match.start);
    const below = exactLength(past === 0 ? 0 : worked.repeat - past);
    each.push([words.lost, show(worked.match.lost)], [words.upperEdge, atLine(below, bench)]);
  }
  if (worked.kind === 'slant') {
    each.push(
      [words.alongOne, show(worked.slant.one)],
      [words.alongOther, show(worked.slant.other)],
    );
  }
  return linesSaid(each);
}

/** How far from a line an edge lies. */
function atLine(off: ExactLength, bench: Bench): string {
  return off === 0 ? words.onLine : byTape(off, bench);
}

function warnings(worked: Worked): string[] {
  const { asked, repeat } = worked;
  const piece = asked.long ?? asked.wide;
  return onlySaid([
    piece !== undefined && 3 * repeat > piece && words.large,
    asked.way === 'one' && (worked.kind === 'centre' ? words.notMirrored : words.oneWay),
    worked.kind === 'slant' && worked.slant.drift > 0 && words.drifts,
    asked.repeats === 1 && words.measureMore,
  ]);
}
