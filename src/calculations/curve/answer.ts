import { curveWords as words } from '#words/calculations/curve-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line, NamedRun, Working } from '../../calculation/calculation.ts';
import { needed } from '../../calculation/needed.ts';
import { byTape, exactly, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { downToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { shownNumber } from '../../lengths/show-length.ts';
import type { Walk } from '../../sewing/pieces/walked.ts';
import { arcInput, grainInput, slantInput, squareInput, walkInput } from './fields.ts';
import type { Worked } from './worked.ts';

const { formula } = words;

type Of<Kind extends Worked['kind']> = Extract<Worked, { kind: Kind }>;

/** A curve, a slant or a cut end as an answer. */
export function curveAnswer(worked: Worked, bench: Bench): Answer {
  const { kind } = worked;
  return {
    headline: headline(worked, bench),
    sentence: words.sentence[kind],
    lines: lines(worked, bench),
    offers: [],
    warnings: kind === 'grain' ? [words.worst] : [],
    cautions: kind === 'square' ? [words.before, cautionWords.shears] : [],
    ...(kind === 'walk' && { listsLast: true }),
    runs: runsOf(worked),
    workings: workings(worked, bench),
  };
}

function headline(worked: Worked, bench: Bench): Answer['headline'] {
  if (worked.kind !== 'grain') {
    return { number: numberOnTape(numberOf(worked), bench), after: words.after[worked.kind] };
  }
  const { bow, skew } = worked.grain;
  const worse = bow > skew ? 'bow' : 'skew';
  return { number: shareText(worked.grain[worse], bench), after: words.worse[worse] };
}

/** Hundredths of a per cent. */
function shareText(share: number, { decimalMark }: Bench): string {
  return shownNumber(share, 2, decimalMark);
}

function runsOf(worked: Worked): NamedRun[] {
  if (worked.kind === 'arc') return [{ name: words.marks, item: words.mark, run: worked.arc.run }];
  return worked.kind === 'walk'
    ? [{ name: words.walked, item: words.mark, run: worked.walk.run }]
    : [];
}

function numberOf(worked: Exclude<Worked, { kind: 'grain' }>): ExactLength {
  if (worked.kind === 'arc') return worked.arc.line;
  if (worked.kind === 'walk') return worked.walk.walked;
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
  if (worked.kind === 'walk') return walkLines(worked.walk, bench);
  if (worked.kind === 'slant') return [];
  if (worked.kind === 'grain') return grainLines(worked, bench);
  const { skew, usable } = worked.square;
  return [
    { label: words.skew, value: show(exactLength(Math.abs(skew))) },
    { label: words.usable, value: onTape(usable, bench, downToGraduation) },
  ];
}

/** Both as shares of the width, and the skew as an angle. */
function grainLines({ grain, lift }: Of<'grain'>, bench: Bench): Line[] {
  const { bow, skew, turned } = grain;
  const number = (value: number) => shareText(value, bench);
  return [
    { label: words.bow, value: words.share(number(bow)) },
    { label: words.askew, value: words.askewOf(number(skew), number(turned)) },
    { label: words.lift, value: byTape(lift, bench) },
  ];
}

/** Each mark in steps, between both ends; and what straight steps miss of the curve. */
function walkLines({ places, line }: Walk, bench: Bench): Line[] {
  const inside = places.slice(1, -1).map(({ steps, rest }, i) => ({
    label: words.walkMark(i + 1),
    value: words.walkPlace(steps, rest === 0 ? '' : byTape(rest, bench)),
  }));
  return [...inside, ...(line ? [{ label: words.walkLine, value: byTape(line, bench) }] : [])];
}

function walkWorking(worked: Extract<Worked, { kind: 'walk' }>, bench: Bench): Working {
  const { step, steps, rest, parts } = walkInput(worked.asked);
  const { walked } = worked.walk;
  const show = (x: ExactLength) => exactly(x, bench);
  return {
    formula:
      formula.walked(steps, show(step), rest === 0 ? '' : show(rest), show(walked)) +
      formula.part(show(walked), parts, show(exactLength(walked / parts))),
    source: words.walkSource,
  };
}

function grainWorking({ asked, grain, lift }: Of<'grain'>, bench: Bench): Working {
  const { wide, bow, ahead } = grainInput(asked);
  const { over } = needed({ over: asked.over });
  const show = (x: ExactLength) => exactly(x, bench);
  const number = (value: number) => shareText(value, bench);
  return {
    formula:
      formula.share(show(bow), show(wide), number(grain.bow)) +
      formula.share(show(ahead), show(wide), number(grain.skew)) +
      formula.lift(show(over), show(ahead), show(wide), show(lift)),
    source: words.grainSource,
  };
}

function workings(worked: Worked, bench: Bench): Working[] {
  const show = (x: ExactLength) => exactly(x, bench);
  if (worked.kind === 'walk') return [walkWorking(worked, bench)];
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
  if (worked.kind === 'grain') return [grainWorking(worked, bench)];
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
