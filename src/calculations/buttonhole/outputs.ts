import { cautionWords } from '#words/common/caution-words.ts';
import { buttonholeOutputWords as words } from '#words/outputs/buttonhole-output-words.ts';
import { given } from '../../calculation/field-spec.ts';
import { needed } from '../../calculation/needed.ts';
import { type Outputs, outputOf } from '../../calculation/output.ts';
import { exactLength } from '../../lengths/length.ts';
import { buttonhole } from '../../sewing/closures/buttonhole.ts';
import { overlapPastCentre } from '../../sewing/closures/overlap.ts';
import { mapped } from '../../sewing/problem.ts';
import { buttonholeFields, follow } from './fields.ts';
import { buttonholeInput, placesAsked, rowOf } from './input.ts';

const output = outputOf(buttonholeFields);
const { holeWay } = buttonholeFields.specs;

const hole = {
  kind: 'length',
  reads: ['diameter', 'girth', 'thickness', 'holeRule', 'holeWay'],
} as const;
const across = { field: 'holeWay', is: holeWay.is('horizontal') } as const;
const along = { field: 'holeWay', is: holeWay.is('vertical') } as const;
const mark = { stage: 'close', undoable: true } as const;

/** From the centre line, or the button's place, to one end: that toward the edge, or above. */
const start = (key: string, name: string, when: typeof across | typeof along, what: string) =>
  output({
    key,
    name,
    ...hole,
    when,
    step: { do: what, datum: 'centre-line', ...mark },
    of: (fields) => mapped(buttonhole(buttonholeInput(fields)), ({ past }) => past),
  });

/** To the other end: the button passes a hole that starts elsewhere, or between two graduations, too. */
const end = (
  key: string,
  name: string,
  when: typeof across | typeof along,
  what: string,
  from: typeof pastCentre,
) =>
  output({
    key,
    name,
    ...hole,
    when,
    bentBy: [from],
    step: { do: what, datum: 'centre-line', bound: 'least', ...mark },
    of: (fields, { made }) =>
      mapped(buttonhole(buttonholeInput(fields)), ({ past, rest }) =>
        exactLength(rest - ((made[from.key] ?? past) - past)),
      ),
  });

const pastCentre = start('past-centre', words.pastCentre, across, words.markPast);
const aboveButton = start('above-button', words.aboveButton, along, words.markAbove);
const insideCentre = end('inside-centre', words.insideCentre, across, words.markInside, pastCentre);
const belowButton = end('below-button', words.belowButton, along, words.markBelow, aboveButton);

/** What a buttonhole gives: its ends, its length, and the cloth it wants past the centre line. */
export const buttonholeOutputs: Outputs = {
  id: 'buttonhole',
  rule: 1,
  fields: buttonholeFields,
  outputs: [
    output({
      key: 'row',
      name: words.row,
      kind: 'run',
      reads: [...hole.reads, 'follow', 'offset'],
      decides: ['follow'],
      when: { field: 'follow', is: given(follow) },
      step: { do: words.markRow, datum: 'buttons-zero', ...mark },
      of: (fields) => rowOf(fields, needed({ places: placesAsked(fields) }).places),
    }),
    output({
      key: 'count',
      name: words.count,
      kind: 'count',
      reads: ['follow', 'offset'],
      when: { field: 'follow', is: given(follow) },
      of: (fields) => ({ ok: true, value: placesAsked(fields)?.length ?? 0 }),
    }),
    pastCentre,
    insideCentre,
    aboveButton,
    belowButton,
    output({
      key: 'length',
      name: words.long,
      ...hole,
      bentBy: [pastCentre, insideCentre, aboveButton, belowButton],
      step: {
        do: words.cut,
        datum: 'zero',
        stage: 'close',
        undoable: false,
        bound: 'least',
        caution: cautionWords.blades,
      },
      of: (fields, { made }) =>
        mapped(buttonhole(buttonholeInput(fields)), ({ length, past, rest }) => {
          const from = made['past-centre'] ?? made['above-button'] ?? past;
          const to = made['inside-centre'] ?? made['below-button'];
          // From one mark to the other; marked at one end only, it is as long as planned.
          return to === undefined ? length : exactLength(length + (from - past) + (to - rest));
        }),
    }),
    output({
      key: 'overlap-least',
      name: words.overlapLeast,
      kind: 'length',
      bound: 'least',
      reads: ['diameter'],
      of: ({ diameter }) => mapped(overlapPastCentre(diameter), ({ from }) => from),
    }),
    output({
      key: 'overlap-most',
      name: words.overlapMost,
      kind: 'length',
      bound: 'least',
      reads: ['diameter'],
      of: ({ diameter }) => mapped(overlapPastCentre(diameter), ({ to }) => to),
    }),
  ],
};
