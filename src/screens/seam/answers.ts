import type { Bench } from '../../controls/bench.ts';
import type { Answer, Line } from '../../controls/calculation.ts';
import { exactly, numberAtMost, numberOnTape } from '../../controls/tape-text.ts';
import { seamSection } from '../../drawing/seam-figure.ts';
import { type ExactLength, exactLength, type Length, toMm, ZERO } from '../../lengths/length.ts';
import { showExact, shownText } from '../../lengths/show-length.ts';
import type { AllowanceChange, ChangeInput, LetOut } from '../../sewing/seam-change.ts';
import type { ClipInput, Clips } from '../../sewing/seam-clips.ts';
import type { FinishPlan } from '../../sewing/seam-finish.ts';
import { guideFor } from '../../sewing/seam-guide.ts';
import type { Finish, FinishInput } from '../../sewing/seam-rows.ts';
import {
  BOUND,
  CLIPS,
  FELLED,
  FRENCH,
  FRENCH_WIDE,
  GRADED,
  MOCK_FRENCH,
  TRIMMED,
} from '../../sewing/sources/seams.ts';
import { seamWords as words } from '../../words/seam-words.ts';

const NOTHING = {
  lines: [],
  offers: [],
  warnings: [],
  cautions: [words.blades],
  runs: [],
} as const;

const SOURCES: Readonly<Record<Finish, readonly { says: string; source: string }[]>> = {
  plain: [TRIMMED],
  french: [FRENCH, FRENCH_WIDE],
  felled: [FELLED],
  'mock-french': [MOCK_FRENCH],
  bound: [BOUND],
  graded: [GRADED],
};

/** What a finish takes, and its rows in order. */
export function finishAnswer(plan: FinishPlan, input: FinishInput, bench: Bench): Answer {
  const show = (x: ExactLength) => exactly(x, bench);
  const name = words.finish[input.finish];
  const rows = plan.rows.map((row, i) => ({
    label: words.step(i + 1),
    value: words.row(row, show(row.at ?? ZERO), show(row.beside ?? ZERO)),
  }));
  return {
    ...NOTHING,
    headline: {
      number: numberOnTape(plan.consumed, bench),
      after: words.taken,
    },
    sentence:
      plan.over > 0
        ? words.overShort(name)
        : words.fits(name, plan.spare > 0 ? show(plan.spare) : undefined),
    warnings:
      plan.over > 0 ? [words.over(name, show(plan.over), show(exactLength(2 * plan.over)))] : [],
    lines: [
      ...rows,
      ...(plan.strip === undefined ? [] : [{ label: words.strip, value: show(plan.strip) }]),
      ...guideLines(input.finish === 'french' ? input.first : plan.consumed, bench),
    ],
    figures: [
      {
        name: words.section,
        figure: seamSection(
          input.finish,
          plan.rows.map(({ do: what, at }) => ({
            what,
            at: at === undefined ? undefined : toMm(at),
          })),
          toMm(plan.consumed),
        ),
      },
    ],
    workings: [
      ...(input.finish === 'french'
        ? [
            {
              formula: words.sumFormula(show(input.first), show(input.second), show(plan.consumed)),
              source: '',
            },
          ]
        : []),
      ...SOURCES[input.finish].map((rule) => ({ formula: words.published(rule), source: '' })),
    ],
  };
}

/** The distance from the needle in both units, and the nearest plate line. */
function guideLines(distance: ExactLength, bench: Bench): Line[] {
  const guide = guideFor(distance);
  const text = (unit: 'mm' | 'in') => shownText(showExact(distance, unit, 3), bench.decimalMark);
  const inInches = guide.line % 127 === 0;
  const line = shownText(showExact(guide.line, inInches ? 'in' : 'mm'), bench.decimalMark);
  const off = shownText(showExact(exactLength(Math.abs(guide.off)), 'mm', 2), bench.decimalMark);
  return [
    { label: words.guide, value: words.guideAt(text('mm'), text('in')) },
    { label: words.plate, value: words.plateAt(line, guide.off === 0 ? undefined : off) },
  ];
}

/** Another allowance than the pattern's. */
export function changeAnswer(
  { eachEdge: each, girth }: AllowanceChange,
  { pattern, wanted }: ChangeInput,
  bench: Bench,
): Answer {
  const show = (x: ExactLength) => exactly(x, bench);
  const size = (x: ExactLength) => show(exactLength(Math.abs(x)));
  const after = each === 0 ? words.same : each > 0 ? words.trimEach : words.addEach;
  return {
    ...NOTHING,
    headline: { number: showExact(exactLength(Math.abs(each)), bench.unit, 2), after },
    sentence: each === 0 ? words.sameSentence : words.changeSentence(show(wanted)),
    lines: [
      {
        label: words.girthIf,
        value: girth < 0 ? words.narrower(size(girth)) : words.wider(size(girth)),
      },
      ...guideLines(wanted, bench),
    ],
    workings: [
      {
        formula: words.changeFormula(show(pattern), show(wanted), show(each)),
        source: words.derived,
      },
    ],
  };
}

/** Letting out or taking in. */
export function girthAnswer(
  { eachEdge, left }: LetOut,
  { by, seams, out }: { by: Length; seams: number; out: boolean; least: ExactLength },
  bench: Bench,
): Answer {
  const show = (x: ExactLength) => exactly(x, bench);
  const each = exactLength(Math.abs(eachEdge));
  return {
    ...NOTHING,
    headline: { number: showExact(each, bench.unit, 3), after: words.perEdge },
    sentence: out ? words.letOutSentence(show(left)) : words.takeInSentence(show(left)),
    lines: guideLines(left, bench),
    workings: [{ formula: words.girthFormula(show(by), seams, show(each)), source: words.derived }],
  };
}

/** Clips on a curved seam. */
export function clipAnswer(
  { spacing, deep, differs, run }: Clips,
  { radius, allowance, opening }: ClipInput,
  bench: Bench,
): Answer {
  const show = (x: ExactLength) => exactly(x, bench);
  const marked = run && [
    { label: words.clips, value: words.clipsOf(run.marks.length) },
    { label: words.differs, value: show(differs ?? ZERO) },
  ];
  return {
    ...NOTHING,
    headline: { number: numberAtMost(spacing, bench), after: words.fromHere },
    sentence: words.clipSentence(show(CLIPS.value.short)),
    lines: [{ label: words.deep, value: show(deep) }, ...(marked ?? [])],
    runs: run ? [{ name: words.title, item: words.clip, run }] : [],
    workings: [
      {
        formula: words.clipFormula(show(opening), show(radius), show(allowance), show(spacing)),
        source: words.derived,
      },
      { formula: words.published(CLIPS), source: '' },
    ],
  };
}
