import { curveWords as words } from '#words/calculations/curve-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line, Working } from '../../calculation/calculation.ts';
import { byTape, exactly, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { downToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import { arcInput, slantInput, squareInput } from './fields.ts';
import type { Worked } from './worked.ts';

const { formula } = words;

/** A curve, a slant or a cut end as an answer. */
export function curveAnswer(worked: Worked, bench: Bench): Answer {
  const { kind } = worked;
  return {
    headline: { number: numberOnTape(numberOf(worked), bench), after: words.after[kind] },
    sentence: words.sentence[kind],
    lines: lines(worked, bench),
    offers: [],
    warnings: [],
    cautions: kind === 'square' ? [words.before, cautionWords.shears] : [],
    runs: kind === 'arc' ? [{ name: words.marks, item: words.mark, run: worked.arc.run }] : [],
    workings: workings(worked, bench),
  };
}

function numberOf(worked: Worked): ExactLength {
  if (worked.kind === 'arc') return worked.arc.line;
  return worked.kind === 'slant' ? worked.edge : worked.square.wanted;
}

function lines(worked: Worked, bench: Bench): Line[] {
  const show = (x: ExactLength) => byTape(x, bench);
  if (worked.kind === 'arc') {
    const { edge, radius, step } = worked.arc;
    return [
      { label: words.edge, value: show(edge) },
      { label: words.radius, value: show(radius) },
      { label: words.step, value: show(step) },
    ];
  }
  if (worked.kind === 'slant') return [];
  const { skew, usable } = worked.square;
  return [
    { label: words.skew, value: show(exactLength(Math.abs(skew))) },
    { label: words.usable, value: onTape(usable, bench, downToGraduation) },
  ];
}

function workings(worked: Worked, bench: Bench): Working[] {
  const show = (x: ExactLength) => exactly(x, bench);
  if (worked.kind === 'arc') {
    const { chord, rise, off, side } = arcInput(worked.asked);
    const { radius, turn, edge, line } = worked.arc;
    const by = shownNumber(turn, 4, bench.decimalMark);
    return [
      {
        formula:
          formula.radius(show(chord), show(rise), show(radius)) +
          formula.edge(show(radius), by, show(edge)) +
          formula.line(show(edge), side === 'inside', show(off), by, show(line)),
        source: words.turned,
      },
    ];
  }
  if (worked.kind === 'slant') {
    const { high, aside } = slantInput(worked.asked);
    return [
      {
        formula: formula.slant(show(high), show(aside), show(worked.edge)),
        source: words.geometry,
      },
    ];
  }
  const { long, one, other } = squareInput(worked.asked);
  const [more, less] = [Math.max(one, other), Math.min(one, other)].map((x) =>
    show(exactLength(x)),
  );
  const { skew, wanted } = worked.square;
  const by = show(exactLength(Math.abs(skew)));
  return [
    {
      formula:
        formula.skew(more ?? '', less ?? '', show(long), by) +
        formula.wanted(show(one), show(other), show(wanted)),
      source: words.derived,
    },
  ];
}
