import { buttonholeWords as words } from '#words/calculations/buttonhole-words.ts';
import { cautionWords } from '#words/common/caution-words.ts';
import type { Bench } from '../../calculation/bench.ts';
import type { Answer, Calculation, Line } from '../../calculation/calculation.ts';
import { refusedFor } from '../../calculation/problem-faults.ts';
import { exactly, numberOnTape, onTape } from '../../calculation/tape-text.ts';
import { upToGraduation } from '../../lengths/graduation.ts';
import { type ExactLength, exactLength, inches } from '../../lengths/length.ts';
import {
  BUTTONHOLE_RULES,
  type Buttonhole,
  type ButtonholeInput,
  type ButtonholeRule,
  buttonhole as work,
} from '../../sewing/closures/buttonhole.ts';
import { overlapPastCentre } from '../../sewing/closures/overlap.ts';
import type { Run } from '../../sewing/run.ts';
import { buttonholeFields } from './fields.ts';
import { buttonholeInput, placesAsked, rowOf } from './input.ts';

/** The largest thing that counts as a small part: 16 CFR 1501.4, a cylinder 1.25 in wide. */
const SMALL_PART = inches(1.25);

/** How long a buttonhole is and where it starts, by the published rule the maker chooses. */
export const buttonhole: Calculation = {
  id: 'buttonhole',
  title: words.title,
  ...buttonholeFields.asked,
  work(draft, bench) {
    const read = buttonholeFields.read(draft, bench);
    if (!read.ok) return read;
    const input = buttonholeInput(read.value);
    const outcome = work(input);
    if (!outcome.ok) return refusedFor(outcome.problems);
    const places = placesAsked(read.value);
    const row = places && rowOf(read.value, places);
    if (row && !row.ok) return refusedFor(row.problems);
    const one = answer(outcome.value, input, bench);
    return { ok: true, answer: row ? { ...one, ...inRow(row.value, input, one) } : one };
  },
};

/** The same for every button of a row: what is marked is where each hole begins. */
function inRow(
  run: Run,
  { direction }: ButtonholeInput,
  { headline, sentence }: Answer,
): Pick<Answer, 'headline' | 'sentence' | 'runs'> {
  const count = run.marks.length;
  return {
    headline: { ...headline, after: words.eachLong(count) },
    sentence: `${words.row(direction)} ${sentence}`,
    runs: [{ name: words.rowName(direction), item: words.title, run }],
  };
}

function answer(hole: Buttonhole, input: ButtonholeInput, bench: Bench): Answer {
  const { past, rest } = hole;
  const direction = input.direction;
  return {
    headline: { number: numberOnTape(hole.length, bench, upToGraduation), after: words.long },
    // As its two marks are put on the tape, and the drawing shows them.
    sentence: words.sentence(direction, onTape(past, bench), onTape(rest, bench, upToGraduation)),
    lines: [...overlapLine(input, bench), ...otherRules(input, bench)],
    offers: [],
    warnings: [],
    cautions: input.diameter > SMALL_PART ? [] : [cautionWords.smallParts],
    runs: [
      {
        name: words.title,
        item: words.title,
        run: {
          datum: 'zero',
          length: exactLength(hole.length) as typeof past,
          marks: [{ at: past, label: '', kind: 'measure' }],
        },
      },
    ],
    workings: [
      { formula: lengthFormula(hole, input, bench), source: words.published(hole.lengthRule) },
      {
        formula: words.rest(
          exactly(hole.length, bench),
          exactly(past, bench),
          exactly(rest, bench),
        ),
        source: `${words.published(hole.placeRule)} ${words.conflict}`,
      },
    ],
  };
}

/** The rule for the length with its numbers in it. */
function lengthFormula(hole: Buttonhole, input: ButtonholeInput, bench: Bench): string {
  const show = (x: ExactLength) => exactly(x, bench);
  const { rule, diameter, thickness, girth } = input;
  const [across, thick, long] = [show(diameter), show(thickness), show(hole.length)];
  const { formula } = words;
  if (rule === 'round') return formula.round(across, long);
  const added = BUTTONHOLE_RULES[rule].value;
  const more = added === 0 ? '' : words.more(show(exactLength(added)));
  switch (rule) {
    case 'diameter':
    case 'diameter-eighth':
      return formula.diameter(across, more, long);
    case 'half-girth-eighth':
      return girth === undefined
        ? formula.noGirth(across, thick, more, long)
        : formula.girth(show(girth), more, long);
    default:
      return formula['diameter-thickness'](across, thick, more, long);
  }
}

function overlapLine({ diameter }: ButtonholeInput, bench: Bench): Line[] {
  const overlap = overlapPastCentre(diameter);
  if (!overlap.ok) return [];
  return overlap.value.rules.map(({ least, rule }) => ({
    label: words.overlap(rule),
    value: onTape(least, bench, upToGraduation),
  }));
}

/** What the other published rules would give, for comparison. */
function otherRules(input: ButtonholeInput, bench: Bench): Line[] {
  return (Object.keys(BUTTONHOLE_RULES) as ButtonholeRule[])
    .filter((rule) => rule !== input.rule)
    .flatMap((rule) => {
      const other = work({ ...input, girth: undefined, rule });
      return other.ok
        ? [
            {
              label: words.holeRules[rule],
              value: onTape(other.value.length, bench, upToGraduation),
            },
          ]
        : [];
    });
}
