import { lacingWords as words } from '#words/calculations/lacing-words.ts';
import { type Bench, tapeStep } from '../../calculation/bench.ts';
import type { Answer } from '../../calculation/calculation.ts';
import { exactly, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { lacingFigure } from '../../drawing/lacing-figure.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength, ZERO } from '../../lengths/length.ts';
import type { Laced } from '../../sewing/lacing/lacing.ts';
import type { LacingInput } from '../../sewing/lacing/lacing-input.ts';
import { drawnOf } from './drawn.ts';
import { rowLines, slants } from './lines.ts';
import type { LacingRead } from './read.ts';
import { stepLines } from './steps.ts';
import { warningsOf } from './warnings.ts';
import { workingsOf } from './workings.ts';

/** The lace of one row of holes, or of two: each row has a lace of its own. */
interface LacedRows {
  first: Laced;
  second: Laced | undefined;
}

/** A row with what was typed of it. */
interface Row {
  input: LacingInput;
  laced: Laced;
}

/** The lace of a row, or of two, as an answer. */
export function lacingAnswer(read: LacingRead, laced: LacedRows, bench: Bench): Answer {
  const { input } = read;
  const rows: Row[] = [{ input, laced: laced.first }];
  if (read.second && laced.second) rows.push({ input: read.second, laced: laced.second });
  const named = (text: string, i: number) => (rows.length === 1 ? text : words.ofRow(i + 1, text));
  const repeat = laced.first.strands[0]?.repeat;
  const all = rows.reduce((sum, row) => sum + upToGraduation(row.laced.total, tapeStep(bench)), 0);
  return {
    headline: {
      number: numberOnTape(exactLength(all), bench, upToGraduation),
      after: rows.length === 1 ? words.after : words.afterBoth,
    },
    sentence: sentence(rows, named, bench),
    lines: [
      ...rows.flatMap((row, i) =>
        rowLines(row.input, row.laced, bench).map(({ label, value }) => ({
          label: named(label, i),
          value,
        })),
      ),
      ...(repeat ? stepLines(repeat, read.before, (x) => exactly(x, bench)) : []),
    ],
    offers: [],
    warnings: rows.flatMap((row, i) =>
      warningsOf(row.input, row.laced, read.offHoles, bench).map((said) => named(said, i)),
    ),
    cautions: [words.caution],
    listsLast: true,
    runs: rows.map((row, i) => ({
      name: rows.length === 1 ? words.title : words.row(i + 1),
      item: words.hole,
      run: row.laced.run,
    })),
    figures: figures(input, laced.first, read.drawn),
    workings: rows.flatMap((row, i) => workingsOf(row.input, row.laced, i === 0, bench)),
  };
}

function sentence(
  rows: readonly Row[],
  named: (text: string, i: number) => string,
  bench: Bench,
): string {
  const [first] = rows;
  const { kind, tail } = first?.input ?? {};
  // What is cut is never shown shorter than it has to be.
  const up = (x: ExactLength) => onTape(x, bench, upToGraduation);
  return [
    ...rows.map(({ laced }, i) => named(ofRow(laced, kind, rows.length > 1, up), i)),
    tail === undefined || tail === ZERO ? words.noTails : words.tails(exactly(tail, bench)),
    ...(kind === 'saddle' ? [words.needles] : []),
    ...(kind === 'cross' ? [words.thereAndBack] : []),
  ].join(' ');
}

function ofRow(
  { pieces, each, total, middle }: Laced,
  kind: LacingInput['kind'] | undefined,
  several: boolean,
  up: (x: ExactLength) => string,
): string {
  return [
    ...(several ? [words.cut(up(total))] : []),
    pieces === 1 ? words.onePiece : words.pieces(pieces, up(each)),
    ...(middle
      ? [words.fromMiddle(middle, middle.first.map(up), pieces > 1, slants(kind ?? 'own'))]
      : []),
  ].join(' ');
}

function figures(
  input: LacingInput,
  { strands }: Laced,
  steps: number | undefined,
): NonNullable<Answer['figures']> {
  return (['front', 'back'] as const).map((face) => ({
    name: words.figure(face),
    draw: () => lacingFigure(drawnOf(input, strands, steps), face),
  }));
}
