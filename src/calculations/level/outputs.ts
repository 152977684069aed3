import { levelWords } from '#words/calculations/level-words.ts';
import { turnedWords as turned } from '#words/common/turned-words.ts';
import { levelOutputWords as words } from '#words/outputs/level-output-words.ts';
import { type Outputs, outputOf } from '../../calculation/output.ts';
import { exactLength, ZERO } from '../../lengths/length.ts';
import { hemLevel } from '../../sewing/hems/hem-level.ts';
import { mapped } from '../../sewing/problem.ts';
import { IRON_ONE_DOT } from '../../sewing/sources/safety.ts';
import { mostTrimmed } from './answer.ts';
import { LEVEL_FIELDS, levelFields } from './fields.ts';

const output = outputOf(levelFields);
const asked = { kind: 'length', reads: LEVEL_FIELDS } as const;

/** What a levelled hem gives: where it is, what is trimmed, and how low it could be. */
export const levelOutputs: Outputs = {
  id: 'level',
  rule: 1,
  fields: levelFields,
  outputs: [
    output({
      ...asked,
      key: 'hem',
      name: words.hem,
      step: { do: words.mark, datum: 'zero', stage: 'turn-up', undoable: true },
      of: (fields) => mapped(hemLevel(fields), () => fields.hem),
    }),
    output({
      ...asked,
      key: 'most',
      name: words.most,
      step: {
        do: words.cut,
        datum: 'raw-edge',
        stage: 'turn-up',
        undoable: false,
        bound: 'most',
        caution: levelWords.before,
      },
      of: (fields) => mapped(hemLevel(fields), mostTrimmed),
    }),
    output({
      ...asked,
      key: 'turn',
      name: words.turn,
      step: {
        do: words.turnUp,
        datum: 'raw-edge',
        stage: 'turn-up',
        undoable: true,
        caution: turned.iron(IRON_ONE_DOT.value),
      },
      of: (fields) =>
        fields.allowance === ZERO
          ? { ok: false, absent: 'allowance' }
          : mapped(hemLevel(fields), () => fields.allowance),
    }),
    output({
      ...asked,
      key: 'lowest',
      name: words.lowest,
      bound: 'most',
      of: (fields) => mapped(hemLevel(fields), ({ lowest }) => lowest),
    }),
    output({
      ...asked,
      key: 'uneven',
      name: words.uneven,
      of: (fields) =>
        mapped(hemLevel(fields), ({ trims }) =>
          exactLength(Math.max(...trims) - Math.min(...trims)),
        ),
    }),
  ],
};
