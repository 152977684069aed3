import { holeWords } from '#words/common/hole-words.ts';
import { edgingOutputWords as words } from '#words/outputs/edging-output-words.ts';
import { type Condition, given, not } from '../../calculation/field-spec.ts';
import { type Output, outputOf, runTaken, type Step } from '../../calculation/output.ts';
import { mustBePositive } from '../../sewing/length-checks.ts';
import { answerUnless } from '../../sewing/problem.ts';
import { edgingFields } from './fields.ts';
import { MOST_SIDES, sideOf } from './punched.ts';
import { STRIP_FIELDS } from './strip.ts';

const output = outputOf(edgingFields);
const { corners, rows } = edgingFields.specs;

const isTurned = given(corners);
const straight = { field: 'corners', is: not(isTurned) } as const;
const second = { field: 'rows', is: rows.is('level', 'staggered') } as const;
/** Two sides at the first corner, and one more at each other; an outline may begin in one that isn't typed. */
const turned = (sides: number) => {
  const is: Condition = (ask) => isTurned(ask) && ask(corners).split(';').length + 1 >= sides;
  return { field: 'corners', is } as const;
};

const punch = (what: string, datum: Step['datum']): Step => ({
  do: what,
  datum,
  stage: 'edge',
  undoable: false,
  caution: holeWords.punch,
});
const cut: Omit<Step, 'do'> = {
  datum: 'zero',
  stage: 'cut',
  undoable: false,
  bound: 'least',
  caution: words.blade,
};

export const cutWidth = output({
  key: 'cut-width',
  name: words.cutWidth,
  kind: 'length',
  reads: ['width'],
  step: { do: words.cutWide, ...cut },
  of: ({ width }) =>
    answerUnless(mustBePositive('width', width), () => ({ ok: true, value: width })),
});

/** Its holes are placed on it as it was cut. */
export const cutStrip = output({
  key: 'cut-strip',
  name: words.cutStrip,
  kind: 'length',
  reads: ['length'],
  adds: true,
  material: { kind: 'strip', across: cutWidth },
  step: { do: words.cut, ...cut },
  of: ({ length }) =>
    answerUnless(mustBePositive('length', length), () => ({ ok: true, value: length })),
});

const placed = { kind: 'run', reads: STRIP_FIELDS, bentBy: [cutStrip] } as const;
const decides = ['pitch', 'fit', 'end', 'follow'] as const;

/** The first row of a strip without corners. */
export const holes = output({
  key: 'holes',
  name: words.row[0],
  ...placed,
  decides: [...decides, 'middle'],
  when: straight,
  step: punch(words.punch[0], 'cut-end'),
  of: (fields, { made, count }) => {
    const kept = count === undefined ? undefined : { row: 0, side: 0, count };
    return sideOf(fields, { cut: made[cutStrip.key], kept }, [0, 0]);
  },
});

/** The second row: where it isn't begun itself it goes with the first row. */
export const holesTwo = output({
  key: 'holes-2',
  name: words.row[1],
  ...placed,
  takes: [holes],
  decides: [...decides, 'middle', 'rows'],
  when: [straight, second],
  step: punch(words.punch[1], 'cut-end'),
  of: (fields, { made, takes, count }) => {
    const first = runTaken(takes, holes).marks.length;
    const kept =
      count === undefined ? { row: 0, side: 0, count: first } : { row: 1, side: 0, count };
    return sideOf(fields, { cut: made[cutStrip.key], kept }, [1, 0]);
  },
});

/** The sides of a row round corners, each measured from where it begins. */
export function sidesOf(row: 0 | 1): Output[] {
  return Array.from({ length: MOST_SIDES }, (_, side) =>
    output({
      key: `side-${side + 1}${row === 0 ? '' : '-2'}`,
      name: words.side(row + 1, side + 1),
      ...placed,
      decides,
      when: row === 0 ? turned(side + 1) : [turned(side + 1), second],
      step: punch(words.punchSide(row + 1, side + 1), side === 0 ? 'cut-end' : 'edge-corner'),
      of: (fields, { made, count }) => {
        const kept = count === undefined ? undefined : { row, side, count };
        return sideOf(fields, { cut: made[cutStrip.key], kept }, [row, side]);
      },
    }),
  );
}
