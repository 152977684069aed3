import { cornerWords } from '#words/calculations/corner-words.ts';
import { turnedWords } from '#words/common/turned-words.ts';
import { cornerOutputWords as words } from '#words/outputs/corner-output-words.ts';
import { type MadeSteps, type Outputs, outputOf } from '../../calculation/output.ts';
import type { InputOf } from '../../calculation/schema.ts';
import { ZERO } from '../../lengths/length.ts';
import type { Mitre } from '../../sewing/hems/mitre.ts';
import { mitreAsPressed } from '../../sewing/hems/mitre-made.ts';
import { mapped, type Outcome } from '../../sewing/problem.ts';
import { MITRE_TRIM } from '../../sewing/sources/mitres.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import { cornerFields } from './fields.ts';
import { placeOf } from './places.ts';

const output = outputOf(cornerFields);

/** Where both hems are stitched moves no mark. */
const FOLD_FIELDS = ['depth', 'side', 'angle', 'turned', 'thickness'] as const;
type Asked = Pick<InputOf<(typeof cornerFields)['specs']>, (typeof FOLD_FIELDS)[number]>;

const line = { kind: 'length', reads: FOLD_FIELDS } as const;
const turnUp = { datum: 'raw-corner', stage: 'turn-up', undoable: true } as const;
const press = { ...turnUp, caution: turnedWords.iron(IRON_ONE_DOT.value) };

const foldBottom = output({
  key: 'fold-bottom',
  name: words.foldBottom,
  ...line,
  step: { do: words.pressBottom, ...press },
  of: (fields) => mapped(corner(fields), ({ runs }) => placeOf(runs.bottom, 'press')),
});

const foldSide = output({
  key: 'fold-side',
  name: words.foldSide,
  ...line,
  step: { do: words.pressSide, ...press },
  of: (fields) => mapped(corner(fields), ({ runs }) => placeOf(runs.side, 'press')),
});

/** What a mitred corner gives: where its folds and marks lie on both raw edges, and what is trimmed. */
export const cornerOutputs: Outputs = {
  id: 'corner',
  rule: 1,
  fields: cornerFields,
  outputs: [
    foldBottom,
    foldSide,
    output({
      key: 'mitre-bottom',
      name: words.mitreBottom,
      ...line,
      bentBy: [foldBottom, foldSide],
      step: { do: words.markBottom, ...turnUp },
      of: (fields, { made }) => mapped(corner(fields, made), ({ alongBottom }) => alongBottom),
    }),
    output({
      key: 'mitre-side',
      name: words.mitreSide,
      ...line,
      bentBy: [foldBottom, foldSide],
      step: { do: words.markSide, ...turnUp },
      of: (fields, { made }) => mapped(corner(fields, made), ({ upSide }) => upSide),
    }),
    output({
      key: 'trim',
      name: words.trim,
      kind: 'length',
      reads: [],
      step: {
        do: words.cut,
        datum: 'stitch-line',
        stage: 'turn-up',
        undoable: false,
        bound: 'least',
        caution: cornerWords.check,
      },
      of: () => ({ ok: true, value: MITRE_TRIM.value }),
    }),
  ],
};

/** The corner, by the folds that are pressed. */
function corner(fields: Asked, made: MadeSteps = {}): Outcome<Mitre> {
  const folds = { bottom: made['fold-bottom'], side: made['fold-side'] };
  return mitreAsPressed({ ...fields, edgeStitch: ZERO }, folds);
}
