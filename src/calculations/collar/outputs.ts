import { cautionWords } from '#words/common/caution-words.ts';
import { collarOutputWords as words } from '#words/outputs/collar-output-words.ts';
import { type Outputs, outputOf } from '../../calculation/output.ts';
import { ZERO } from '../../lengths/length.ts';
import { type Collar, collar } from '../../sewing/bands/collar.ts';
import { mapped } from '../../sewing/problem.ts';
import { COLLAR_FIELDS, collarFields } from './fields.ts';

const output = outputOf(collarFields);
const asked = { reads: COLLAR_FIELDS } as const;
const number = { ...asked, kind: 'length' } as const;

/** A length that is cut, and can't be undone. */
function cut(key: string, name: string, does: string, see: (plan: Collar) => Collar['turn']) {
  return output({
    ...number,
    key,
    name,
    step: {
      do: does,
      datum: 'cut-end',
      stage: 'cut',
      undoable: false,
      bound: 'least',
      caution: cautionWords.shears,
    },
    of: (fields) => mapped(collar(fields), see),
  });
}

const upperLong = cut('upper-long', words.upperLong, words.cutUpperLong, ({ upper }) => upper.long);
const upperWide = cut('upper-wide', words.upperWide, words.cutUpperWide, ({ upper }) => upper.wide);
const underLong = cut('under-long', words.underLong, words.cutUnderLong, ({ under }) => under.long);
const underWide = cut('under-wide', words.underWide, words.cutUnderWide, ({ under }) => under.wide);

/** What a collar gives: both its pieces, their marks, and where it rolls. */
export const collarOutputs: Outputs = {
  id: 'collar',
  rule: 1,
  fields: collarFields,
  outputs: [
    upperLong,
    upperWide,
    underLong,
    underWide,
    ...(['upper', 'under'] as const).map((side) =>
      output({
        ...asked,
        key: `${side}-marks`,
        name: side === 'upper' ? words.upperMarks : words.underMarks,
        kind: 'run',
        step: {
          do: side === 'upper' ? words.markUpper : words.markUnder,
          datum: 'cut-end',
          stage: 'cut',
          undoable: true,
        },
        of: (fields) => mapped(collar(fields), (plan) => plan[side].run),
      }),
    ),
    ...(['upper', 'under'] as const).map((side) =>
      output({
        ...asked,
        key: `${side}-pieces`,
        name: side === 'upper' ? words.pieces : words.underPieces,
        kind: 'count',
        adds: true,
        material: {
          kind: 'cloth',
          along: side === 'upper' ? upperLong : underLong,
          across: side === 'upper' ? upperWide : underWide,
        },
        of: (fields) => mapped(collar(fields), () => 1),
      }),
    ),
    output({
      ...number,
      key: 'roll',
      name: words.roll,
      step: {
        do: words.baste,
        datum: 'stitch-line',
        stage: 'join',
        undoable: true,
        caution: cautionWords.pins,
      },
      of: (fields) =>
        fields.stand === ZERO
          ? { ok: false, absent: 'stand' }
          : mapped(collar(fields), () => fields.stand),
    }),
    output({
      ...number,
      key: 'turn',
      name: words.turn,
      of: (fields) => mapped(collar(fields), ({ turn }) => turn),
    }),
    output({
      ...number,
      key: 'around',
      name: words.around,
      of: (fields) => mapped(collar(fields), ({ around }) => around),
    }),
    output({
      ...number,
      key: 'neck',
      name: words.neck,
      of: (fields) => mapped(collar(fields), ({ neck }) => neck),
    }),
  ],
};
