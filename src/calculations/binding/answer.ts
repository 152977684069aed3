import { bindingAnswerWords as words } from '#words/calculations/binding-answer-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Line } from '../../calculation/calculation.ts';
import { percentText } from '../../calculation/tape-said.ts';
import { byTape, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength } from '../../lengths/length.ts';
import { goesRound, seamLeft } from '../../sewing/hems/binding.ts';
import { CORD_PLUS, CORD_TIMES } from '../../sewing/sources/binding.ts';
import type { BindingAsked } from './fields.ts';
import type { Worked } from './worked.ts';
import { bindingWorkings } from './workings.ts';

/** A fold that gives more, and a corner that is sharper, are doubted: common practice, no source. */
const MUCH = 0.1;
const SHARP = 45;

/** A binding as an answer: how wide its strip is cut, and how long. */
export function bindingAnswer(asked: BindingAsked, worked: Worked, bench: Bench): Answer {
  const round = goesRound(asked.finish);
  return {
    headline: {
      number: numberOnTape(worked.width.cut, bench, upToGraduation),
      after: words.after,
    },
    sentence: words.sentence[asked.finish],
    lines: [
      ...lengthLines(asked, worked, bench),
      ...widthLines(asked, worked, bench),
      ...cordLines(asked, bench),
    ],
    offers: [],
    warnings: warnings(asked, worked),
    cautions: [
      ...(asked.corners.length === 0 ? [] : [round ? words.corners : words.clip]),
      cautionWords.shears,
      cautionWords.pins,
    ],
    runs: worked.pleats
      ? [{ name: words.pleats(asked.ends), item: words.pleat, run: worked.pleats }]
      : [],
    workings: bindingWorkings(asked, worked, bench),
  };
}

function lengthLines({ ends }: BindingAsked, { long }: Worked, bench: Bench): Line[] {
  if (!long) return [];
  const show = (x: ExactLength) => byTape(x, bench);
  const share = (part: number) => words.share(percentText(part, bench));
  const found: [string, string | false][] = [
    [words.long, onTape(long.long, bench, upToGraduation)],
    [words.longFrom, long.straight > 0 && show(long.straight)],
    [words.curves, long.curves > 0 && show(long.curves)],
    ...long.corners.map((one, i): [string, string] => [words.corner(i + 1), show(one)]),
    [words.ends[ends], show(long.ends)],
    [words.stretch, long.stretch > 0 && share(long.stretch)],
    [words.ease, long.ease > 0 && share(long.ease)],
  ];
  return found.flatMap(([label, value]) => (value ? [{ label, value }] : []));
}

function widthLines({ finish }: BindingAsked, { width }: Worked, bench: Bench): Line[] {
  const { rule, thick } = width;
  if (thick === 0 || !goesRound(finish)) return [];
  const size = byTape(exactLength(Math.abs(thick)), bench);
  return [
    { label: words.rule, value: byTape(rule, bench) },
    { label: words.thick, value: words.thickOf(size, thick < 0) },
  ];
}

/** What the trade's rules for a cord leave for its seams. */
function cordLines({ finish, cord, thickness }: BindingAsked, bench: Bench): Line[] {
  if (finish !== 'cord' || cord === undefined) return [];
  const leaves = (rule: ExactLength) => {
    const left = seamLeft(rule, cord, thickness);
    const seam = byTape(exactLength(Math.abs(left)), bench);
    return words.leaves(byTape(rule, bench), seam, left <= 0);
  };
  return [
    { label: words.eight, value: leaves(exactLength(CORD_TIMES.value * cord)) },
    { label: words.plus, value: leaves(exactLength(cord + CORD_PLUS.value)) },
  ];
}

function warnings({ finish, corners }: BindingAsked, { long }: Worked): string[] {
  const sharp = corners.some((angle) => Math.min(angle, 360 - angle) < SHARP);
  return [
    ...(long && Math.max(long.stretch, long.ease) > MUCH ? [words.stretched] : []),
    ...(long && sharp && goesRound(finish) ? [words.sharp] : []),
    ...(long ? [] : [words.noLength]),
    words.sample,
  ];
}
