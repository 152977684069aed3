import { markWords } from '#words/common/mark-words.ts';
import { exampleWords } from '#words/garment/example-words.ts';
import { garmentOrderWords } from '#words/garment/garment-order-words.ts';
import { garmentSheetWords as words } from '#words/garment/garment-sheet-words.ts';
import { tapeStep } from '../../../calculation/bench.ts';
import type { Kind } from '../../../calculation/output.ts';
import { wordOf } from '../../../calculation/tape-text.ts';
import type { SheetBlock, SheetPairs, SheetStrip, SheetTick } from '../../../drawing/sheet-job.ts';
import { readHome } from '../../../garment/record/home.ts';
import type { SheetMark, SheetRow } from '../../../garment/sheet/row.ts';
import type { SheetGives, SheetNumber, SheetStep } from '../../../garment/sheet/sheet.ts';
import { isUntouched } from '../../../garment/work-out/untouched.ts';
import { exactLength, toMm } from '../../../lengths/length.ts';
import { ownName } from '../said/names.ts';
import { numberOf, stepWords } from '../said/say.ts';
import { datumSaid } from '../said/step-datum.ts';
import { type Telling, troubleWords } from '../said/told-words.ts';
import { foundText, type Rounded, spaceTexts, sureOnTape, sureText } from '../said/value-text.ts';

export type SheetTelling = Telling;

type StepBlock = Extract<SheetBlock, { kind: 'step' }>;

/**
 * Steps of a stage in order; the same caution is said in full where it is first needed, with a sign of
 * its own where it is needed again, and none of what is made.
 */
export function stepBlocks(steps: readonly SheetStep[], telling: SheetTelling): StepBlock[] {
  const needed = steps.flatMap(({ step: { step }, made }) => (made ? [] : (step.caution ?? [])));
  const again = [...new Set(needed.filter((one, i) => needed.indexOf(one) !== i))];
  const said = new Set<string>();
  return steps.map((step) => {
    const block = stepBlock(step, telling);
    const { caution } = step.step.step;
    if (caution === undefined || step.made) return block;
    const sign = again.includes(caution) ? words.cautionSign(again.indexOf(caution) + 1) : '';
    if (said.has(caution)) return { ...block, what: words.signed(block.what, sign) };
    said.add(caution);
    return {
      ...block,
      under: [...block.under, sign === '' ? caution : words.signed(sign, caution)],
    };
  });
}

/** A step: its box, its number where that is sure, where it is measured from. */
function stepBlock(step: SheetStep, telling: SheetTelling): StepBlock {
  const { number, made } = step;
  const { home } = step.step;
  const why = number.is === 'waits' ? [troubleWords(telling, home, number.trouble)] : [];
  const row = 'row' in number ? number.row : undefined;
  return {
    ...{ kind: 'step', made },
    number: numberSaid(step, row, telling),
    what: whatSaid(step, telling),
    under: [
      ...why,
      ...(isUntouched(telling.answer, readHome(home).id) ? [exampleWords.said] : []),
      ...notesAt(home, telling),
      ...(row ? rowNotes(row, number.is !== 'row', telling) : []),
    ],
    ...(row && rowParts(row, telling)),
  };
}

function numberSaid(
  { step, made, kind, number }: SheetStep,
  row: SheetRow | undefined,
  telling: SheetTelling,
): string {
  // That it is made is known, its number isn't.
  if (telling.answer.sound.before.has(step.home)) return garmentOrderWords.before;
  if (row && number.is !== 'waits') return countSaid({ step }, row, number);
  if (made && number.is === 'sure') return foundText(kind, number.value, telling.bench);
  return stepNumber({ step, kind, number }, telling);
}

function whatSaid({ step }: SheetStep, { answer }: SheetTelling): string {
  const what = stepWords(answer, step);
  return step.passed ? words.passed(what) : what;
}

/** What the maker has noted at a step. */
function notesAt(home: string, { answer }: SheetTelling): string[] {
  const { text, photo } = answer.sound.notes.get(home) ?? {};
  return [
    ...(text === undefined ? [] : [words.note(text)]),
    ...(photo === undefined ? [] : [words.photo]),
  ];
}

/** How many of a row are made, of how many; while that isn't decided, that it isn't. */
function countSaid(
  { step: { made, of } }: Pick<SheetStep, 'step'>,
  { marks }: SheetRow,
  number: SheetNumber,
) {
  if (number.is === 'undecided') return words.undecided;
  return words.count(made, of ?? marks.length);
}

/** A number as the tape in hand shows it; what isn't sure is said to be so, without it. */
function stepNumber(
  { step, kind, number }: Omit<SheetStep, 'made'>,
  { bench }: SheetTelling,
): string {
  switch (number.is) {
    case 'sure': {
      const said = numberOf(kind, number.value, bench, step.step);
      // What a tape leaves in doubt anyway is no news.
      if (number.off <= tapeStep(bench) || kind !== 'length') return said;
      return words.off(...sureOnTape(said, number.off, bench));
    }
    case 'waits':
      return words.waits;
    default:
      return words.undecided;
  }
}

/** A number that is given, or that a work comes to. */
export function givenNumber(
  kind: Kind,
  number: SheetNumber,
  { bench }: SheetTelling,
  its?: Rounded,
): string {
  switch (number.is) {
    case 'sure':
      if (number.off <= tapeStep(bench) / 2) return foundText(kind, number.value, bench, its);
      return words.off(...sureText(kind, number.value, number.off, bench));
    case 'row':
      return String(number.row.marks.length);
    case 'waits':
      return words.waits;
    case 'undecided':
      return words.undecided;
  }
}

/** Numbers of a work that no hand makes; of a row how many there are, and how far apart. */
export function givesPairs(gives: readonly SheetGives[], telling: SheetTelling): SheetPairs {
  return gives.map(({ home, kind, number }) => {
    const apart = number.is === 'row' ? apartOf(number.row, telling) : undefined;
    const said = givenNumber(kind, number, telling, telling.answer.nodes.get(home)?.output);
    return [ownName(telling, home), apart ? words.apart(said, apart) : said] as const;
  });
}

function rowNotes(row: SheetRow, undecided: boolean, telling: SheetTelling): string[] {
  const apart = apartOf(row, telling);
  return [
    ...(undecided ? [words.toCome] : []),
    ...(apart === undefined ? [] : [words.between(apart)]),
  ];
}

/** How far apart the marks of a long row lie. */
function apartOf({ between }: SheetRow, { bench }: SheetTelling): string | undefined {
  if (!between) return undefined;
  const [least = '', most = ''] = spaceTexts([between.least, between.most], bench);
  return least === most ? least : words.range(least, most);
}

function rowParts(row: SheetRow, telling: SheetTelling) {
  const ticked = new Set(row.ticks);
  const strip: SheetStrip = {
    datum: datumSaid(row.datum, 'run'),
    length: toMm(exactLength(row.length)),
    marks: row.marks.map(({ at, label, made }, rank) => ({
      ...{ label, made, at: toMm(at) },
      ticked: ticked.has(rank),
    })),
  };
  const ticks = row.ticks.flatMap((rank): SheetTick[] => {
    const mark = row.marks[rank];
    if (!mark) return [];
    return [{ label: mark.label, text: markText(mark, telling), made: mark.made }];
  });
  return { strip, ticks };
}

/** Where a mark is, as made, or as the tape shows it; and what it is besides. */
function markText({ made, at, kind, across }: SheetMark, { bench }: SheetTelling): string {
  const place = made ? foundText('run', at, bench) : numberOf('run', at, bench);
  const besides = wordOf(
    { kind, ...(across !== undefined && { across }) },
    bench,
    markWords.acrossShort,
  );
  return words.mark(place, besides);
}
