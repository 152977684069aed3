import { crossingWords as words } from '#words/crossing-words.ts';
import { holeWords } from '#words/hole-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Calculation, Draft } from '../../calculation/calculation.ts';
import { type DraftReader, readDraft } from '../../calculation/draft.ts';
import { numberOf, roundIn } from '../../calculation/draft-numbers.ts';
import { chosen, fieldsCalled } from '../../calculation/fields.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { ZERO } from '../../lengths/length.ts';
import { upperField } from '../../sewing/crossing-checks.ts';
import type { Crossed, StripAcross } from '../../sewing/crossing-holes.ts';
import { crossing as workCrossing } from '../../sewing/strip-crossing.ts';
import { crossingAnswer } from './answer.ts';

const { length, optional, number, choice } = fieldsCalled(words.labels);

/** Where the holes of two crossing strips come to lie, and how to lay them clear. */
export const crossing: Calculation = {
  id: 'crossing',
  title: words.title,
  start: startingDraft,
  fields: () => [
    number('angle'),
    length('hole'),
    length('pitch'),
    length('upperPitch'),
    length('width'),
    length('upperWidth'),
    length('margin'),
    length('upperMargin'),
    choice('rows', holeWords.rows),
    choice('upperRows', holeWords.rows),
    optional('phase', words.nothing),
    optional('upperPhase', words.nothing),
  ],
  work(draft, bench) {
    const read = readDraft(draft, bench);
    const input = crossingInput(read, draft);
    if (!input || read.faults.length > 0) return { ok: false, faults: read.faults };
    const outcome = workCrossing(input);
    if (!outcome.ok) return refusedFor(outcome.problems);
    return { ok: true, answer: crossingAnswer(input, outcome.value, bench) };
  },
};

function crossingInput(read: DraftReader, draft: Draft): Crossed | undefined {
  const angle = numberOf(read, 'angle');
  const hole = read.length('hole');
  const lower = stripOf(read, draft, (key) => key);
  const upper = stripOf(read, draft, upperField);
  if (angle === undefined || hole === undefined || !lower || !upper) return undefined;
  return { lower, upper, angle, hole };
}

function stripOf(
  read: DraftReader,
  draft: Draft,
  name: (key: string) => string,
): StripAcross | undefined {
  const pitch = read.length(name('pitch'));
  const width = read.length(name('width'));
  const margin = read.length(name('margin'));
  const phase = read.maybeLength(name('phase')) ?? ZERO;
  if (pitch === undefined || width === undefined || margin === undefined) return undefined;
  return { pitch, width, margin, phase, rows: chosen(draft, name('rows'), holeWords.rows) };
}

function startingDraft(bench: Bench): Draft {
  const scale = roundIn(bench);
  const pitch = scale('0.8', '8', '5/16');
  const width = scale('2', '20', '3/4');
  const margin = scale('0.5', '5', '3/16');
  return {
    angle: '90',
    hole: scale('0.2', '2', '1/16'),
    pitch,
    width,
    margin,
    rows: 'level',
    phase: '',
    upperPitch: pitch,
    upperWidth: width,
    upperMargin: margin,
    upperRows: 'level',
    upperPhase: '',
  };
}
